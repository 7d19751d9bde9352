import { beforeAll, describe, expect, test } from 'vitest';
import { cutSheets } from '../../src/stencil/cut.ts';
import type { Sheet } from '../../src/stencil/sheet.ts';
import { writeLayout } from '../../src/write/layout.ts';
import { rugScene, runnerScene, type Scene } from './scene.ts';

let runner: Scene;
let rug: Scene;
let sheets: Sheet[];
const fit = { searched: 12_345, proof: 'exhaustive' } as const;

const written = ({ layout, job, motifs }: Scene, given: Sheet[] = []) =>
  writeLayout(layout, fit, job, motifs, given, []);
// biome-ignore lint/suspicious/noExplicitAny: a file read back, of any shape
const read = (scene: Scene, given: Sheet[] = []): any => JSON.parse(written(scene, given));

beforeAll(async () => {
  [runner, rug] = [await runnerScene(), await rugScene()];
  const cut = await cutSheets(runner.drawing, runner.layout, runner.job, runner.motifs);
  if (!cut.ok) throw new Error(cut.issues.map((issue) => issue.says).join());
  sheets = cut.value;
});

/** Every number in a value. */
const numbersIn = (value: unknown): number[] => {
  if (typeof value === 'number') return [value];
  return value !== null && typeof value === 'object' ? Object.values(value).flatMap(numbersIn) : [];
};

describe('layout.json', () => {
  test('says what was searched and how it was proven', () => {
    expect(read(runner)).toMatchObject({ evenfield: 1, searched: 12_345, proof: 'exhaustive' });
  });

  test('holds every number of the layout, to 1e-9 mm', () => {
    const back = read(runner).layout;
    expect(Object.keys(back)).toEqual(Object.keys(runner.layout));
    const [got, due] = [numbersIn(back), numbersIn(runner.layout)];
    expect(got).toHaveLength(due.length);
    got.forEach((value, at) => {
      expect(Math.abs(value - due[at]!)).toBeLessThanOrEqual(5.001e-10);
    });
    expect(back.pitch.along).toBe(151.911538462);
  });

  test('holds the identities of a layout within what rounding allows', () => {
    for (const scene of [runner, rug]) {
      const { overall, field, border, reserve, endGap, repeats, pitch } = read(scene).layout;
      expect(Math.abs(field.along - repeats.along * pitch.along)).toBeLessThanOrEqual((repeats.along + 1) * 5.1e-10);
      expect(Math.abs(overall.across - field.across - 2 * (border + reserve.across))).toBeLessThanOrEqual(4e-9);
      expect(Math.abs(overall.along - field.along - 2 * (border + reserve.along + endGap))).toBeLessThanOrEqual(4e-9);
    }
  });

  test('names the motifs with their settings, the colours, and what is made with tape', () => {
    const back = read(runner);
    expect(back.motifs.field).toEqual({ name: 'diamond', settings: {} });
    // The height of an equilateral triangle, half the root of 3.
    expect(back.motifs.border).toEqual({ name: 'sawtooth', settings: { height: 0.866025404, base: 1 } });
    expect(back.palette[back.colours.field]).toBe('#8c2f26');
    expect(back.taped.map((one: { part: string }) => one.part)).toEqual(['corner']);
    expect(read(rug).taped.map((one: { part: string }) => one.part)).toEqual(['border', 'corner']);
  });

  test('lists every sheet with where its origin lies and how it is laid', () => {
    const back = read(runner, sheets).sheets;
    expect(back).toHaveLength(sheets.length);
    sheets.forEach((sheet, at) => {
      expect(back[at]).toMatchObject({ file: sheet.file, colour: sheet.colour, says: sheet.says });
      expect([back[at].windows, back[at].keys]).toEqual([sheet.windows.length, sheet.keys.length]);
      // The sheet's left and top edge become 0, so its origin lies as far from them as it did before.
      expect(back[at].origin[0]).toBeCloseTo(-sheet.outline.left, 6);
      expect(back[at].origin[1]).toBeCloseTo(-sheet.outline.top, 6);
      expect(back[at].passes.map((pass: unknown[]) => pass.length)).toEqual(sheet.passes.map((pass) => pass.length));
      expect(Object.keys(back[at].passes[0][0])).toEqual(['turn', 'x', 'y', 'open']);
    });
  });

  test('leaves words as they are, whatever they look like', () => {
    const title = 'Hall [ 1,  2 ] "north" \\ café\n[3,\n 4]';
    expect(read({ ...runner, job: { ...runner.job, title } }).job.title).toBe(title);
  });

  test('writes no minus nought and no exponent, and ends with a line end', () => {
    const text = written({ ...runner, layout: { ...runner.layout, cost: -0, stretch: 1e-10 } });
    expect(text).toContain('"cost": 0,');
    expect(text).toContain('"stretch": 0,');
    expect(text.endsWith('}\n')).toBe(true);
  });

  test('same in, same out', () => expect(written(rug)).toBe(written(rug)));
});
