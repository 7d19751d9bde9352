import { describe, expect, test } from 'vitest';
import { pieceArea } from '../../src/geometry/measure.ts';
import type { Cell } from '../../src/motif/motif.ts';
import { coveredArea, pixelArea } from '../support/areas.ts';
import { drawNamed, needMotif, piecesOf, settingsOf } from '../support/motifs.ts';

// Areas as shares of the cell, worked out from the description of each motif with the formulas of plane geometry.
type Share = (settings: Record<string, number>) => number;

/** Eight kites and an eye on a circle of radius 1, in a cell of 2 × 2. */
const star: Share = ({ notch, rib, eye }) => {
  const [a, n, h, e] = [Math.PI / 8, notch!, rib!, eye!];
  const r = e + 2 * h;
  // Half a kite: the triangle apex–tip–shoulder less the part of the eye's surround that lies in it.
  const apex = h / Math.sin(a);
  const shoulder = (1 - h / Math.sin(a)) * n * Math.sin(a);
  const foot = a - Math.asin(h / r);
  const half = ((1 - apex) * shoulder) / 2 - ((r * r * foot) / 2 - (apex * r * Math.sin(foot)) / 2);
  return (16 * half + Math.PI * e * e) / 4;
};

/** Blades with round ends between two flanks, and the disc they stand on, in a block of 1 × 1. */
const fan: Share = ({ blades, rib }) => {
  const [n, w] = [blades!, rib!];
  const [a, h] = [Math.PI / 4 / n, w / 2];
  const r = Math.max(0.3, w / Math.sin(a));
  let sum = 0;
  for (let i = 0; i < n; i++) {
    const axis = (2 * i + 1) * a;
    const middle = (1 - w) / ((Math.cos(axis) ** 4 + Math.sin(axis) ** 4) ** 0.25 + Math.sin(a));
    const apex = h / Math.sin(a);
    const round = (middle - apex) * Math.sin(a);
    const flank = (middle - apex) * Math.cos(a);
    const foot = a - Math.asin(h / r);
    sum += round * flank + (round * round * (Math.PI + 2 * a)) / 2;
    sum -= r * r * foot - apex * r * Math.sin(foot);
  }
  const q = r - w;
  const edge = Math.asin(h / q);
  return sum + (q * q * (Math.PI / 2 - 2 * edge)) / 2 - h * (q * Math.cos(edge) - h);
};

const SHARES: [name: string, share: Share, given: Record<string, number>][] = [
  ['diamond', () => 1 / 2, {}],
  ['lozenge', () => 1 / 2, {}],
  ['checkerboard', () => 1 / 2, {}],
  ['plain-band', () => 1, {}],
  ['plain', () => 1, {}],
  ['sawtooth', ({ base, height }) => (base! * height!) / 2, {}],
  ['sawtooth', ({ base, height }) => (base! * height!) / 2, { base: 0.8, height: 0.6 }],
  ['eight-point-star', star, {}],
  ['eight-point-star', star, { notch: 0.5411961, rib: 0.04, eye: 0.1 }],
  ['quarter-fan', fan, {}],
  ['quarter-fan', fan, { blades: 9, rib: 0.05 }],
  ['quarter-fan', fan, { blades: 3, rib: 0.02 }],
];

const CELLS: Cell[] = [
  { across: 304.8, along: 304.8 },
  { across: 100, along: 173.2 },
  { across: 61, along: 47 },
];

describe.each(SHARES)('%s %#', (name, share, given) => {
  const settings = settingsOf(needMotif(name), given);
  test.each(CELLS)('covers its share of $across × $along mm: closed form, clipper2, pixels of resvg', (cell) => {
    const pieces = piecesOf(name, cell, given);
    const size = cell.across * cell.along;
    const expected = share(settings) * size;
    const area = pieces.reduce((sum, piece) => sum + pieceArea(piece), 0);
    // Quarter circles drawn as cubics bulge by up to 0.0273 % of the radius.
    expect(Math.abs(area - expected)).toBeLessThan(1e-4 * expected);
    // Chords within 0.0005 mm.
    expect(Math.abs(coveredArea(pieces) - area)).toBeLessThan(2e-5 * size);
    const box = { left: -cell.across / 2, right: cell.across / 2, top: -cell.along / 2, bottom: cell.along / 2 };
    expect(Math.abs(pixelArea(pieces, box) - expected)).toBeLessThan(1e-3 * size);
  });
});

describe('half of the floor is painted', () => {
  test('by stars with no rib and no eye, at notches of 0.65 (8 × 0.65 × sin 22.5° of the four quarters)', () => {
    expect((8 * 0.65 * Math.sin(Math.PI / 8)) / 4).toBeCloseTo(0.4975, 4);
  });

  test('and the stars as drawn still weigh 0.4 to 0.5 of their cell', () => {
    const [cell, drawn] = [{ across: 200, along: 200 }, piecesOf('eight-point-star', { across: 200, along: 200 })];
    const weight = drawn.reduce((sum, piece) => sum + pieceArea(piece), 0) / (cell.across * cell.along);
    expect(weight).toBeGreaterThan(0.4);
    expect(weight).toBeLessThan(0.5);
  });
});

