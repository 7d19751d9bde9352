import {
  areaPathsD,
  differenceD,
  EndType,
  FillRule,
  inflatePathsD,
  intersectD,
  JoinType,
  type PathsD,
  unionD,
} from 'clipper2-ts';
import { describe, expect, test } from 'vitest';
import { flatten } from '../../src/geometry/flatten.ts';
import { pieceBox, piecesBox, ringArea } from '../../src/geometry/measure.ts';
import type { Piece, Point, Side } from '../../src/geometry/path.ts';
import { movePiece, shifted } from '../../src/geometry/transform.ts';
import { loadClipper } from '../../src/stencil/clip.ts';
import { cornersOf } from '../../src/stencil/corner.ts';
import { cutBest } from '../../src/stencil/cut-areas.ts';
import { oneCell } from '../../src/stencil/one-cell.ts';
import type { Part } from '../../src/stencil/part.ts';
import { makePatch } from '../../src/stencil/patch.ts';
import { reachOf } from '../../src/stencil/placed.ts';
import { ShapeBook } from '../../src/stencil/shape.ts';
import type { Key } from '../../src/stencil/sheet.ts';
import { soundness } from '../../src/stencil/soundness.ts';
import { lay, SHEET } from './scene.ts';

/** All shapes are invented. mm. */
const LAP = 1;
const BRIDGE = 3;
const WINDOW = 1.5;
const INCH = 25.4;

const polygon = (...points: Point[]): Piece => {
  const ring = { start: points[0]!, sides: [...points.slice(1), points[0]!].map((to): Side => ({ kind: 'line', to })) };
  if (ringArea(ring) < 0) return polygon(...[...points].reverse());
  return [ring];
};

/** A quarter arc as a cubic, after the usual 4/3 (√2 − 1). */
const KAPPA = (4 / 3) * (Math.SQRT2 - 1);
function arcs(radius: number, quarters: number, from = 0): { start: Point; sides: Side[] } {
  const at = (n: number, r = radius): Point => [
    r * [1, 0, -1, 0][((n % 4) + 4) % 4]!,
    r * [0, 1, 0, -1][((n % 4) + 4) % 4]!,
  ];
  const sides = Array.from({ length: Math.abs(quarters) }, (_, n): Side => {
    const step = Math.sign(quarters);
    const [a, b] = [at(from + n * step), at(from + (n + 1) * step)];
    return {
      kind: 'curve',
      out: [a[0] + KAPPA * b[0], a[1] + KAPPA * b[1]],
      into: [b[0] + KAPPA * a[0], b[1] + KAPPA * a[1]],
      to: b,
    };
  });
  return { start: at(from), sides };
}
const disc = (radius: number): Piece => [arcs(radius, 4)];
/** Part of a ring, from quarter `from` on. */
function bow(outer: number, inner: number, quarters: number, from: number): Piece {
  const [there, back] = [arcs(outer, quarters, from), arcs(inner, -quarters, from + quarters)];
  return [
    {
      start: there.start,
      sides: [...there.sides, { kind: 'line', to: back.start }, ...back.sides, { kind: 'line', to: there.start }],
    },
  ];
}

const CASES: [name: string, pieces: Piece[], most: number][] = [
  ['a diamond of 40 in', [polygon([0, -508], [508, 0], [0, 508], [-508, 0])], 8],
  ['a circle of 36 in', [disc(18 * INCH)], 6],
  [
    'a ring of 36 in in two halves',
    [bow(457, 380, 2, 0), bow(457, 380, 2, 2)].map((half, n) => shifted(half, 0, n ? -2 : 2)),
    6,
  ],
  ['a C', [bow(450, 250, 3, 0)], 6],
  ['an L 50 in tall', [polygon([0, 0], [90, 0], [90, 1180], [500, 1180], [500, 1270], [0, 1270])], 6],
  ['a bar 8 ft long', [polygon([0, 0], [2438.4, 0], [2438.4, 60], [0, 60])], 5],
];

const paths = (pieces: Piece[]): PathsD =>
  pieces.flatMap((piece) => piece.map((ring) => flatten(ring, 0.0005).map(([x, y]) => ({ x, y }))));
const size = (all: PathsD): number => Math.abs(areaPathsD(all));
const round = (all: PathsD): number =>
  all.reduce(
    (sum, path) =>
      sum + path.reduce((long, { x, y }, n) => long + Math.hypot(x - path.at(n - 1)!.x, y - path.at(n - 1)!.y), 0),
    0,
  );
