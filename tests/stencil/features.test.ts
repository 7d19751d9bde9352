import { describe, expect, test } from 'vitest';
import { clearRoom } from '../../src/compose/clear.ts';
import { compose } from '../../src/compose/compose.ts';
import type { Drawing, Lettered } from '../../src/compose/drawing.ts';
import type { Box, Piece } from '../../src/geometry/path.ts';
import { mirrored, shifted, turned } from '../../src/geometry/transform.ts';
import { cutSheets } from '../../src/stencil/cut.ts';
import type { Sheet } from '../../src/stencil/sheet.ts';
import { tapedParts } from '../../src/stencil/taped.ts';
import { differingArea, rectanglePiece } from '../support/areas.ts';
import { lookAtCovering } from './covering.ts';
import { ring } from './ring.ts';
import { makeScene, paintedPieces } from './scene.ts';
import { walkThrough } from './walk.ts';

const COVERED = { bare: 0, twice: 0, stray: [] };
const sheetsFor = (sheets: Sheet[], start: string) => sheets.filter(({ says }) => says.startsWith(start));
const turnsOf = ({ passes }: Sheet) => new Set(passes.flat().map(({ turn }) => turn));

describe('a border that reverses at the centre of each side', () => {
  const scroll = (run: string) =>
    walkThrough({ border: `{ motif: running-scroll, width: 50 to 70, turn: own, run: ${run} }` });

  /** How much two windows differ at best, by quarter turns, as a share of either. */
  const unlike = (one: Piece, other: Piece): number => {
    const centred = (piece: Piece) => {
      const xs = piece[0]!.sides.map(({ to }) => to[0]);
      const ys = piece[0]!.sides.map(({ to }) => to[1]);
      const middle = (values: number[]) => (Math.min(...values) + Math.max(...values)) / 2;
      return shifted(piece, -middle(xs), -middle(ys));
    };
    return Math.min(...[0, 1, 2, 3].map((turns) => differingArea([centred(one)], [turned(centred(other), turns)])));
  };

  test('has a sheet of its own for the mirrored halves, and says why', async () => {
    const { sheets } = await scroll('reverse');
    const others = sheetsFor(sheets, 'border, the other half of');
    expect(others.length).toBeGreaterThan(0);
    for (const { says, windows } of others) {
      const first = sheets.find(({ file }) => file === /mirror image of (\S+\.svg)/.exec(says)?.[1])!;
      expect(first.says).toMatch(/^border, one half of/);
      expect(says).toContain('a sheet turned over would lay its painted face on the floor');
      // By clipper2: mirrored they are one shape, turned about as one likes they are not.
      expect(unlike(mirrored(windows[0]!, 'across'), first.windows[0]!)).toBeLessThan(0.01);
      expect(unlike(windows[0]!, first.windows[0]!)).toBeGreaterThan(100);
    }
  });

  test('needs none where it runs round', async () => {
    const { sheets } = await scroll('round');
    expect(sheets.filter(({ says }) => says.includes('mirror image'))).toEqual([]);
    expect(sheetsFor(sheets, 'border, one half of')).toEqual([]);
  });

  test('has one for a key as well, all of whose corners lie on the outline of its mirror image', async () => {
    const { sheets } = await walkThrough({ border: '{ motif: greek-key, width: 60, turn: own, run: reverse }' });
    const [one, other] = sheetsFor(sheets, 'border');
    expect(one!.says).toMatch(/^border, one half of each side/);
    expect(other!.says).toMatch(/^border, the other half of each side/);
    // By clipper2: more than a quarter of the key differs, however it is turned.
    expect(unlike(mirrored(other!.windows[0]!, 'across'), one!.windows[0]!)).toBeLessThan(0.01);
    expect(unlike(other!.windows[0]!, one!.windows[0]!)).toBeGreaterThan(400);
  });
});

describe('alternate repeats', () => {
  test('in exchanged colours: one sheet a colour, and as many pieces in each as on a draughts board', async () => {
    const { sheets } = await walkThrough({ repeats: [5, 7], pitch: 100, more: 'alternate: checker' });
    const pieces = sheets.map(({ passes }) => passes.flat().reduce((sum, { open }) => sum + open.length, 0));
    // 35 squares, the four corners of one colour: 18 and 17.
    expect(pieces).toEqual([18, 17]);
  });

  test('too large for two repeats on a sheet: every second repeat is left out instead', async () => {
    const walked = await walkThrough({ repeats: [3, 3], pitch: 380, more: 'alternate: checker' });
    // Two repeats of 380 mm are longer than a sheet of 609.6 mm, so one is all that a sheet holds.
    expect(walked.sheets.map(({ windows }) => windows.length)).toEqual([1, 1]);
    expect(lookAtCovering(walked.sheets, paintedPieces(walked))).toEqual(COVERED);
  });
});

describe('a medallion', () => {
  test('that no sheet holds is cut in quarters, one sheet laid by quarter turns', async () => {
    const walked = await walkThrough({
      repeats: [7, 7],
      pitch: 120,
      rest: 'medallion: { motif: compass-rose, repeats: 5 }',
    });
    const quarters = sheetsFor(walked.sheets, 'medallion');
    expect(quarters.length).toBeGreaterThan(0);
    for (const sheet of quarters) {
      expect(sheet.says).toMatch(/^medallion, in quarters/);
      expect(turnsOf(sheet)).toEqual(new Set([0, 1, 2, 3]));
    }
    expect(lookAtCovering(walked.sheets, paintedPieces(walked))).toEqual(COVERED);
  });

  test('cuts the dots round its room in half, and they have a sheet that says so', async () => {
    const walked = await walkThrough({
      field: 'harlequin-with-dots',
      ratio: Math.sqrt(3),
      repeats: [7, 5],
      pitch: 90,
      rest: 'medallion: { motif: ringed-star, repeats: 3 }',
    });
    expect(walked.sheets.some(({ says }) => says.includes('cut by a room inside it'))).toBe(true);
    expect(lookAtCovering(walked.sheets, paintedPieces(walked))).toEqual(COVERED);
  });
});

