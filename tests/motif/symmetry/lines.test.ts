import { describe, expect, test } from 'vitest';
import { mirrored, shifted } from '../../../src/geometry/transform.ts';
import type { Pen } from '../../../src/motif/motif.ts';
import { CENTRED, type Drawn, PLAIN } from '../../../src/motif/motif.ts';
import { drawMotif } from '../../../src/motif/record.ts';
import { circle, polygon, rectangle } from '../../../src/motif/shapes.ts';
import { linesOf } from '../../../src/motif/symmetry/lines.ts';
import { drawNamed } from '../../support/motifs.ts';
import { generate } from './generate.ts';
import { differing, patternIn } from './paint.ts';
import { PLANE_TABLE } from './tables.ts';
import { everyPoint } from './vary.ts';

const cell = { across: 100, along: 140 };

const drawing = (draw: (pen: Pen) => void): Drawn[] =>
  drawMotif(
    {
      name: 'a-test',
      kind: 'field',
      summary: '',
      parameters: {},
      ratio: 1,
      lines: { across: PLAIN, along: PLAIN },
      made: 'sheet',
      draw: (_cell, _settings, pen) => {
        pen.part('field');
        draw(pen);
      },
    },
    cell,
    {},
  );

describe('what the lines of plain drawings must be, from the words of `Lines`', () => {
  test('a diamond: centred both ways', () => {
    expect(linesOf(drawNamed('diamond', cell), cell)).toEqual({ across: CENTRED, along: CENTRED });
  });

  test('a checkerboard: no square is cut between squares, though mirrors run through their middles', () => {
    const squares = { mirrors: [0.25, 0.75], whole: [0, 0.5], half: [0.25, 0.75] };
    expect(linesOf(drawNamed('checkerboard', cell), cell)).toEqual({ across: squares, along: squares });
  });

  test('a sawtooth: teeth are whole between feet, and point one way', () => {
    const { across, along } = linesOf(drawNamed('sawtooth', cell), cell);
    expect(across).toEqual(CENTRED);
    expect(along).toEqual({ mirrors: [], whole: [0], half: [] });
  });

  test('a dot in the middle of the cell, anywhere it is drawn', () => {
    const dot = drawing((pen) => circle(pen, 0, 0, 20));
    expect(linesOf(dot, cell)).toEqual({ across: CENTRED, along: CENTRED });
    const moved = everyPoint(dot, ([x, y]) => [x + 10, y + 35]);
    expect(linesOf(moved, cell).across).toEqual({ mirrors: [0.1, 0.6], whole: [0.1], half: [0.6] });
    // Towards the far end is up the page, and shares of the length count from the near end.
    expect(linesOf(moved, cell).along).toEqual({ mirrors: [0.25, 0.75], whole: [0.75], half: [0.25] });
  });

  test('large dots and small ones by turns: the boundary is a mirror and counts, though it halves the small ones', () => {
    const dots = drawing((pen) => {
      circle(pen, 0, 0, 30);
      circle(pen, 50, 0, 10);
    });
    expect(linesOf(dots, cell).across).toEqual(CENTRED);
    // With the boundary elsewhere the gaps are left: from 80 to 90 mm and from 10 to 20 mm from the left side, and 10 mm on.
    const moved = everyPoint(dots, ([x, y]) => [x + 10, y]);
    expect(linesOf(moved, cell).across).toEqual({ mirrors: [0.1, 0.6], whole: [0.25, 0.95], half: [0.1, 0.6] });
  });

  test('blocks of two colours that meet: whole where they meet, if the boundary is no mirror', () => {
    const blocks = drawing((pen) => {
      rectangle(pen, 0, 0, 60, 70);
      pen.part('alternate');
      rectangle(pen, 50, 0, 40, 70);
    });
    expect(linesOf(blocks, cell).across).toEqual(CENTRED);
    const moved = everyPoint(blocks, ([x, y]) => [x + 25, y]);
    expect(linesOf(moved, cell).across).toEqual({ mirrors: [0.25, 0.75], whole: [0.05, 0.45], half: [0.25, 0.75] });
    expect(linesOf(blocks, cell).along).toEqual(CENTRED);
  });

  test('a band across with notches: cut wherever it ends, so the boundary counts', () => {
    const band = drawing((pen) => {
      polygon(pen, [
        [-50, -30],
        [50, -30],
        [50, 20],
        [20, 20],
        [0, 40],
        [-20, 20],
        [-50, 20],
      ]);
    });
    expect(linesOf(band, cell).across).toEqual(CENTRED);
    const moved = everyPoint(band, ([x, y]) => [x + 7, y]);
    expect(linesOf(moved, cell).across).toEqual({ mirrors: [0.07, 0.57], whole: [], half: [0.07, 0.57] });
  });

  test('a shape drawn in two halves at the sides of the cell is cut there', () => {
    const halves = drawing((pen) => {
      polygon(pen, [
        [-50, -30],
        [-20, 0],
        [-50, 30],
      ]);
      polygon(pen, [
        [50, -30],
        [50, 30],
        [20, 0],
      ]);
    });
    expect(linesOf(halves, cell).across).toEqual({ mirrors: [0, 0.5], whole: [0.5], half: [0] });
  });

  test('no mirror: the boundary, if nothing reaches over it, or else the gaps, or else the boundary still', () => {
    const flag = (x: number) => (pen: Pen) =>
      polygon(pen, [
        [x - 20, -30],
        [x + 20, -20],
        [x - 15, 30],
      ]);
    expect(linesOf(drawing(flag(0)), cell).across).toEqual({ mirrors: [], whole: [0], half: [] });
    expect(linesOf(drawing(flag(50)), cell).across).toEqual({ mirrors: [], whole: [0.5], half: [] });
    const both = drawing((pen) => {
      flag(0)(pen);
      polygon(pen, [
        [15, 50],
        [90, 50],
        [90, 60],
      ]);
    });
    expect(linesOf(both, cell).across).toEqual({ mirrors: [], whole: [0], half: [] });
  });

  test('stripes along the work: any line across them will do', () => {
    const stripes = drawing((pen) => rectangle(pen, 0, 0, 40, 140));
    expect(linesOf(stripes, cell)).toEqual({ across: CENTRED, along: PLAIN });
    expect(linesOf(drawNamed('plain-band', cell), cell)).toEqual({ across: PLAIN, along: PLAIN });
  });

  test('standing at the middle between four as well', () => {
    const dot = drawing((pen) => circle(pen, 0, 0, 20));
    expect(linesOf(dot, cell, 'centred')).toEqual({ across: CENTRED, along: CENTRED });
    expect(linesOf(dot, cell, 'half-drop')).toEqual({ across: CENTRED, along: CENTRED });
    // Dots from 40 to 60 and from 90 to 110 of 100 mm, moved by 25 mm: gaps from 15 to 35 and from 65 to 85 mm, moved as well.
    const small = everyPoint(
      drawing((pen) => circle(pen, 0, 0, 10)),
      ([x, y]) => [x + 25, y],
    );
    expect(linesOf(small, cell, 'centred').across).toEqual({
      mirrors: [0.25, 0.75],
      whole: [0, 0.5],
      half: [0.25, 0.75],
    });
  });
});