const united = (pieces: Piece[]): PathsD => unionD(paths(pieces), [], FillRule.NonZero, 4);
const off = (a: PathsD, b: PathsD): number =>
  size(differenceD(a, b, FillRule.NonZero, 4)) + size(differenceD(b, a, FillRule.NonZero, 4));

const guides = { x: { fixed: [0] }, y: { fixed: [0] } };

interface Laid {
  windows: Piece[];
  keys: Key[];
  part: Part;
}

async function bench(book: ShapeBook, film = SHEET) {
  return {
    book,
    corners: (shape: number) => cornersOf(book.shapes[shape]!),
    room: { ...film, bridge: BRIDGE },
    job: { units: 'in' as const, step: INCH / 16, stencil: { bridge: BRIDGE, window: WINDOW, sheet: film } },
    clipper: await loadClipper(),
    lap: LAP,
  };
}

async function cut(pieces: Piece[], film = SHEET) {
  const book = new ShapeBook();
  const placed = pieces.map((piece) => book.find(piece));
  const area = oneCell({ family: 'medallion', name: 'shape', place: '', guides }, placed, reachOf(placed, book));
  return cutBest([[area]], await bench(book, film));
}

const sheetsOf = ({ patterns }: Awaited<ReturnType<typeof cut>>) => patterns.flatMap(({ sheets }) => sheets);

const layAll = (found: Awaited<ReturnType<typeof cut>>): Laid[] =>
  sheetsOf(found).flatMap(({ bare }) =>
    bare.passes.flat().map((placement): Laid => {
      const move = lay(placement);
      return {
        windows: placement.open.map((n) => movePiece(bare.windows[n]!, move)),
        keys: bare.keys.map((key) => ({ ...key, point: move(key.point) })),
        part: bare.part!,
      };
    }),
  );

describe.each(CASES)('%s', (_, pieces, most) => {
  let found: Awaited<ReturnType<typeof cut>>;
  let laid: Laid[];

  test('is split, in few sheets that fit the film and hold together', async () => {
    found = await cut(pieces);
    expect(found.issues).toEqual([]);
    laid = layAll(found);
    expect(laid.length).toBeGreaterThan(1);
    expect(laid.length).toBeLessThanOrEqual(most);
    for (const { bare } of sheetsOf(found)) {
      const { outline } = bare;
      const sides = [outline.right - outline.left, outline.bottom - outline.top].sort((a, b) => a - b);
      expect(sides[0]).toBeLessThanOrEqual(SHEET.across + 1e-6);
      expect(sides[1]).toBeLessThanOrEqual(SHEET.along + 1e-6);
      expect(await soundness(bare, { bridge: BRIDGE, window: WINDOW, rim: SHEET.rim })).toMatchObject({ sound: true });
    }
  });

  // clipper2 knows nothing of how the parts were made: its union of them is compared with its union of the pieces.
  test('its parts, put together again, are the shape', () => {
    const [whole, parts] = [united(pieces), united(laid.flatMap(({ windows }) => windows))];
    expect(off(whole, parts)).toBeLessThan(1e-3 * round(whole));
  });

  test('what is painted twice is strips as wide as the lap', () => {
    let twice = 0;
    for (const [n, one] of laid.entries()) {
      for (const other of laid.slice(n + 1)) {
        const both = intersectD(united(one.windows), united(other.windows), FillRule.NonZero, 4);
        if (size(both) < 1e-3) continue;
        twice++;
        const pared = (by: number) => size(inflatePathsD(both, -by, JoinType.Miter, EndType.Polygon, 2, 4));
        expect(pared(LAP / 2 - 0.01)).toBeGreaterThan(0);
        expect(pared(LAP / 2 + 0.01)).toBe(0);
      }
    }
    expect(twice).toBeGreaterThan(0);
  });

  test('match keys of neighbours lie on each other, off every shape', () => {
    const keys = laid.flatMap(({ keys: all }, n) =>
      all.filter(({ kind }) => kind === 'match').map(({ point }) => ({ point, n })),
    );
    expect(keys.length).toBeGreaterThanOrEqual(4);
    for (const { point, n } of keys) {
      const others = keys.filter(
        (key) => key.n !== n && Math.hypot(key.point[0] - point[0], key.point[1] - point[1]) < 20,
      );
      expect(others.length).toBeGreaterThan(0);
      for (const other of others) {
        const apart = Math.hypot(other.point[0] - point[0], other.point[1] - point[1]);
        expect(apart < 1e-6 || apart >= 2.5 + BRIDGE).toBe(true);
      }
      const [x, y] = point;
      const key: PathsD = [
        [
          { x, y: y - 2.5 },
          { x: x + 2.5, y },
          { x, y: y + 2.5 },
          { x: x - 2.5, y },
        ],
      ];
      expect(size(intersectD(key, paths(pieces), FillRule.NonZero, 4))).toBe(0);
    }
  });
});

