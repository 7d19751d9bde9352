import { describe, expect, test } from 'vitest';
import { pieceArea, pieceBox } from '../../src/geometry/measure.ts';
import type { Cell } from '../../src/motif/motif.ts';
import { drawNamed, needMotif, settingsOf } from '../support/motifs.ts';

type Share = (settings: Record<string, number>) => number;

const sq = (x: number): number => x * x;

/** Area between a chord and its arc: MathWorld, "Circular Segment". */
const segment = (radius: number, opening: number): number => (sq(radius) * (opening - Math.sin(opening))) / 2;

/** Area that two circles share: MathWorld, "Circle-Circle Intersection". */
const lens = (r: number, s: number, d: number): number =>
  sq(r) * Math.acos((d * d + r * r - s * s) / (2 * d * r)) +
  sq(s) * Math.acos((d * d + s * s - r * r) / (2 * d * s)) -
  Math.sqrt((-d + r + s) * (d + r - s) * (d - r + s) * (d + r + s)) / 2;

/** A ring of radius 0.425 less what the widened bands of its four neighbours take where they pass above; and a boss. */
const rings: Share = ({ band, boss, rib }) => {
  const [outer, inner, d] = [0.425 + band! / 2, 0.425 - band! / 2, Math.SQRT1_2];
  const [far, near] = [outer + rib!, inner - rib!];
  // A neighbour's widened band crosses the ring twice, and passes above at one of the two.
  const crossing = (lens(outer, far, d) - lens(inner, far, d) - lens(outer, near, d) + lens(inner, near, d)) / 2;
  return Math.PI * (sq(outer) - sq(inner)) - 4 * crossing + Math.PI * sq(boss! / 2);
};

/** Blades between flanks that meet on the axis, each ended by an arc of 120°, and the half disc less half a rib. */
const fan: Share = ({ blades, rib }) => {
  const [a, w, r, bulge] = [Math.PI / 2 / blades!, rib! / 2, 0.16, Math.PI / 3];
  const apex = w / Math.sin(a);
  // The end passes through the fan's own radius and meets both flanks: its radius from sin rule in the triangle apex–centre–shoulder.
  const reach = 0.5 - w - apex;
  const round = reach / (1 + Math.sin(bulge - a) / Math.sin(a));
  const middle = 0.5 - w - round;
  const [su, sv] = [middle + round * Math.cos(bulge), round * Math.sin(bulge)];
  const foot = a - Math.asin(w / r);
  const blade = (su - apex) * sv + segment(round, 2 * bulge) - (sq(r) * foot - apex * r * Math.sin(foot));
  const disc = r - rib!;
  return blades! * blade + segment(disc, 2 * Math.acos(w / disc));
};

type Row = [name: string, share: Share, given: Record<string, number>[]];

const STRAIGHT: Row[] = [
  // 4 squares of n planks each, in a cell of 1 × 1
  ['basketweave', ({ planks, rib }) => 4 * planks! * (0.5 - rib!) * (0.5 / planks! - rib!), [{}, { planks: 2 }]],
  // two planks √½ of the repeat long and a quarter of that wide, less a rib both ways, in a repeat of 1 × 1/4
  ['herringbone', ({ rib }) => 8 * (Math.SQRT1_2 - rib!) * (Math.SQRT1_2 / 4 - rib!), [{}, { rib: 0.04 }]],
  ['chevron', ({ band, rib }) => band! * (1 - 2 * rib!), [{}, { band: 0.4, rib: 0.05 }]],
  ['pinwheel', ({ rib }) => 2 * sq(0.5 - rib!), [{}, { rib: 0.05 }]],
  // planks of two squares round one, each less a rib both ways
  ['windmill', ({ rib }) => 4 * (2 / 3 - rib!) * (1 / 3 - rib!) + sq(1 / 3 - rib!), [{}, { rib: 0.05 }]],
  // n² diamonds of 60°, each less a rib both ways: a diamond of height h has the area h² / sin 60°, in a repeat of 1 × √3
  [
    'chequered-lozenge',
    ({ rows, rib }) => (2 / 3) * sq(rows! * (Math.sqrt(3) / 2 / rows! - rib!)),
    [{}, { rows: 5, rib: 0.03 }],
  ],
];

const ROUND: Row[] = [
  ['interlaced-circles', rings, [{}, { band: 0.05, boss: 0.1, rib: 0.028 }, { band: 0.07, boss: 0.24, rib: 0.022 }]],
  ['fan', fan, [{}, { blades: 5, rib: 0.03 }, { blades: 9, rib: 0.02 }]],
  // two circles of the same radius share two segments
  [
    'four-petal',
    ({ rib }) => 8 * segment(Math.hypot(0.5 - rib! / 2, rib! / 2), Math.PI / 2 - 2 * Math.atan(rib! / (1 - rib!))),
    [{}, { rib: 0.06 }],
  ],
];

/** Area of all pieces as a share of the cell, for one drawing of the unit. */
function shareOf(name: string, cell: Cell, given: Record<string, number>): number {
  const area = drawNamed(name, cell, given)
    .flatMap(({ pieces }) => pieces)
    .reduce((sum, piece) => sum + pieceArea(piece), 0);
  return area / (cell.across * cell.along);
}

const cases = (rows: Row[]) => rows.flatMap(([name, share, all]) => all.map((given) => ({ name, share, given })));
const trueCell = (name: string): Cell => ({ across: 240, along: 240 * needMotif(name).ratio });

describe('areas by the formulas of plane geometry', () => {
  test.each(cases(STRAIGHT))('$name $given', ({ name, share, given }) => {
    expect(shareOf(name, trueCell(name), given)).toBeCloseTo(share(settingsOf(needMotif(name), given)), 9);
  });

  // A quarter circle drawn as a cubic bulges by 0.0273 % of its radius at most: 2 parts in 10 000 of the area of a whole circle.
  test.each(cases(ROUND))('$name $given', ({ name, share, given }) => {
    expect(shareOf(name, trueCell(name), given)).toBeCloseTo(share(settingsOf(needMotif(name), given)), 3);
  });
});

test('a cross with arms as long as they are wide is made of five squares (MathWorld, "Greek Cross")', () => {
  // From the middle to the end of an arm is half a repeat less half an arm and a rib on the slant: three half arms.
  const given = { arm: (0.5 - 0.02 * Math.SQRT1_2) / 2, rib: 0.02 };
  const [cross] = drawNamed('greek-cross', { across: 200, along: 200 }, given).find(
    ({ part }) => part === 'field',
  )!.pieces;
  const box = pieceBox(cross!);
  expect((box.right - box.left) / (given.arm * 200)).toBeCloseTo(3, 9);
  expect(pieceArea(cross!)).toBeCloseTo(5 * sq(given.arm * 200), 6);
});

test('herringbone planks lean at 45° and are four times as long as wide between the middles of their ribs', () => {
  const [plank] = drawNamed('herringbone', { across: 240, along: 60 }).flatMap(({ pieces }) => pieces);
  const rib = 240 * settingsOf(needMotif('herringbone')).rib!;
  const corners = [plank![0]!.start, ...plank![0]!.sides.map(({ to }) => to)];
  const lengths = corners.slice(1).map(([x, y], i) => {
    const [dx, dy] = [x - corners[i]![0], y - corners[i]![1]];
    expect(Math.abs(dx)).toBeCloseTo(Math.abs(dy), 9);
    return Math.hypot(dx, dy) + rib;
  });
  expect(Math.max(...lengths) / Math.min(...lengths)).toBeCloseTo(4, 9);
});
