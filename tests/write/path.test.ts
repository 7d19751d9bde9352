import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Piece, Point, Side } from '../../src/geometry/path.ts';
import { allMotifs } from '../../src/motif/library.ts';
import { drawMotif } from '../../src/motif/record.ts';
import { linesText, pathText, rectangleText, regionText, shortText } from '../../src/write/path.ts';
import { settingsOf } from '../support/motifs.ts';
import { readRings } from '../support/read-path.ts';

/** Every point of a piece, handles included, moved. */
const points = (rings: Piece, [dx, dy]: Point = [0, 0]): Point[] =>
  rings
    .flatMap(({ start, sides }) => [
      start,
      ...sides.flatMap((side) => (side.kind === 'line' ? [side.to] : [side.out, side.into, side.to])),
    ])
    .map(([x, y]) => [x + dx, y + dy]);

/** A last line back to the start is not written; put it back. */
const closed = (rings: Piece): Piece =>
  rings.map(({ start, sides }) => {
    const last = sides[sides.length - 1];
    // svgpath adds the steps up in floating point.
    return last && Math.abs(last.to[0] - start[0]) < 1e-6 && Math.abs(last.to[1] - start[1]) < 1e-6
      ? { start, sides }
      : { start, sides: [...sides, { kind: 'line', to: start } as Side] };
  });

/** Largest distance along x or y between two lists of points, mm. */
function furthest(a: Point[], b: Point[]): number {
  expect(a).toHaveLength(b.length);
  return Math.max(...a.map(([x, y], i) => Math.max(Math.abs(x - b[i]![0]), Math.abs(y - b[i]![1]))));
}

const length = fc.double({ min: -5000, max: 5000, noNaN: true });
const point = fc.tuple(length, length);
const side: fc.Arbitrary<Side> = fc.oneof(
  point.map((to): Side => ({ kind: 'line', to })),
  fc.tuple(point, point, point).map(([out, into, to]): Side => ({ kind: 'curve', out, into, to })),
);
/** Lines shorter than a micrometre vanish in writing; these keep their ends apart, most tests being about the others. */
const apart = ([x, y]: Point, i: number): Point => [Math.floor(x) + 0.0317 * i + 0.01 * (x - Math.floor(x)), y];
/** Any rings at all: the writer does not ask whether they make sense. */
const piece: fc.Arbitrary<Piece> = fc.array(
  fc.tuple(point, fc.array(side, { minLength: 2, maxLength: 8 })).map(([first, sides]) => {
    const start = apart(first, 0);
    const placed = sides.map((one, i): Side => ({ ...one, to: apart(one.to, i + 1) }));
    return { start, sides: [...placed, { kind: 'line', to: start } as Side] };
  }),
  { minLength: 1, maxLength: 3 },
);

const square: Piece = [
  {
    start: [0, 0],
    sides: [
      { kind: 'line', to: [10, 0] },
      { kind: 'line', to: [10, 5.5] },
      { kind: 'line', to: [0, 5.5] },
      { kind: 'line', to: [0, 0] },
    ],
  },
];
const drop: Piece = [
  {
    start: [0, 0],
    sides: [
      { kind: 'line', to: [3, 4] },
      { kind: 'curve', out: [2, 6], into: [-2, 6], to: [-3, 4] },
      { kind: 'line', to: [0, 0] },
    ],
  },
];

describe('pathText', () => {
  test('is plain absolute commands', () => {
    expect(pathText(square)).toBe('M0 0L10 0L10 5.5L0 5.5Z');
    expect(pathText(drop, [100, -50])).toBe('M100 -50L103 -46C102 -44 98 -44 97 -46Z');
  });

  test('is read by svgpath as the geometry, to half a micrometre', () => {
    fc.assert(
      fc.property(piece, point, (drawn, at) => {
        const read = closed(readRings(pathText(drawn, at)));
        expect(furthest(points(read), points(drawn, at))).toBeLessThanOrEqual(0.0005 + 1e-9);
      }),
      { seed: 3, numRuns: 300 },
    );
  });
});

describe('shortText', () => {
  test('begins a ring from the one before where that is shorter', () => {
    expect(shortText(drop, [100, -50])).toBe('M100-50l3 4c-1 2-5 2-6 0z');
    const second = square[0]!.sides.map(({ to }): Side => ({ kind: 'line', to: [to[0] + 0.5, to[1] + 20] }));
    const away: Piece = [...square, { start: [0.5, 20], sides: second }];
    expect(shortText(away, [1000.25, 1000.25])).toBe('M1000.25 1000.25h10v5.5h-10zm.5 20h10v5.5h-10z');
    expect(shortText(away)).toBe('M0 0h10v5.5h-10zM.5 20h10v5.5h-10z');
  });

  test('is read by svgpath as the geometry, to half a micrometre', () => {
    fc.assert(
      fc.property(piece, point, (drawn, at) => {
        const read = closed(readRings(shortText(drawn, at)));
        expect(furthest(points(read), points(drawn, at))).toBeLessThanOrEqual(0.0005 + 1e-6);
      }),
      { seed: 6, numRuns: 300 },
    );
  });
});

