import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { type Booleans, loadBooleans } from '../../src/geometry/booleans.ts';
import { clipPieces } from '../../src/geometry/clip.ts';
import { pieceArea, pieceBox, ringArea } from '../../src/geometry/measure.ts';
import { nestRings } from '../../src/geometry/nest.ts';
import type { Box, Piece } from '../../src/geometry/path.ts';
import { shifted, turned } from '../../src/geometry/transform.ts';
import { coveredArea, differingArea, rectanglePiece, sharedArea, woundArea } from '../support/areas.ts';
import { piecesOf } from '../support/motifs.ts';
import { readRings } from '../support/read-path.ts';

const area = (pieces: Piece[]): number => pieces.reduce((sum, piece) => sum + pieceArea(piece), 0);

const star = piecesOf('eight-point-star', { across: 100, along: 100 });
const fan = piecesOf('quarter-fan', { across: 90, along: 90 });
/** A circle of four cubics about the origin. */
const circle = (r: number): string => {
  const k = 0.5522847498307936 * r;
  return `M${r} 0C${r} ${k} ${k} ${r} 0 ${r}C${-k} ${r} ${-r} ${k} ${-r} 0C${-r} ${-k} ${-k} ${-r} 0 ${-r}C${k} ${-r} ${r} ${-k} ${r} 0z`;
};
/** A ring with a hole, all of curves. */
const annulus = nestRings(readRings(circle(50) + circle(30)));
/** Fingers that a level line crosses many times, one of them with a window in it. */
const comb = nestRings(readRings('M0 0H70V50H60C60 20 50 20 50 50H40V10H30V50H20L15 10L10 50H0V0zM3 5H20V8H3V5z'));

const windows = fc
  .tuple(
    fc.integer({ min: -60_000, max: 60_000 }),
    fc.integer({ min: -60_000, max: 60_000 }),
    fc.integer({ min: 1000, max: 90_000 }),
    fc.integer({ min: 1000, max: 90_000 }),
  )
  .map(([x, y, w, h]): Box => ({ left: x / 1000, top: y / 1000, right: (x + w) / 1000, bottom: (y + h) / 1000 }));

let booleans: Booleans;
beforeAll(async () => {
  booleans = await loadBooleans();
});

describe.each([
  ['star', star],
  ['fan', fan],
  ['annulus', annulus],
  ['comb', comb],
])('clipping a %s to any window', (_name, pieces) => {
  test('leaves what clipper2 and paper leave', () => {
    fc.assert(
      fc.property(windows, (window) => {
        const mine = clipPieces(pieces, window);
        const [box] = [rectanglePiece(window)];
        expect(Math.abs(area(mine) - area(booleans.intersect(pieces, [box])))).toBeLessThan(1e-3);
        // clipper2 works on chords within 0.0005 mm.
        expect(Math.abs(area(mine) - sharedArea(pieces, [box]))).toBeLessThan(0.2);
        // Nothing but the pieces themselves, nothing twice.
        expect(Math.abs(sharedArea(mine, pieces) - coveredArea(mine))).toBeLessThan(0.05);
        expect(Math.abs(woundArea(mine) - coveredArea(mine))).toBeLessThan(1e-2);
      }),
      { seed: 12, numRuns: 80 },
    );
  });

  test('stays inside it, outer rings and holes run their ways', () => {
    fc.assert(
      fc.property(windows, (window) => {
        for (const piece of clipPieces(pieces, window)) {
          const box = pieceBox(piece);
          expect(box.left).toBeGreaterThanOrEqual(window.left - 1e-6);
          expect(box.right).toBeLessThanOrEqual(window.right + 1e-6);
          expect(box.top).toBeGreaterThanOrEqual(window.top - 1e-6);
          expect(box.bottom).toBeLessThanOrEqual(window.bottom + 1e-6);
          for (const ring of piece) {
            expect(Math.sign(ringArea(ring))).toBe(ring === piece[0] ? 1 : -1);
            if (!pieces.includes(piece)) expect(ring.sides[ring.sides.length - 1]!.to).toEqual(ring.start);
          }
        }
      }),
      { seed: 13, numRuns: 80 },
    );
  });
});

