import { areaPathsD, EndType, FillRule, inflatePathsD, JoinType, type PathD, unionD } from 'clipper2-ts';
import { describe, expect, test } from 'vitest';
import { compose } from '../../src/compose/compose.ts';
import { flatten } from '../../src/geometry/flatten.ts';
import { boxHeight, boxWidth, pieceBox } from '../../src/geometry/measure.ts';
import type { Box, Piece } from '../../src/geometry/path.ts';
import { movePiece } from '../../src/geometry/transform.ts';
import { cutSheets } from '../../src/stencil/cut.ts';
import type { Sheet } from '../../src/stencil/sheet.ts';
import { soundness } from '../../src/stencil/soundness.ts';
import { tapedParts } from '../../src/stencil/taped.ts';
import { ring } from './ring.ts';
import { cutOf, lay, makeScene, type Scene, type Wish } from './scene.ts';

const SCENES: Wish[] = [
  {
    field: 'diamond',
    repeats: { across: 6, along: 12 },
    pitch: { across: 120, along: 120 },
    border: 75,
    side: 'sawtooth',
    corner: 'quarter-fan',
  },
  {
    field: 'lozenge',
    repeats: { across: 5, along: 7 },
    pitch: { across: 90, along: 156 },
    phase: { across: 0.5, along: 0.5 },
  },
  {
    field: 'checkerboard',
    repeats: { across: 4.5, along: 6.5 },
    pitch: { across: 130, along: 130 },
    border: 60,
    side: 'sawtooth',
    corner: 'plain',
  },
  {
    field: 'eight-point-star',
    repeats: { across: 7, along: 9 },
    pitch: { across: 100, along: 103 },
    phase: { across: 0.5, along: 0.5 },
    bridge: 2.5,
  },
];

const path = (piece: Piece): PathD => flatten(piece[0]!, 0.002).map(([x, y]) => ({ x, y }));
const openings = ({ windows, keys }: Sheet): Piece[] => [...windows, ...keys.map(({ piece }) => piece)];
const inside = (inner: Box, outer: Box, by: number): boolean =>
  inner.left >= outer.left + by &&
  inner.right <= outer.right - by &&
  inner.top >= outer.top + by &&
  inner.bottom <= outer.bottom - by;

describe.each(SCENES)('$field', (wish) => {
  let scene: Scene;
  let sheets: Sheet[];
  test('is cut', async () => {
    scene = await makeScene(wish);
    sheets = await cutOf(scene);
    expect(sheets.length).toBeGreaterThan(0);
  });

  test('every opening grown by half the bridge stays clear of all others (clipper2)', () => {
    const { bridge } = scene.job.stencil;
    for (const sheet of sheets) {
      const all = openings(sheet).map(path);
      const grown = inflatePathsD(all, bridge / 2 - 0.01, JoinType.Round, EndType.Polygon, 2, 4, 0.005);
      const joined = unionD(grown, [], FillRule.NonZero, 4).filter((one) => areaPathsD([one]) > 0);
      expect([sheet.file, joined.length]).toEqual([sheet.file, all.length]);
    }
  });

  test('every sheet is sound, no larger than the film, its windows clear of the rim and its keys on the sheet', async () => {
    const { bridge, window, sheet: film } = scene.job.stencil;
    for (const sheet of sheets) {
      expect(await soundness(sheet, { bridge, window, rim: film.rim })).toEqual({
        sound: true,
        islands: 0,
        weak: [],
        narrow: [],
        outside: 0,
      });
      const size = [boxWidth(sheet.outline), boxHeight(sheet.outline)].sort((a, b) => a - b);
      expect(size[0]).toBeLessThanOrEqual(Math.min(film.across, film.along) + 1e-9);
      expect(size[1]).toBeLessThanOrEqual(Math.max(film.across, film.along) + 1e-9);
      for (const piece of sheet.windows) expect(inside(pieceBox(piece), sheet.outline, film.rim - 1e-9)).toBe(true);
      for (const { piece } of sheet.keys) expect(inside(pieceBox(piece), sheet.outline, bridge - 1e-9)).toBe(true);
    }
  });

  test('sheets of one pass never lie on each other, so nothing wet is covered', () => {
    for (const { file, outline, passes } of sheets) {
      for (const pass of passes) {
        const corners: Piece = [
          {
            start: [outline.left, outline.top],
            sides: [{ kind: 'line', to: [outline.right, outline.bottom] }],
          },
        ];
        const boxes = pass.map((placement) => pieceBox(movePiece(corners, lay(placement))));
        boxes.forEach((a, n) => {
          for (const b of boxes.slice(n + 1)) {
            const apart =
              a.right <= b.left + 1e-6 ||
              b.right <= a.left + 1e-6 ||
              a.bottom <= b.top + 1e-6 ||
              b.bottom <= a.top + 1e-6;
            expect([file, apart]).toEqual([file, true]);
          }
        });
      }
    }
  });

  test('files are numbered colour by colour', () => {
    const numbers = new Map<string, number>();
    for (const { file, colour } of sheets) {
      const next = (numbers.get(colour) ?? 0) + 1;
      numbers.set(colour, next);
      expect(file).toBe(`stencil-${colour}-${next}.svg`);
    }
  });
});