describe('lozenge', () => {
  // d1 × d2 / 2, and a side of √(d1² + d2²) / 2: plane geometry.
  test.each([
    [20, 12],
    [152.4, 263.9],
  ])('of diagonals %d and %d', (across, along) => {
    const [piece] = piecesOf('lozenge', { across, along });
    expect(pieceArea(piece!)).toBeCloseTo((across * along) / 2, 9);
    const [ring] = piece!;
    const corner = ring!.sides[0]!.to;
    const side = Math.sqrt((corner[0] - ring!.start[0]) ** 2 + (corner[1] - ring!.start[1]) ** 2);
    expect(side).toBeCloseTo(Math.sqrt(across ** 2 + along ** 2) / 2, 9);
  });

  test('true to shape has four equal sides and corners of 60° and 120°', () => {
    const { ratio } = needMotif('lozenge');
    const [piece] = piecesOf('lozenge', { across: 100, along: 100 * ratio });
    const tip = piece![0]!.start;
    const right = piece![0]!.sides[0]!.to;
    expect((Math.atan2(Math.abs(right[0] - tip[0]), Math.abs(right[1] - tip[1])) * 360) / Math.PI).toBeCloseTo(60, 9);
  });
});

describe('a square on point is as wide as its side times √2', () => {
  // Side in inches, width to the nearest 1/16 in, width to the nearest 1/32 in: exact products, rounded (plane geometry).
  test.each([
    [4, 5 + 11 / 16, 5 + 21 / 32],
    [6, 8 + 1 / 2, 8 + 1 / 2],
    [8, 11 + 5 / 16, 11 + 5 / 16],
    [9, 12 + 3 / 4, 12 + 23 / 32],
    [10, 14 + 1 / 8, 14 + 5 / 32],
    [12, 17, 16 + 31 / 32],
    [16, 22 + 5 / 8, 22 + 5 / 8],
    [18, 25 + 7 / 16, 25 + 15 / 32],
    [24, 33 + 15 / 16, 33 + 15 / 16],
  ])('side %d in', (side, sixteenths, thirtySeconds) => {
    const draw = (width: number) =>
      drawNamed('diamond', { across: width * 25.4, along: width * 25.4 })[0]!.pieces[0]![0]!;
    const sides = (width: number) => {
      const ring = draw(width);
      const corners = [ring.start, ...ring.sides.map(({ to }) => to)];
      return corners
        .slice(1)
        .map(([x, y], i) => Math.sqrt((x - corners[i]![0]) ** 2 + (y - corners[i]![1]) ** 2) / 25.4);
    };
    // A width off by half a step of the tape is a side off by that over √2.
    for (const found of sides(sixteenths)) expect(Math.abs(found - side)).toBeLessThanOrEqual(1 / 32 / Math.SQRT2);
    for (const found of sides(thirtySeconds)) expect(Math.abs(found - side)).toBeLessThanOrEqual(1 / 64 / Math.SQRT2);
    // Steps to either side are off by more.
    for (const off of [-1 / 16, 1 / 16]) {
      expect(Math.abs(sides(sixteenths + off)[0]! - side)).toBeGreaterThan(1 / 32 / Math.SQRT2);
    }
  });

  test('and its corners are square', () => {
    const { start, sides } = drawNamed('diamond', { across: 240, along: 240 })[0]!.pieces[0]![0]!;
    const corners = [start, ...sides.map(({ to }) => to)];
    for (let i = 0; i + 2 < corners.length; i++) {
      const [a, b, c] = [corners[i]!, corners[i + 1]!, corners[i + 2]!];
      expect((b[0] - a[0]) * (c[0] - b[0]) + (b[1] - a[1]) * (c[1] - b[1])).toBeCloseTo(0, 9);
    }
  });
});

test('the fan is nowhere thinner than a rib: it survives an opening of a rib’s width (clipper2)', async () => {
  const { Clipper, EndType, JoinType } = await import('clipper2-ts');
  const { pathsOf } = await import('../support/areas.ts');
  for (const given of [{}, { blades: 9, rib: 0.05 }, { blades: 9, rib: 0.02 }, { blades: 3, rib: 0.05 }]) {
    const size = 100;
    const { rib } = settingsOf(needMotif('quarter-fan'), given);
    const pieces = piecesOf('quarter-fan', { across: size, along: size }, given);
    const by = (rib! * size * 100_000) / 2 - 2000;
    for (const piece of pieces) {
      const eroded = Clipper.inflatePaths(pathsOf([piece]), -by, JoinType.Round, EndType.Polygon, 2, 100);
      // Still one piece: no neck in a blade is narrower than a rib.
      expect(eroded).toHaveLength(1);
    }
    // And no two windows of the block lie closer together than a rib.
    const grown = Clipper.inflatePaths(pathsOf(pieces), by, JoinType.Round, EndType.Polygon, 2, 100);
    expect(grown.filter((path) => Clipper.area(path) > 0)).toHaveLength(pieces.length);
  }
});