describe('corners that lie on the edge', () => {
  /** Polygons on whole numbers, cut along whole numbers, so that lines run through corners and along sides again and again. */
  const grid = fc.integer({ min: -4, max: 4 });
  const polygon = fc
    .uniqueArray(fc.tuple(grid, grid), { minLength: 3, maxLength: 9, selector: ([x, y]) => `${x} ${y}` })
    .map((points) => {
      // Round a middle point off the grid, in order of angle: a simple polygon.
      const [mx, my] = [0.317, 0.219];
      return points.sort((a, b) => Math.atan2(a[1] - my, a[0] - mx) - Math.atan2(b[1] - my, b[0] - mx));
    })
    // No side may run back over the one before it.
    .filter((points) =>
      points.every(([x, y], i) => {
        const [[x1, y1], [x2, y2]] = [points[(i + 1) % points.length]!, points[(i + 2) % points.length]!];
        return (x1 - x) * (y2 - y1) !== (x2 - x1) * (y1 - y);
      }),
    )
    .map((points) => nestRings(readRings(`M${points.map(([x, y]) => `${x} ${y}`).join('L')}z`)))
    .filter((pieces) => Math.abs(woundArea(pieces) - coveredArea(pieces)) < 1e-6 && area(pieces) > 0.1);

  test('give what clipper2 gives', () => {
    fc.assert(
      fc.property(polygon, grid, grid, (pieces, x, y) => {
        const window = { left: x, top: y, right: x + 3, bottom: y + 4 };
        const mine = clipPieces(pieces, window);
        expect(area(mine)).toBeCloseTo(sharedArea(pieces, [rectanglePiece(window)]), 4);
        expect(woundArea(mine)).toBeCloseTo(coveredArea(mine), 4);
      }),
      { seed: 14, numRuns: 1500 },
    );
  });

  test('both halves of anything add up, also a hair beside its corners', () => {
    for (const off of [0, 1e-9, -1e-9, 1e-7, -1e-7, 1e-6, -1e-6, 1e-5]) {
      for (const at of [-50, -25, 0, 11.25, 35.35533905932738, 50]) {
        for (const pieces of [star, fan, annulus, comb]) {
          const line = at + off;
          const left = clipPieces(pieces, { left: -Infinity, top: -Infinity, right: line, bottom: Infinity });
          const right = clipPieces(pieces, { left: line, top: -Infinity, right: Infinity, bottom: Infinity });
          expect(Math.abs(area(left) + area(right) - area(pieces))).toBeLessThan(5e-4);
        }
      }
    }
  });

  test('a side along the edge is no cut', () => {
    const square = [rectanglePiece({ left: 0, top: 0, right: 10, bottom: 10 })];
    expect(clipPieces(square, { left: 0, top: 0, right: 10, bottom: 10 })[0]).toBe(square[0]);
    expect(clipPieces(square, { left: 10, top: 0, right: 20, bottom: 10 })).toEqual([]);
  });
});

describe('what is left', () => {
  test('is exact: half a diamond has its new corners on the edge', () => {
    const diamond = piecesOf('diamond', { across: 100, along: 100 });
    const [half] = clipPieces(diamond, { left: 0, top: -Infinity, right: Infinity, bottom: Infinity });
    expect(half![0]!.sides.map(({ to }) => to).sort((a, b) => a[1] - b[1] || a[0] - b[0])).toEqual([
      [0, -50],
      [50, 0],
      [0, 50],
    ]);
  });

  test('keeps curves away from the cut as they were', () => {
    const sides = (all: Piece[]) =>
      all
        .flat()
        .flatMap((ring) => ring.sides)
        .filter(({ kind }) => kind === 'curve');
    const before = sides(star);
    const after = sides(clipPieces(star, { left: -Infinity, top: -40, right: Infinity, bottom: Infinity }));
    expect(after).toHaveLength(before.length);
    for (const side of after) expect(before).toContain(side);
  });

  test('falls apart where the window parts it: two legs of the comb', () => {
    const legs = clipPieces(comb, { left: 0, top: 30, right: 45, bottom: 60 });
    expect(legs.length).toBe(3);
    expect(differingArea(legs, clipPieces(legs, { left: 0, top: 30, right: 45, bottom: 60 }))).toBe(0);
  });

  test('turns with the window', () => {
    const window = { left: -13, top: -42, right: 31, bottom: 17 };
    const turnedWindow = pieceBox(turned(rectanglePiece(window), 1));
    const one = clipPieces(star, window).map((piece) => turned(piece, 1));
    const other = clipPieces(
      star.map((piece) => turned(piece, 1)),
      turnedWindow,
    );
    expect(differingArea(one, other)).toBeLessThan(0.01);
  });

  test('moves with the window', () => {
    const window = { left: -13, top: -42, right: 31, bottom: 17 };
    const far = { left: 987, top: -2042, right: 1031, bottom: -1983 };
    const moved = clipPieces(
      star.map((piece) => shifted(piece, 1000, -2000)),
      far,
    );
    expect(area(moved)).toBeCloseTo(area(clipPieces(star, window)), 6);
  });
});