test('the quarters of a diamond are one sheet, laid four times over', async () => {
  const found = await cut([polygon([0, -400], [400, 0], [0, 400], [-400, 0])]);
  expect(found.issues).toEqual([]);
  expect(sheetsOf(found).map(({ bare, says }) => [says, bare.passes.flat().length])).toEqual([
    ['medallion, split, parts 1, 2, 3 and 4 of 4', 4],
  ]);
});

test('a line through bare ground is taken before one through windows', async () => {
  const blocks = [0, 1].flatMap((i) =>
    [0, 1].map((j) => shifted(polygon([0, 0], [380, 0], [380, 380], [0, 380]), i * 384, j * 384)),
  );
  const found = await cut([...blocks, polygon([360, 800], [404, 800], [404, 844], [360, 844])]);
  expect(found.issues).toEqual([]);
  const box = piecesBox(blocks);
  const whole = layAll(found)
    .flatMap(({ windows }) => windows)
    .filter((piece) => Math.abs(pieceBox(piece).right - pieceBox(piece).left - 380) < 1e-6);
  expect(box.right).toBe(764);
  expect(whole).toHaveLength(4);
});

test('curves away from the lines are those that were drawn', async () => {
  const round: Side[] = [
    { kind: 'curve', out: [900, 0], into: [940, 20], to: [940, 60] },
    { kind: 'curve', out: [940, 100], into: [900, 120], to: [840, 120] },
  ];
  const sides: Side[] = [
    { kind: 'line', to: [840, 0] },
    ...round,
    { kind: 'line', to: [0, 120] },
    { kind: 'line', to: [0, 0] },
  ];
  const found = await cut([[{ start: [0, 0], sides }]]);
  const points = layAll(found)
    .flatMap(({ windows }) => windows.flatMap((piece) => piece[0]!.sides))
    .flatMap((side) => (side.kind === 'curve' ? [side.out, side.into, side.to] : []));
  const drawn = round.flatMap((side) => (side.kind === 'curve' ? [side.out, side.into, side.to] : []));
  expect(points).toHaveLength(drawn.length);
  for (const [n, [x, y]] of points.entries()) {
    expect(x).toBeCloseTo(drawn[n]![0], 9);
    expect(y).toBeCloseTo(drawn[n]![1], 9);
  }
});

test('a border repeat longer than the film is split in every cell', async () => {
  const book = new ShapeBook();
  const pitch = 800;
  const leaf: Piece = [
    {
      start: [20, 40],
      sides: [
        { kind: 'curve', out: [200, -30], into: [600, -30], to: [780, 40] },
        { kind: 'curve', out: [600, 110], into: [200, 110], to: [20, 40] },
      ],
    },
  ];
  const placed = [0, 1, 2].map((n) => book.find(shifted(leaf, n * pitch, 0)));
  const [x, y] = [
    { start: 0, pitch, repeats: true },
    { start: -20, pitch: 120, repeats: false },
  ];
  const ruling = {
    x: { fixed: [0, 2400], lattice: { start: 0, step: pitch, from: 0, to: 2400 } },
    y: { fixed: [-20, 100] },
  };
  const found = cutBest(
    [[{ family: 'border', place: 'near', name: 'leaf', patch: makePatch(x, y, placed), guides: ruling }]],
    await bench(book),
  );
  expect(found.issues).toEqual([]);
  const laid = layAll(found);
  expect(laid.length % 3).toBe(0);
  const whole = united([0, 1, 2].map((n) => shifted(leaf, n * pitch, 0)));
  expect(off(whole, united(laid.flatMap(({ windows }) => windows)))).toBeLessThan(1e-3 * round(whole));
});

test('what no sheet of the film can hold a part of is refused, and why', async () => {
  const found = await cut([disc(100)], { across: 70, along: 70, rim: 25.4 });
  expect(found.issues.map(({ code }) => code)).toEqual(['stencil/too-large']);
  expect(found.issues[0]!.says).toContain('no line was found along which it could be split');
});