describe('sharing', () => {
  const field = { field: 'diamond', repeats: { across: 2, along: 3 }, pitch: { across: 150, along: 150 } };

  test('corner blocks: every sheet is laid once at each corner, by quarter turns', async () => {
    const sheets = await cutOf(await makeScene({ ...field, border: 75, side: 'plain-band', corner: 'quarter-fan' }));
    const corners = sheets.filter(({ says }) => says.startsWith('corner blocks'));
    expect(corners.length).toBeGreaterThan(0);
    for (const { passes } of corners) {
      const placements = passes.flat();
      expect(placements.map(({ turn }) => turn).sort()).toEqual([0, 1, 2, 3]);
      const centre = ({ x, y }: { x: number; y: number }) => `${Math.sign(x)} ${Math.sign(y)}`;
      expect(new Set(placements.map(centre)).size).toBe(4);
    }
  });

  test('border sides of one pitch share a sheet by quarter turns, of two pitches by half turns', async () => {
    // 300 × 450 of field, 75 of border: both sides hold repeats of 75.
    const even = await cutOf(
      await makeScene({
        ...field,
        border: 75,
        borderRepeats: { across: 4, along: 6 },
        side: 'sawtooth',
        corner: 'plain',
      }),
    );
    const shared = even.filter(({ says }) => says.startsWith('border'));
    expect(shared.map(({ says }) => says)).toEqual(['border, all four sides, every second of 6 repeats']);
    expect(new Set(shared[0]!.passes.flat().map(({ turn }) => turn))).toEqual(new Set([0, 1, 2, 3]));
    const odd = await cutOf(
      await makeScene({
        ...field,
        border: 75,
        borderRepeats: { across: 4, along: 7 },
        side: 'sawtooth',
        corner: 'plain',
      }),
    );
    const two = odd.filter(({ says }) => says.startsWith('border'));
    expect(two.map(({ says }) => says.replace(/,[^,]*$/, ''))).toEqual([
      'border, near and far sides',
      'border, left and right sides',
    ]);
    for (const { passes } of two) expect(new Set(passes.flat().map(({ turn }) => turn))).toEqual(new Set([0, 2]));
  });

  test('diamonds touch at their tips: every second one on a sheet, the same sheet moved by a repeat for the others', async () => {
    const [sheet] = await cutOf(
      await makeScene({ field: 'diamond', repeats: { across: 6, along: 6 }, pitch: { across: 100, along: 100 } }),
    );
    expect(sheet!.says).toMatch(/^field, every second of \d × \d repeats$/);
    const where = sheet!.passes.flat().map(({ x, y }) => Math.abs(Math.round((x + y) / 100)) % 2);
    expect(new Set(where).size).toBe(2);
  });

  test('squares of a checkerboard touch at their corners: both kinds through one sheet, moved by half a repeat', async () => {
    const sheets = await cutOf(
      await makeScene({ field: 'checkerboard', repeats: { across: 4, along: 4 }, pitch: { across: 130, along: 130 } }),
    );
    expect(sheets).toHaveLength(1);
    expect(sheets[0]!.passes.flat().reduce((sum, { open }) => sum + open.length, 0)).toBe(32);
  });

  test('halves at opposite edges share a sheet by a half turn, halves at all four when the pitches are equal', async () => {
    const wish = { field: 'diamond', repeats: { across: 4, along: 4 }, phase: { across: 0.5, along: 0.5 } };
    const equal = await cutOf(await makeScene({ ...wish, pitch: { across: 100, along: 100 } }));
    expect(equal.map(({ says }) => says.replace(/, every.*/, ''))).toEqual([
      'field',
      'field, what is left in its four corners',
      'field, repeats cut by its four edges',
    ]);
    const unequal = await cutOf(await makeScene({ ...wish, pitch: { across: 100, along: 110 } }));
    expect(unequal.map(({ says }) => says.replace(/, every.*/, ''))).toEqual([
      'field',
      'field, what is left in the left near and right far corners',
      'field, repeats cut by the near and far edges',
      expect.stringMatching(
        /^field, what is left in the right near and left far corners, mirror image of stencil-navy-2\.svg /,
      ),
      'field, repeats cut by the left and right edges',
    ]);
  });
});

