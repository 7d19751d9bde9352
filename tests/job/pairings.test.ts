import { describe, expect, test } from 'vitest';
import { familiesOf } from '../../src/compose/families.ts';
import { composeField } from '../../src/compose/field.ts';
import type { Piece } from '../../src/geometry/path.ts';
import { shifted } from '../../src/geometry/transform.ts';
import type { Issue } from '../../src/issue.ts';
import { readJob } from '../../src/job/read.ts';
import { standsAlone } from '../../src/motif/alone.ts';
import { allMotifs } from '../../src/motif/library.ts';
import type { Drawn, Motif } from '../../src/motif/motif.ts';
import { drawMotif } from '../../src/motif/record.ts';
import { coveredArea, woundArea } from '../support/areas.ts';
import { settingsOf } from '../support/motifs.ts';

const issuesOf = (field: string): Issue[] => {
  const text = `evenfield: 1\nunits: in\nsurface: rug\noverall: { across: 48, along: 84 }\nfield: { ${field} }\n`;
  const read = readJob(text, 'f', allMotifs());
  return read.ok ? [] : read.issues;
};

describe('two motifs by turns', () => {
  test('one that is set in brick is refused, with the reason and what to write', () => {
    const [issue, ...more] = issuesOf('motif: fan, alternate: { by: row, with: diamond }');
    expect(more).toEqual([]);
    expect(issue).toMatchObject({ code: 'job/turns', path: ['field', 'motif'] });
    expect(issue!.says).toBe(
      'fan and diamond cannot take turns: the repeats of fan are set in brick, every second row half a repeat across, and would lie over those next to them',
    );
    expect(issue!.hint).not.toContain('with itself');
    expect(issue!.hint).toContain('pinwheel');
    expect(issue!.hint).not.toContain('hexagon');
  });

  test('the second one is named where it is the one at fault', () => {
    expect(issuesOf('motif: diamond, alternate: { by: checker, with: ogee }')).toMatchObject([
      { code: 'job/turns', path: ['field', 'alternate', 'with'] },
    ]);
    expect(issuesOf('motif: diamond, alternate: { by: checker, with: ogee }')[0]!.hint).toContain(
      'leave "with" out, so that diamond takes turns with itself',
    );
    expect(issuesOf('motif: diamond, alternate: { by: checker, with: herringbone }')[0]!.says).toContain(
      'the repeats of herringbone reach over its edges',
    );
  });

  test('in exchanged colours too there must be rows of whole repeats', () => {
    const [issue] = issuesOf('motif: fan, alternate: row');
    expect(issue).toMatchObject({ code: 'job/turns', path: ['field', 'alternate'] });
    expect(issue!.says).toContain('set in brick');
    expect(issuesOf('motif: herringbone, alternate: row')[0]!.says).toContain('reach over their edges');
  });

  test.each(['motif: octagon-and-dot, alternate: row', 'motif: diamond, alternate: { by: row, with: pinwheel }'])(
    '%s is taken',
    (field) => expect(issuesOf(field)).toEqual([]),
  );
});

const fields = allMotifs().filter(({ kind }) => kind === 'field');
const [across, along] = [100, 100];
/** A unit that fills its cell, so that whatever reaches out of another's cell lies over it. */
const full: Drawn[] = [
  {
    part: 'alternate',
    pieces: [
      [
        {
          start: [-across / 2, -along / 2],
          sides: [
            { kind: 'line', to: [across / 2, -along / 2] },
            { kind: 'line', to: [across / 2, along / 2] },
            { kind: 'line', to: [-across / 2, along / 2] },
            { kind: 'line', to: [-across / 2, -along / 2] },
          ],
        },
      ],
    ],
  },
];

/** Area painted twice where a motif takes turns with full cells, mm², by clipper2. */
function paintedTwice(motif: Motif): number {
  const drawn = drawMotif(motif, { across, along }, settingsOf(motif));
  const layout = { pitch: { across, along }, phase: { across: 0, along: 0 } };
  const box = { left: -2 * across, right: 2 * across, top: -2 * along, bottom: 2 * along };
  const families = familiesOf({ drawn, lattice: motif.lattice }, 'checker', { drawn: full });
  const pieces = composeField(layout, box, families).flatMap(({ pieces, at }): Piece[] =>
    Array.from({ length: at.length / 2 }, (_, i) => [at[2 * i]!, at[2 * i + 1]!] as const).flatMap(([x, y]) =>
      pieces.map((piece) => shifted(piece, x, y)),
    ),
  );
  return woundArea(pieces) - coveredArea(pieces);
}

test('those are refused that lie over full cells next to them, and no others', () => {
  for (const motif of fields) {
    expect([motif.name, standsAlone(motif)]).toEqual([motif.name, paintedTwice(motif) < 1e-3]);
  }
});
