import { readFileSync } from 'node:fs';
import svgpath from 'svgpath';
import { describe, expect, test } from 'vitest';
import { ringOf } from '../../src/drawing/syntax/outline.ts';
import { readPathData } from '../../src/drawing/syntax/path-data.ts';
import { flatten } from '../../src/geometry/flatten.ts';
import { ringArea, ringBox } from '../../src/geometry/measure.ts';
import { seeded } from './support.ts';

/** Rows of the table: W3C SVG 2 editor text and the resvg test suite (MIT); see its head. */
const CASES = readFileSync(new URL('svg-path-cases.csv', import.meta.url), 'utf8')
  .split('\n')
  .filter((line) => line !== '' && !line.startsWith('#'))
  .slice(1)
  .map((line) => [...line.matchAll(/("[^"]*"|[^,]*)(?:,|$)/g)].map((cell) => cell[1]!.replace(/^"|"$/g, '')))
  .map(([id, d, reference, verdict, source]) => ({ id, d: d!, reference: reference!, verdict: verdict!, source }));

const fills = (d: string) =>
  readPathData(d)
    .outlines.map(ringOf)
    .filter((ring) => ring !== undefined);

describe('path data, against the cases of SVG 2 and the resvg test suite', () => {
  test('the table is whole', () => {
    expect(CASES).toHaveLength(23);
  });

  test.each(CASES)('$id: $verdict ($source)', ({ d, reference, verdict }) => {
    const { mistake } = readPathData(d);
    const rings = fills(d);
    if (verdict === 'nothing' || verdict === 'error-nothing') {
      expect(rings).toEqual([]);
    } else {
      const wanted = fills(reference);
      expect(wanted.length).toBeGreaterThan(0);
      expect(rings).toHaveLength(wanted.length);
      rings.forEach((ring, i) => {
        const [points, others] = [flatten(ring, 0.001), flatten(wanted[i]!, 0.001)];
        expect(points).toHaveLength(others.length);
        points.forEach(([x, y], k) => {
          expect(x).toBeCloseTo(others[k]![0], 9);
          expect(y).toBeCloseTo(others[k]![1], 9);
        });
      });
    }
    expect(mistake === undefined).toBe(verdict === 'equal' || verdict === 'nothing');
  });
});

/** Length of the drawn sides, without the closing line of an open path. */
function lengthOf(d: string): number {
  return readPathData(d).outlines.reduce((sum, outline) => {
    // Closing an open outline adds a point to its polygon only where it ends elsewhere; what was drawn lies before it.
    const points = flatten({ start: outline.start, sides: outline.sides }, 1e-5);
    const ends = outline.closed ? [...points, points[0]!] : points;
    return ends.slice(1).reduce((length, [x, y], i) => length + Math.hypot(x - ends[i]![0], y - ends[i]![1]), sum);
  }, 0);
}

describe('sample shapes of the SVG 2 specification (w3c/svgwg, paths)', () => {
  // Lengths in closed form, or by svg-path-properties 2.1.0 where there is none.
  test.each([
    ['M 100 100 L 300 100 L 200 300 z', 200 + 2 * Math.hypot(100, 200)],
    ['M200,300 Q400,50 600,300 T1000,300', 975.542188],
    ['M100,200 C100,100 250,100 250,200 S400,300 400,200', 475.7473],
    ['M300,200 h-150 a150,150 0 1,0 150,-150 z', 300 + 225 * Math.PI],
    ['M0 0 A 5 5 0 0 1 50 0', 25 * Math.PI],
    ['M 125,75 a100,50 0 0,0 100,50', 121.105603],
    ['M 125,75 a100,50 0 1,1 100,50', 363.316808],
  ])('%s is %d long', (d, length) => {
    expect(Math.abs(lengthOf(d) / length - 1)).toBeLessThan(3e-4);
  });

  test.each([
    ['M200,300 Q400,50 600,300 T1000,300', [200, 175, 1000, 425]],
    ['M100,200 C100,100 250,100 250,200 S400,300 400,200', [100, 125, 400, 275]],
    ['M0 0 A 5 5 0 0 1 50 0', [0, -25, 50, 0]],
  ])('%s lies in its box (extremes of the curves, in closed form)', (d, box) => {
    const { left, top, right, bottom } = ringBox(fills(d)[0]!);
    [left, top, right, bottom].forEach((value, i) => {
      expect(Math.abs(value - box[i]!)).toBeLessThan(0.01);
    });
  });

  test.each([
    ['M 100 100 L 300 100 L 200 300 z', 20_000],
    ['M300,200 h-150 a150,150 0 1,0 150,-150 z', (3 / 4) * Math.PI * 150 ** 2],
    ['M0 0 A 5 5 0 0 1 50 0', (Math.PI * 25 ** 2) / 2],
    ['M0 0 Q 50 100 100 0', (2 / 3) * 100 * 50],
    ['M0 0 A 50 30 0 1 1 100 0', (Math.PI * 50 * 30) / 2],
  ])('%s covers %d', (d, area) => {
    // Quarters of a circle as cubics bulge by 0.0273 % of the radius at most.
    expect(Math.abs(Math.abs(ringArea(fills(d)[0]!)) / area - 1)).toBeLessThan(6e-4);
  });
});

describe('long runs of numbers', () => {
  const random = seeded(3);
  const number = () => (random() * 200 - 100).toFixed(2);
  const run = (command: string, size: number, steps: number) =>
    `M0 0${command}${Array.from({ length: size * steps }, number).join(' ')}`;
  const arcs = `M0 0a${Array.from({ length: 900 }, () => `9 7 30 ${random() < 0.5 ? 0 : 1}${random() < 0.5 ? 0 : 1}${number()},${number()}`).join(' ')}`;

  test.each([
    ['lines', run('l', 2, 1500)],
    ['moves', `m${run('l', 2, 1500).slice(5)}`],
    ['cubics', run('C', 6, 700)],
    ['smooth quadratics', run('t', 2, 1300)],
    ['levels', run('h', 1, 3000)],
    ['arcs with flags run together', arcs],
    ['a mistake far along', `${run('L', 2, 1500)} 4 # 5`],
  ])('%s come to what svgpath makes of the whole', (_, d) => {
    const whole = svgpath(d) as unknown as { segments: [string, ...number[]][]; abs(): unknown };
    whole.abs();
    const last = whole.segments.at(-1)!;
    const { outlines } = readPathData(d);
    const at = outlines.at(-1)!.sides.at(-1)!.to;
    if (last[0] === 'H') expect(at[0]).toBeCloseTo(last[1]!, 6);
    else expect(at).toEqual(last.slice(-2).map((value) => expect.closeTo(value as number, 6)));
    expect(outlines.reduce((sum, { sides }) => sum + sides.length, 0)).toBeGreaterThanOrEqual(
      whole.segments.length - 1,
    );
  });

  test('half a million numbers in one run are read in little time', () => {
    const started = performance.now();
    const { outlines } = readPathData(`M0 0L${'1 2 3 4 '.repeat(125_000)}`);
    expect(outlines[0]!.sides).toHaveLength(250_000);
    expect(performance.now() - started).toBeLessThan(10_000);
  });
});