describe('what cannot be cut', () => {
  test('a ring would lose its middle: the motif is named', async () => {
    const scene = await makeScene({ field: 'diamond' });
    const motifs = { field: ring };
    const drawing = await compose(
      scene.layout,
      { field: { settings: {} }, border: { settings: {}, corner: { settings: {} } } },
      motifs,
    );
    const cut = await cutSheets(drawing, scene.layout, scene.job, motifs);
    expect(cut).toMatchObject({ ok: false, issues: [{ code: 'stencil/island', path: ['field', 'motif'] }] });
    expect(!cut.ok && cut.issues[0]!.says).toContain('ring for a test');
  });

  test.each([
    ['in' as const, /sheet: \{ across: (\d+)", along: (\d+)" \}/, 25.4],
    ['cm' as const, /sheet: \{ across: (\d+) cm, along: (\d+) cm \}/, 10],
  ])('a repeat larger than the sheet, in %s: the sheet that is asked for will do', async (units, said, unit) => {
    const wish = { field: 'diamond', repeats: { across: 2, along: 2 }, pitch: { across: 700, along: 640 } };
    // A film from which nobody would split such a repeat.
    const scene = await makeScene({ ...wish, sheet: { across: 100, along: 100, rim: 25.4 } });
    const cut = await cutSheets(
      scene.drawing,
      scene.layout,
      { ...scene.job, units, step: units === 'in' ? 25.4 / 16 : 1 },
      scene.motifs,
    );
    expect(cut).toMatchObject({ ok: false, issues: [{ code: 'stencil/too-large', path: ['stencil', 'sheet'] }] });
    const hint = (!cut.ok && cut.issues[0]!.hint) || '';
    // In feet and inches 48" and more is written 4'; here both are over.
    const inches = (text: string) =>
      text
        .replace(/(\d+)' (\d+)"/g, (_, feet, rest) => `${Number(feet) * 12 + Number(rest)}"`)
        .replace(/(\d+)'/g, (_, feet) => `${Number(feet) * 12}"`);
    const [, across, along] = said.exec(inches(hint))!;
    const sheet = { across: Number(across) * unit, along: Number(along) * unit, rim: 25.4 };
    expect((await cutOf(await makeScene({ ...wish, sheet }))).length).toBe(1);
  });

  test('windows under the least window are refused with their place and size', async () => {
    const scene = await makeScene({
      field: 'diamond',
      repeats: { across: 2, along: 2 },
      pitch: { across: 20, along: 20 },
      window: 15,
    });
    const cut = await cutSheets(scene.drawing, scene.layout, scene.job, scene.motifs);
    // A square on point 20 wide is 20/√2 = 14.142 from side to side.
    expect(cut).toMatchObject({ ok: false, issues: [{ code: 'stencil/unsound', path: ['stencil', 'window'] }] });
    expect(!cut.ok && cut.issues[0]!.says).toMatch(
      /stencil-navy-1\.svg: windows are narrower than the least window of 15 mm: 14\.1\d mm, .* from the left and .* from the top/,
    );
  });
});

describe('tape', () => {
  test('plain bands and plain corner blocks are masked, and get no sheet', async () => {
    const scene = await makeScene({ field: 'diamond', border: 60, side: 'plain-band', corner: 'plain' });
    const sheets = await cutOf(scene);
    expect(sheets.every(({ says }) => says.startsWith('field'))).toBe(true);
    const { colours } = scene.job;
    const job = { colours, field: { settings: {} }, border: { settings: {}, corner: { settings: {} } } };
    const taped = tapedParts(job, scene.motifs);
    expect(taped.map(({ part, colour }) => [part, colour])).toEqual([
      ['border', 'navy'],
      ['corner', 'brick'],
    ]);
    for (const { says, colour } of taped) expect(says).toContain(colour);
    expect(tapedParts(job, { field: scene.motifs.field })).toEqual([]);
  });
});

test('same in, same out', async () => {
  const wish = SCENES[0]!;
  expect(JSON.stringify(await cutOf(await makeScene(wish)))).toBe(JSON.stringify(await cutOf(await makeScene(wish))));
});
