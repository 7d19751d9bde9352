import { beforeAll, describe, expect, test } from 'vitest';
import type { Claims } from '../../src/check/claim.ts';
import { checkFiles } from '../../src/check/index.ts';
import { makeFiles } from '../../src/pipeline.ts';
import { recheck } from './support/recheck.ts';
import { expectRefuted } from './support/refuted.ts';
import { change, changeLayout, changePath, changeSubpath, type Files, moveSubpath, without } from './support/tamper.ts';
import type { Tampering } from './support/tamperings.ts';

const PLAN = 'plan.svg';
const LAYOUT = 'layout.json';
const BEFORE = /^every open window lies on one painted piece, or on what the lines of its part cut out of one$/;
const TOGETHER = /^the parts of every split piece, put together again, are the piece$/;
const LAPS = /^parts of a split piece lap over each other by as much as stated$/;
const MATCH = /^match keys of neighbouring parts fall on the same points of the floor$/;

describe('a repeat larger than the film', () => {
  let files: Files;
  let untouched: Claims;
  /** The sheets of a split, as layout.json lists them. */
  // biome-ignore lint/suspicious/noExplicitAny: the tests reach into the file as it is written
  let parts: any[];

  beforeAll(async () => {
    // Invented: a cloth of 2 by 2 diamonds, on film that holds a good half of one.
    const made = await makeFiles(
      [
        'evenfield: 1',
        'units: mm',
        'surface: floor-cloth',
        'overall: { across: 420, along: 420 }',
        'field: { motif: diamond, repeats: { across: 2, along: 2 } }',
        'border: none',
        'stencil: { sheet: { across: 170, along: 260, rim: 12 } }',
        'print: { plan: no, sheets: no }',
      ].join('\n'),
      'split.job.yaml',
      1,
    );
    if (!made.ok) throw new Error(JSON.stringify(made.issues, null, 1));
    files = made.value.files;
    untouched = await checkFiles(files);
    parts = JSON.parse(files.get(LAYOUT) as string).sheets.filter((sheet: { part?: object }) => sheet.part);
  });

  test('every claim holds, and those of splits are among them', () => {
    expect(untouched.claims.filter(({ holds }) => !holds)).toEqual([]);
    expect(parts.length).toBeGreaterThan(1);
    for (const claim of [BEFORE, TOGETHER, LAPS, MATCH]) {
      expect(untouched.claims.some((one) => claim.test(one.claim))).toBe(true);
    }
  });

  test('the job sheet and the sheets say how parts are laid', () => {
    expect(files.get('job-sheet.html')).toContain('pencil round its match keys');
    expect(files.get(parts[0].file)).toContain('match keys of a split shape');
  });

  const first = () => parts[0].file as string;
  const inSheet = (name: string, mark: string, claim: RegExp, file: () => string, dx: number, dy: number) => ({
    name,
    make: (): Tampering => ({
      name,
      claim,
      file: file(),
      tamper: (all) => change(all, first(), (svg) => changePath(svg, mark, (d) => moveSubpath(d, dx, dy))),
    }),
  });
  const inLayout = (name: string, claim: RegExp, file: () => string, edit: (sheets: typeof parts) => void) => ({
    name,
    make: (): Tampering => ({
      name,
      claim,
      file: file(),
      tamper: (all) => changeLayout(all, ({ sheets }) => edit(sheets.filter((sheet: { part?: object }) => sheet.part))),
    }),
  });

  test.each([
    inSheet('a window of a part 0.2 mm aside', 'id="window-1"', BEFORE, first, 0.2, 0),
    inSheet('a window of a part 0.2 mm on', 'id="window-1"', TOGETHER, () => PLAN, 0, 0.2),
    inSheet('a match key 0.2 mm aside', 'data-key="match"', MATCH, () => LAYOUT, 0.2, 0),
    inSheet('a match key 0.2 mm on', 'data-key="match"', MATCH, () => LAYOUT, 0, 0.2),
    inSheet('a match key far off', 'data-key="match"', MATCH, () => LAYOUT, 9, 9),
    inLayout('a lap of 0.8 mm stated for one part', BEFORE, first, ([one]) => {
      one.part.lap = 0.8;
    }),
    inLayout(
      'a lap of 0.8 mm stated for all parts',
      LAPS,
      () => PLAN,
      (all) => {
        for (const { part } of all) part.lap = 0.8;
      },
    ),
    inLayout('a line 0.2 mm aside', BEFORE, first, ([one]) => {
      for (const side of ['left', 'right', 'top', 'bottom']) if (side in one.part) one.part[side] += 0.2;
    }),
    inLayout(
      'a part laid nowhere',
      /^every piece of the plan is painted through a window$/,
      () => PLAN,
      ([one]) => {
        one.passes = [];
      },
    ),
    inLayout('a part laid 0.2 mm aside', BEFORE, first, ([one]) => {
      for (const placement of one.passes.flat()) placement.x += 0.2;
    }),
  ])('$name', async ({ make }) => expectRefuted(files, untouched, make()));

  test('a sheet of a part missing', async () => {
    const { claims } = await recheck(files, without(files, first()));
    const refuted = claims.filter(({ holds }) => !holds).map(({ claim }) => claim);
    expect(refuted).toContain('every piece of the plan is painted through a window');
  });

  test('the lap cut down on one sheet', async () => {
    // Every corner of a window that lies half a lap beyond a line is drawn back by 0.4 mm.
    const { part, origin, file, windows } = parts[0];
    const beyond = (['left', 'top', 'right', 'bottom'] as const)
      .filter((side) => side in part)
      .map((side) => {
        const way = side === 'left' || side === 'right' ? 0 : 1;
        const out = side === 'left' || side === 'top' ? -1 : 1;
        return { way, edge: part[side] + origin[way] + 0.5 * out, out };
      });
    const cut = change(files, file, (svg) =>
      Array.from({ length: windows }, (_, n) => `id="window-${n + 1}"`).reduce(
        (all, mark) =>
          changePath(all, mark, (d) =>
            changeSubpath(d, 0, (segments) =>
              segments.map(([command, ...v]) => {
                for (const { way, edge, out } of beyond) {
                  const at = v.length - 2 + way;
                  if (v.length >= 2 && Math.abs(v[at]! - edge) < 0.01) v[at]! -= 0.4 * out;
                }
                return [command, ...v];
              }),
            ),
          ),
        svg,
      ),
    );
    const { claims } = await recheck(files, cut);
    const refuted = claims.filter(({ holds }) => !holds).map(({ claim }) => claim);
    expect(refuted.some((claim) => BEFORE.test(claim))).toBe(true);
    expect(refuted.some((claim) => LAPS.test(claim))).toBe(true);
  });
});