describe('tape', () => {
  test('a part that is stencilled on the sides and masked at the corners says where it is masked', async () => {
    const { job, motifs, sheets } = await walkThrough({
      border: '{ motif: triple-band, width: 60, turn: mitre }',
      around: 120,
      rest: 'inner border: { motif: sawtooth, width: 30, gap: 10, corner: plain }\nreserve: 0 to 60',
    });
    const sides = ['border-near', 'border-far', 'border-left', 'border-right'];
    expect(tapedParts(job, motifs).map(({ part, elements }) => [part, elements])).toEqual([
      ['border', [...sides, 'corner']],
      ['border-alternate', [...sides, 'corner']],
      ['inner-border', ['inner-corner']],
    ]);
    expect(sheetsFor(sheets, 'inner border').length).toBeGreaterThan(0);
    expect(sheetsFor(sheets, 'corner')).toEqual([]);
  });
});

test('an island is put down to the motif that draws it, at its place in the job', async () => {
  const scene = await makeScene({ field: 'diamond', repeats: { across: 3, along: 3 } });
  const motifs = { ...scene.motifs, other: ring };
  const alternation = { by: 'checker', other: { motif: ring.name, settings: {} } } as const;
  const field = { settings: {}, alternation };
  const drawing = await compose(scene.layout, { field, border: { settings: {}, corner: { settings: {} } } }, motifs);
  const cut = await cutSheets(drawing, scene.layout, { ...scene.job, field }, motifs);
  expect(cut).toMatchObject({
    ok: false,
    issues: [{ code: 'stencil/island', path: ['field', 'alternate', 'with'] }],
  });
  expect(!cut.ok && cut.issues[0]!.says).toContain('ring for a test');
});

describe('lettering', () => {
  const box = (left: number, top: number, wide: number, high: number): Box => ({
    left,
    top,
    right: left + wide,
    bottom: top + high,
  });

  /** A row of upright bars in the middle of a field of diamonds, in a room cleared for it. */
  async function lettered(bars: number, apart: number, tall = (_: number) => 40) {
    const scene = await makeScene({
      field: 'diamond',
      repeats: { across: 9, along: 3 },
      pitch: { across: 100, along: 100 },
    });
    const wide = (bars - 1) * apart + 10;
    const room = box(-wide / 2 - 17, -35, wide + 34, 70);
    const pieces = Array.from({ length: bars }, (_, n) => rectanglePiece(box(n * apart - wide / 2, -20, 10, tall(n))));
    const set = { element: 'lettering', part: 'lettering', pieces, cut: false, at: Float64Array.of(0, 0) } as const;
    const drawing: Drawing = {
      ...scene.drawing,
      lettering: [room as Lettered],
      regions: [...(await clearRoom(scene.drawing.regions, room)), set],
    };
    const cut = await cutSheets(drawing, scene.layout, scene.job, scene.motifs);
    if (!cut.ok) throw new Error(cut.issues.map(({ says }) => says).join('\n'));
    return { sheets: cut.value, painted: paintedPieces({ ...scene, drawing }) };
  }

  test('has a sheet of its own, and so has what its room cuts', async () => {
    const { sheets, painted } = await lettered(5, 30);
    expect(sheetsFor(sheets, 'lettering').map(({ says, windows }) => [says, windows.length])).toEqual([
      ['lettering', 5],
    ]);
    expect(sheetsFor(sheets, 'field, cut by a room inside it').length).toBeGreaterThan(0);
    expect(lookAtCovering(sheets, painted)).toEqual(COVERED);
  });

  test('set from a font, in the field and in a border of repeats', async () => {
    for (const place of ['centre', 'near', 'far']) {
      const walked = await walkThrough({
        repeats: [6, 7],
        pitch: 100,
        border: '{ motif: sawtooth, width: 60 }',
        rest: `lettering: { text: MILL, place: ${place}, cap height: 30 }`,
      });
      const [sheet] = sheetsFor(walked.sheets, 'lettering');
      expect([place, sheet!.windows.length]).toEqual([place, 4]);
      expect([place, lookAtCovering(walked.sheets, paintedPieces(walked))]).toEqual([place, COVERED]);
    }
  });

  test('longer than a sheet is cut in parts, from left to right', async () => {
    // Windows reach 24" - 2 × 1" = 558.8 mm at most: of bars 40 mm from each other and 10 wide, 14 (530 mm), then 6.
    const { sheets, painted } = await lettered(20, 40, (n) => 20 + n);
    expect(sheetsFor(sheets, 'lettering').map(({ says, windows }) => [says, windows.length])).toEqual([
      ['lettering, part 1 of 2', 14],
      ['lettering, part 2 of 2', 6],
    ]);
    expect(lookAtCovering(sheets, painted)).toEqual(COVERED);
    // Where the second part is like the first, one sheet serves both.
    const alike = await lettered(20, 40);
    expect(sheetsFor(alike.sheets, 'lettering').map(({ windows }) => windows.length)).toEqual([14]);
    expect(lookAtCovering(alike.sheets, alike.painted)).toEqual(COVERED);
  });
});