describe.each(PLANE_TABLE.map((row) => [row.symbol, row] as const))('%s', (_symbol, row) => {
  const { drawn, cell: own, centred } = generate(row);
  const whole: Drawn[] = centred
    ? [
        {
          part: 'field',
          pieces: drawn[0]!.pieces.flatMap((piece) => [piece, shifted(piece, own.across / 2, own.along / 2)]),
        },
      ]
    : drawn;
  const found = linesOf(whole, own);
  const box = { left: -own.across / 2, right: own.across / 2, top: -own.along / 2, bottom: own.along / 2 };
  // A line in the cell mirrors the cell into at most one more to each side.
  const pattern = patternIn(whole, own, {
    left: 3 * box.left,
    right: 3 * box.right,
    top: 3 * box.top,
    bottom: 3 * box.bottom,
  });

  /** Area in which the pattern differs from its mirror image about a line (clipper2). */
  const unevenness = (direction: 'across' | 'along', share: number): number => {
    const place = direction === 'across' ? (share - 0.5) * own.across : (0.5 - share) * own.along;
    const image = pattern.map(({ part, pieces }) => ({
      part,
      pieces: pieces.map((piece) => {
        const flipped = mirrored(piece, direction);
        return direction === 'across' ? shifted(flipped, 2 * place, 0) : shifted(flipped, 0, 2 * place);
      }),
    }));
    return differing(pattern, image, box);
  };

  test('mirrors on the lines found and on no other 24th of the repeat (clipper2)', () => {
    for (const direction of ['across', 'along'] as const) {
      const { mirrors } = found[direction];
      for (const share of mirrors) expect(unevenness(direction, share)).toBeLessThan(1e-6 * own.across * own.along);
      for (let i = 0; i < 24; i++) {
        if (mirrors.some((share) => Math.abs(share - i / 24) < 1e-6)) continue;
        expect(unevenness(direction, i / 24)).toBeGreaterThan(1e-3 * own.across * own.along);
      }
    }
  });

  test('gives mirrors as often as the group has them', () => {
    const count = { across: found.across.mirrors.length, along: found.along.mirrors.length };
    // Per cell of the tables, or per rectangle of two of them (International Tables, volume A, the diagrams of the groups).
    const expected: Record<string, [across: number, along: number]> = {
      ...{
        p1: [0, 0],
        p2: [0, 0],
        pm: [2, 0],
        pg: [0, 0],
        cm: [2, 0],
        p2mm: [2, 2],
        p2mg: [2, 0],
        p2gg: [0, 0],
        c2mm: [2, 2],
      },
      ...{ p4: [0, 0], p4mm: [2, 2], p4gm: [0, 0], p3: [0, 0], p3m1: [2, 0], p31m: [0, 2], p6: [0, 0], p6mm: [2, 2] },
    };
    expect([count.across, count.along]).toEqual(expected[row.symbol]);
  });
});
