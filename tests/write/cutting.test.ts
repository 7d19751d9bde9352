import svgpath from 'svgpath';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Point, Ring } from '../../src/geometry/path.ts';
import { CUTTING } from '../../src/job/defaults.ts';
import { withCuts } from '../../src/stencil/cut-order/sheet-cuts.ts';
import type { Sheet } from '../../src/stencil/sheet.ts';
import { firstStretch } from '../../src/write/overcut.ts';
import { lineOrder, writeStencil } from '../../src/write/stencil.ts';
import { tidySvg } from '../../src/write/tidy.ts';
import { circle, square } from '../stencil/cut-order/support/rings.ts';
import { cutOf, makeScene } from '../stencil/scene.ts';

let sheet: Sheet;
beforeAll(async () => {
  const pitch = { across: 160 / 3, along: 170 / 3 };
  [sheet] = (await cutOf(
    await makeScene({ field: 'eight-point-star', repeats: { across: 5, along: 7 }, pitch, bridge: 2, window: 1 }),
  )) as [Sheet];
});

const paths = (svg: string): { id: string; d: string }[] =>
  [...svg.matchAll(/<path id="([^"]*)"[^>]*? d="([^"]*)"/g)].map(([, id, d]) => ({ id: id!, d: d! }));

/** Numbers of a path in absolute lines and cubics (read by svgpath). */
function numbers(d: string): number[] {
  const found: number[] = [];
  let [x, y] = [0, 0];
  svgpath(d)
    .abs()
    .unshort()
    .iterate(([letter, ...values]) => {
      if (letter === 'H') x = values[0] as number;
      else if (letter === 'V') y = values[0] as number;
      else if (letter !== 'Z') [x, y] = values.slice(-2) as [number, number];
      found.push(...(letter === 'H' || letter === 'V' ? [x, y] : (values as number[])));
    });
  return found;
}

describe('the cut order in the file', () => {
  test('is that of the sheet, the edge last, and svgo keeps it', async () => {
    const ordered = withCuts(sheet, 'free');
    const ids = [...ordered.cuts.map(({ kind, index }) => `${kind}-${index + 1}`), 'outline'];
    expect(lineOrder(ordered)).toEqual(ids);
    const text = writeStencil(ordered);
    expect(paths(text).map(({ id }) => id)).toEqual(ids);
    expect(paths(await tidySvg(text)).map(({ id }) => id)).toEqual(ids);
    expect(ids.slice(0, -1)).not.toEqual(lineOrder(sheet).slice(0, -1));
  });

  test('changes no window: the same corners and handles, begun elsewhere', () => {
    const due = new Map(paths(writeStencil(sheet)).map(({ id, d }) => [id, numbers(d).sort((a, b) => a - b)]));
    const free = withCuts(sheet, 'free');
    expect(free.cuts.some(({ entry }) => entry > 0)).toBe(true);
    for (const { id, d } of paths(writeStencil(free))) {
      // A ring that is begun elsewhere leaves another corner to Z: sets of numbers are compared.
      expect(new Set(numbers(d)), id).toEqual(new Set(due.get(id)));
    }
  });
});

test('mirrored: x becomes the width less x, everything else stays, and the file says so', () => {
  const [plain, over] = [writeStencil(sheet), writeStencil(sheet, { ...CUTTING, mirrored: true })];
  const width = Number(/viewBox="0 0 (\S+)/.exec(plain)![1]);
  expect(over).toContain('Mirrored for cutting from the back.');
  expect(plain).not.toContain('Mirrored');
  const mirrored = paths(over);
  paths(plain).forEach(({ id, d }, at) => {
    expect(mirrored[at]!.id).toBe(id);
    numbers(d).forEach((value, k, all) => {
      const due = k % 2 === 0 ? width - value : value;
      expect(Math.abs(numbers(mirrored[at]!.d)[k]! - due), `${id} ${all.length}`).toBeLessThan(0.0021);
    });
  });
}, 20_000);

test('outline: cut, drawn only, or left out; lines in the colours of the job', () => {
  const cutting = { ...CUTTING, lines: { cut: '#112233', draw: '#445566', crease: '#778899' } };
  expect(writeStencil(sheet, cutting)).toMatch(/<path id="outline" data-line="cut" fill="none" stroke="#112233"/);
  const drawn = writeStencil(sheet, { ...cutting, outline: 'draw' });
  expect(drawn).toMatch(/<path id="outline" data-line="draw" fill="none" stroke="#445566"/);
  expect(drawn).toContain('cut (#112233)');
  expect(writeStencil(sheet, { ...cutting, outline: 'none' })).not.toContain('id="outline"');
});

describe('overcut', () => {
  const last = (ring: Ring, long: number): Point => firstStretch(ring, long).at(-1)!.to;

  test('ends where so much of the ring has been run: along corners of a square', () => {
    expect(last(square(0, 0, 10), 0.3)).toEqual([0.3, 0]);
    expect(last(square(0, 0, 10), 10)).toEqual([10, 0]);
    expect(last(square(0, 0, 10), 12.5)[0]).toBe(10);
    expect(last(square(0, 0, 10), 12.5)[1]).toBeCloseTo(2.5, 9);
    expect(firstStretch(square(0, 0, 1), 100)).toHaveLength(4);
  });

  test('splits a curve where an arc of that length ends (radius × angle), to what four cubics are a circle (0.03 %)', () => {
    for (const long of [0.3, 2, 7]) {
      const [x, y] = last(circle(0, 0, 10), long);
      expect(Math.abs(Math.atan2(y, x) - long / 10)).toBeLessThan(0.0004);
      expect(Math.abs(Math.hypot(x, y) - 10)).toBeLessThan(0.0028);
    }
  });

  test('is one open stroke that comes back to its start and runs on, also when tidied', async () => {
    const text = await tidySvg(writeStencil(withCuts(sheet, 'free'), { ...CUTTING, overcut: 0.5 }));
    expect(text).toContain('by 0.5 mm');
    for (const { d, id } of paths(text)) {
      expect(d, id).not.toMatch(/z/i);
      expect(d.match(/m/gi), id).toHaveLength(1);
    }
    expect(text.match(/data-overcut="0.5"/g)).toHaveLength(sheet.windows.length + sheet.keys.length + 1);
  });
});
