import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cutSheets } from '../../src/stencil/cut.ts';
import type { Placement } from '../../src/stencil/sheet.ts';
import { farFromWhole, lookAtCovering } from './covering.ts';
import { cutOf, makeScene, paintedPieces, type Wish } from './scene.ts';

/** Whole and half landings, odd and even counts, equal and unequal pitches, one block and many, small sheets. Invented. */
const LAYOUTS: [string, Omit<Wish, 'field'>][] = [
  ['whole', { repeats: { across: 4, along: 5 }, pitch: { across: 110, along: 117 } }],
  [
    'half',
    { repeats: { across: 4, along: 5 }, pitch: { across: 110, along: 110 }, phase: { across: 0.5, along: 0.5 } },
  ],
  ['half across', { repeats: { across: 3, along: 4.5 }, pitch: { across: 95, along: 130 }, phase: { across: 0.5 } }],
  [
    'quarter',
    { repeats: { across: 3.5, along: 4.5 }, pitch: { across: 95, along: 130 }, phase: { across: 0.25, along: 0.75 } },
  ],
  ['many', { repeats: { across: 11, along: 14 }, pitch: { across: 61, along: 59 } }],
  ['one sheet', { repeats: { across: 3, along: 4 }, pitch: { across: 60, along: 60 } }],
  [
    'one repeat a sheet',
    {
      repeats: { across: 3, along: 2 },
      pitch: { across: 120, along: 120 },
      sheet: { across: 200, along: 180, rim: 20 },
    },
  ],
  ['wide bridge', { repeats: { across: 5, along: 4 }, pitch: { across: 90, along: 90 }, bridge: 9 }],
];

const FIELDS = ['diamond', 'lozenge', 'checkerboard', 'eight-point-star'];

test.each(FIELDS.flatMap((field) => LAYOUTS.map(([name, wish]) => [field, name, wish] as const)))(
  '%s, %s: every painted piece through one window, every open window on one piece',
  async (field, _, wish) => {
    const scene = await makeScene({ border: 70, side: 'sawtooth', corner: 'quarter-fan', ...wish, field });
    const sheets = await cutOf(scene);
    expect(lookAtCovering(sheets, paintedPieces(scene))).toEqual({ bare: 0, twice: 0, stray: [] });
    for (const { windows, passes, file } of sheets) {
      const open = new Set(passes.flat().flatMap((placement) => placement.open));
      expect([file, open.size]).toEqual([file, windows.length]);
      expect(passes.flat().every((placement) => placement.open.length > 0)).toBe(true);
    }
  },
);

test('parts of one colour share sheets, and every piece is still painted once', async () => {
  const scene = await makeScene({
    field: 'eight-point-star',
    repeats: { across: 3, along: 4 },
    pitch: { across: 150, along: 150 },
    phase: { across: 0.5, along: 0.5 },
    colours: { alternate: 'navy' },
  });
  const sheets = await cutOf(scene);
  expect(new Set(sheets.map(({ colour }) => colour))).toEqual(new Set(['navy']));
  expect(lookAtCovering(sheets, paintedPieces(scene))).toEqual({ bare: 0, twice: 0, stray: [] });
});

test('the look at the covering sees a placement left out, a window open twice and a sheet laid 0.0015 mm off', async () => {
  const scene = await makeScene({ field: 'diamond', repeats: { across: 3, along: 4 } });
  const painted = paintedPieces(scene);
  const [sheet] = await cutOf(scene);
  const [first, ...rest] = sheet!.passes.flat();
  const pieces = first!.open.length;
  const look = (passes: Placement[]) => lookAtCovering([{ ...sheet!, passes: [passes] }], painted);
  expect(look(rest)).toMatchObject({ bare: pieces, twice: 0, stray: [] });
  expect(look([first!, first!, ...rest])).toMatchObject({ bare: 0, twice: pieces, stray: [] });
  expect(look([{ ...first!, x: first!.x + 0.0015 }, ...rest]).stray).toHaveLength(pieces);
});

test('any layout, any sheet: covered once, or refused with a reason', async () => {
  const half = fc.integer({ min: 2, max: 12 }).map((n) => n / 2);
  const size = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  const reasons = ['stencil/too-large', 'stencil/unsound', 'stencil/crowded'];
  let [cut, refused] = [0, 0];
  await fc.assert(
    fc.asyncProperty(
      fc.record({
        field: fc.constantFrom(...FIELDS),
        repeats: fc.record({ across: half, along: half }),
        pitch: fc.record({ across: size(35, 160), along: size(35, 160) }),
        phase: fc.record({ across: fc.constantFrom(0, 0.25, 0.5), along: fc.constantFrom(0, 0.25, 0.5) }),
        borderRepeats: fc.record({ across: fc.integer({ min: 1, max: 9 }), along: fc.integer({ min: 1, max: 9 }) }),
        border: size(30, 80),
        bridge: size(1.5, 6),
        sheet: fc.record({ across: size(180, 500), along: size(180, 700), rim: size(8, 30) }),
      }),
      async (wish) => {
        const scene = await makeScene({ side: 'sawtooth', corner: 'quarter-fan', window: 0.5, ...wish });
        const result = await cutSheets(scene.drawing, scene.layout, scene.job, scene.motifs);
        if (!result.ok) {
          refused++;
          for (const { code, hint } of result.issues)
            expect([reasons.includes(code), hint === undefined]).toEqual([true, false]);
          return;
        }
        cut++;
        if (result.value.some(({ part }) => part)) {
          expect(farFromWhole(result.value, paintedPieces(scene))).toBeLessThan(1e-3);
          return;
        }
        expect(lookAtCovering(result.value, paintedPieces(scene))).toEqual({ bare: 0, twice: 0, stray: [] });
      },
    ),
    { numRuns: 40, seed: 20_251 },
  );
  // A property that mostly met refusals would prove little.
  expect(cut).toBeGreaterThan(2 * refused);
}, 300_000);

test('a sheet only just large enough and one only just too small', async () => {
  const wish = { field: 'diamond', repeats: { across: 2, along: 2 }, pitch: { across: 120, along: 120 } };
  const fits = await makeScene({ ...wish, sheet: { across: 160, along: 160, rim: 20 } });
  expect((await cutOf(fits)).length).toBe(1);
  const small = await makeScene({ ...wish, sheet: { across: 159.9, along: 400, rim: 20 } });
  // Split then; see split.test.ts.
  const split = await cutOf(small);
  expect(split.length).toBeGreaterThan(1);
  expect(split.every(({ part }) => part !== undefined)).toBe(true);
});