describe('linesText', () => {
  test('is a start and relative lines, none that lead nowhere', () => {
    const points: Point[] = [
      [-1, 0.5],
      [3, 0.5],
      [3, 0.5001],
      [3, -0.25],
      [2.5, 0],
    ];
    expect(linesText(points)).toBe('M-1 .5h4v-.75l-.5.25');
    expect(linesText(points, true)).toBe('M-1 .5h4v-.75l-.5.25z');
  });

  test('a rectangle is closed by no line of its own', () => {
    expect(rectangleText({ left: 0, top: 0, right: 4, bottom: 0.5 })).toBe('M0 0h4v.5h-4z');
  });
});

describe('regionText', () => {
  test('is one absolute start a row, all else relative, and the same text for every placement', () => {
    expect(regionText([square], Float64Array.of(1, 2, 101.5, -2))).toBe('M1 2h10v5.5h-10zM101.5-2h10v5.5h-10z');
    expect(regionText([square], Float64Array.of(1, 2, 31, 2, 61.5, 2, 1, 9))).toBe(
      'M1 2h10v5.5h-10zm30 0h10v5.5h-10zm30.5 0h10v5.5h-10zM1 9h10v5.5h-10z',
    );
    expect(regionText([square, square], Float64Array.of(1, 2, 31, 2, 1, 9))).toBe(
      'M1 2h10v5.5h-10zm0 0h10v5.5h-10zm30 0h10v5.5h-10zm0 0h10v5.5h-10zM1 9h10v5.5h-10zm0 0h10v5.5h-10z',
    );
    expect(regionText([drop], Float64Array.of(0, 0))).toBe('M0 0l3 4c-1 2-5 2-6 0z');
  });

  test('leaves a first handle to be understood where it mirrors the last one (SVG 1.1, 8.3.6)', () => {
    const wave: Piece = [
      {
        start: [0, 0],
        sides: [
          { kind: 'curve', out: [1, 2], into: [3, 2], to: [4, 0] },
          { kind: 'curve', out: [5, -2], into: [7, -2], to: [8, 0] },
          { kind: 'curve', out: [9, 2.001], into: [7, 4], to: [4, 4] },
        ],
      },
    ];
    expect(regionText([wave], Float64Array.of(0, 0))).toBe('M0 0c1 2 3 2 4 0s3-2 4 0c1 2.001-1 4-4 4z');
  });

  test('without placements is empty', () => expect(regionText([square], new Float64Array())).toBe(''));

  test('is read by svgpath as the geometry, to a micrometre, at every placement', () => {
    const away = fc.array(point, { minLength: 1, maxLength: 5 });
    fc.assert(
      fc.property(fc.array(piece, { minLength: 1, maxLength: 2 }), away, (pieces, at) => {
        const read = readRings(regionText(pieces, Float64Array.from(at.flat())));
        const wanted = at.flatMap((place) => pieces.flat().map((ring) => ({ ring, place })));
        expect(read).toHaveLength(wanted.length);
        wanted.forEach(({ ring, place }, i) => {
          expect(furthest(points(closed([read[i]!])), points([ring], place))).toBeLessThanOrEqual(0.001 + 1e-9);
        });
      }),
      { seed: 4, numRuns: 300 },
    );
  });

  test('does not drift: after 20,000 sides of 0.3333 mm the last point is where it should be', () => {
    const sides = Array.from(
      { length: 20_000 },
      (_, i): Side => ({ kind: 'line', to: [(i + 1) * 0.33333, (i % 2) * 0.7777] }),
    );
    const [ring] = readRings(regionText([[{ start: [0, 0], sides }]], Float64Array.of(0.1234, 0)));
    const last = ring!.sides[19_999]!.to;
    expect(Math.abs(last[0] - (0.1234 + 20_000 * 0.33333))).toBeLessThanOrEqual(0.001 + 1e-6);
  });

  test('leaves out lines that are shorter than it writes, and keeps the rest in place', () => {
    const sliver: Piece = [
      {
        start: [0, 0],
        sides: [
          { kind: 'line', to: [0.0001, 0] },
          { kind: 'line', to: [8, 0] },
          { kind: 'line', to: [8, 9] },
        ],
      },
    ];
    expect(regionText([sliver], Float64Array.of(5, 5))).toBe('M5 5h8v9z');
  });

  test('keeps to the path grammar: no exponent, no trailing point, no minus zero (SVG 2, path data)', () => {
    fc.assert(
      fc.property(piece, point, (drawn, at) => {
        const text = regionText([drawn], Float64Array.from(at));
        expect(text).toMatch(/^[Mmlhvcsz\d .-]+$/);
        expect(text).not.toMatch(/\.(?!\d)|-0(?![.\d])| {2}|e/);
      }),
      { seed: 5, numRuns: 300 },
    );
  });

  test.each(allMotifs().map((motif) => [motif.name, motif] as const))(
    '%s reads back to a micrometre',
    (_name, motif) => {
      const pieces = drawMotif(motif, { across: 187.325, along: 193.675 }, settingsOf(motif)).flatMap(
        (one) => one.pieces,
      );
      const at: Point[] = [
        [0, 0],
        [-1234.5678, 987.65432],
      ];
      const read = readRings(regionText(pieces, Float64Array.from(at.flat())));
      const rings = pieces.flat();
      read.forEach((ring, i) => {
        const place = at[Math.floor(i / rings.length)]!;
        expect(furthest(points(closed([ring])), points([rings[i % rings.length]!], place))).toBeLessThanOrEqual(0.001);
      });
      expect(read).toHaveLength(2 * rings.length);
    },
  );
});
