import { describe, expect, test } from 'vitest';
import { file, readGood, shareOf } from './support.ts';

const line = (d: string, how: string) => file(`<path fill="none" stroke="red" d="${d}" ${how}/>`);
const [w, k] = [10, 0.5 / Math.tan(Math.PI / 6)];

// Areas in closed form, in squares of the file's unit; the page is 100 × 100.
const AREAS: [what: string, svg: string, area: number][] = [
  ['a line with butt ends', line('M20 50H80', 'stroke-width="10"'), 600],
  ['with square ends', line('M20 50H80', 'stroke-width="10" stroke-linecap="square"'), 700],
  ['with round ends', line('M20 50H80', 'stroke-width="10" stroke-linecap="round"'), 600 + 25 * Math.PI],
  ['a slanting line', line('M20 20L70 90', 'stroke-width="3"'), 3 * Math.hypot(50, 70)],
  ['a dot', line('M50 50h0', 'stroke-width="30" stroke-linecap="round"'), 225 * Math.PI],
  ['a square dot', line('M50 50z', 'stroke-width="30" stroke-linecap="square"'), 900],
  [
    'a circle',
    file('<circle cx="50" cy="50" r="30" fill="none" stroke="red" stroke-width="8"/>'),
    2 * Math.PI * 30 * 8,
  ],
  [
    'a circle wider than its radius',
    file('<circle cx="50" cy="50" r="10" fill="none" stroke="red" stroke-width="30"/>'),
    Math.PI * 25 ** 2,
  ],
  [
    'a rectangle',
    file('<rect x="20" y="20" width="50" height="40" fill="none" stroke="red" stroke-width="6"/>'),
    56 * 46 - 44 * 34,
  ],
  [
    'a rectangle with bevels',
    file(
      '<rect x="20" y="20" width="50" height="40" fill="none" stroke="red" stroke-width="6" stroke-linejoin="bevel"/>',
    ),
    56 * 46 - 44 * 34 - 4 * 4.5,
  ],
  [
    'a rectangle with round joins',
    file(
      '<rect x="20" y="20" width="50" height="40" fill="none" stroke="red" stroke-width="6" stroke-linejoin="round"/>',
    ),
    56 * 46 - 44 * 34 - (4 - Math.PI) * 9,
  ],
  // Two sides of 50 at 60 degrees: their overlap within the corner is two right triangles of legs w/2 and w/2 / tan 30°.
  [
    'a mitre of 60 degrees',
    line(`M25 ${50 + 25 * Math.sqrt(3)}L50 50L75 ${50 + 25 * Math.sqrt(3)}`, 'stroke-width="10"'),
    2 * 50 * w - (w / 2) * (k * w) + (w / 2) * (k * w),
  ],
  [
    'the same with a bevel',
    line(
      `M25 ${50 + 25 * Math.sqrt(3)}L50 50L75 ${50 + 25 * Math.sqrt(3)}`,
      'stroke-width="10" stroke-linejoin="bevel"',
    ),
    2 * 50 * w - (w / 2) * (k * w) + ((w / 2) ** 2 * Math.sin((2 * Math.PI) / 3)) / 2,
  ],
  [
    'the same with a mitre that its limit cuts off',
    line(
      `M25 ${50 + 25 * Math.sqrt(3)}L50 50L75 ${50 + 25 * Math.sqrt(3)}`,
      'stroke-width="10" stroke-miterlimit="1.9"',
    ),
    2 * 50 * w - (w / 2) * (k * w) + ((w / 2) ** 2 * Math.sin((2 * Math.PI) / 3)) / 2,
  ],
  [
    'the same with a round join',
    line(
      `M25 ${50 + 25 * Math.sqrt(3)}L50 50L75 ${50 + 25 * Math.sqrt(3)}`,
      'stroke-width="10" stroke-linejoin="round"',
    ),
    2 * 50 * w - (w / 2) * (k * w) + ((w / 2) ** 2 * Math.PI) / 3,
  ],
  ['dashes', line('M10 50H90', 'stroke-width="4" stroke-dasharray="10 5"'), 4 * (5 * 10 + 5)],
  [
    'dashes that begin within',
    line('M10 50H90', 'stroke-width="4" stroke-dasharray="10 5" stroke-dashoffset="12"'),
    4 * (5 * 10 + 2),
  ],
  ['an odd list of dashes, twice over', line('M10 50H70', 'stroke-width="4" stroke-dasharray="10"'), 4 * 30],
  ['a line stretched', file('<path transform="scale(2 1)" stroke="red" stroke-width="4" d="M10 50H40"/>'), 2 * 4 * 30],
  [
    'a line stretched aslant',
    file('<path transform="scale(2 1)" stroke="red" stroke-width="4" d="M20 20V70"/>'),
    2 * 4 * 50,
  ],
  [
    'a line mirrored',
    file('<path transform="matrix(-1 0 0 1 100 0)" fill="none" stroke="red" stroke-width="4" d="M20 20V70"/>'),
    4 * 50,
  ],
  [
    'a line over its own fill, of one colour',
    file('<rect x="20" y="20" width="50" height="40" fill="red" stroke="red" stroke-width="6"/>'),
    56 * 46,
  ],
];

describe('lines become the areas they paint', () => {
  test.each(AREAS)('%s', async (_, svg, area) => {
    const read = await readGood(svg);
    // Quarters of a circle as cubics bulge by 0.0273 % of the radius at most.
    expect(Math.abs((shareOf(read) * 1e4) / area - 1)).toBeLessThan(6e-4);
    expect(read.notes).toContain('Lines (strokes) were turned into the areas that they paint.');
  });

  test('straight lines stay straight, and exact', async () => {
    const { drawn } = await readGood(file('<path fill="none" stroke="red" stroke-width="10" d="M20 20H80V70"/>'));
    const [ring] = drawn[0]!.pieces[0]!;
    const corners = [ring!.start, ...ring!.sides.map((side) => side.to)].map(
      ([x, y]) => `${(x + 500).toFixed(9)},${(y + 500).toFixed(9)}`,
    );
    expect(ring!.sides.every((side) => side.kind === 'line')).toBe(true);
    expect(new Set(corners)).toEqual(
      new Set(
        ['200 150', '850 150', '850 700', '750 700', '750 250', '200 250'].map((pair) =>
          pair
            .split(' ')
            .map((one) => Number(one).toFixed(9))
            .join(),
        ),
      ),
    );
  });

  test('a line beside a curve is few curves, not many short lines', async () => {
    const { drawn } = await readGood(line('M10 80C10 -20 90 120 90 20', 'stroke-width="7" stroke-linecap="round"'));
    const sides = drawn[0]!.pieces.flat().flatMap((ring) => ring.sides);
    expect(sides.length).toBeLessThan(50);
    expect(sides.filter((side) => side.kind === 'line')).toHaveLength(0);
  });

  test('the line lies over the fill, or below it where the file says so', async () => {
    const circle = (order: string) =>
      file(`<circle cx="50" cy="50" r="30" fill="red" stroke="blue" stroke-width="8" ${order}/>`);
    const over = await readGood(circle(''));
    expect(shareOf(over, 'field')).toBeCloseTo(Math.PI * 0.26 ** 2, 3);
    const under = await readGood(circle('style="paint-order:stroke"'));
    expect(shareOf(under, 'field')).toBeCloseTo(Math.PI * 0.3 ** 2, 3);
  });
});
