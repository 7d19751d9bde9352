import { describe, expect, test } from 'vitest';
import { gatherKinds } from '../../../src/check/measure/kinds.ts';
import { proveRepeating } from '../../../src/check/measure/repeating.ts';
import { Symmetry } from '../../../src/check/measure/symmetry.ts';
import type { Edge } from '../../../src/check/measure/window.ts';
import { makeOutline } from '../../../src/check/read/outline.ts';
import { readPath } from '../../../src/check/read/path.ts';

const EDGES: Edge[] = ['left', 'right', 'near', 'far'];

/** Diamonds of 100 mm, clipped to a square field by hand: a row of them starts `phase` of a diamond before the edge. */
function field(size: number, phase: number) {
  const half = size / 2;
  const found: string[] = [];
  for (let i = 0; i * 100 - phase * 100 < size; i++) {
    for (let j = 0; j * 100 - phase * 100 < size; j++) {
      const [x, y] = [(i + 0.5 - phase) * 100 - half, (j + 0.5 - phase) * 100 - half];
      const ring = clip(
        [
          [x, y - 50],
          [x + 50, y],
          [x, y + 50],
          [x - 50, y],
        ],
        half,
      );
      if (ring.length > 2) found.push(`M${ring.map((point) => point.join(' ')).join('L')}Z`);
    }
  }
  const read = readPath(found.join(''));
  if (!read.ok) throw new Error(read.says);
  return read.value.outlines.map((outline) => ({ element: 'field', part: 'field', fill: '', outline }));
}

/** Sutherland and Hodgman's clipping of a convex polygon by the four sides of a square about the origin. */
function clip(ring: [number, number][], half: number): [number, number][] {
  let points = ring;
  for (const [axis, sign] of [
    [0, 1],
    [0, -1],
    [1, 1],
    [1, -1],
  ] as const) {
    const over = (point: [number, number]) => sign * point[axis] - half;
    points = points.flatMap((point, at): [number, number][] => {
      const before = points[(at + points.length - 1) % points.length]!;
      const [a, b] = [over(before), over(point)];
      const t = a / (a - b);
      const cut: [number, number] = [before[0] + t * (point[0] - before[0]), before[1] + t * (point[1] - before[1])];
      if (b <= 1e-9) return a > 1e-9 && b < -1e-9 ? [cut, point] : [point];
      return a < -1e-9 ? [cut] : [];
    });
  }
  return points;
}

const square = (size: number) => ({ left: -size / 2, top: -size / 2, right: size / 2, bottom: size / 2 });

function prove(pieces: ReturnType<typeof field>, size: number, room?: number) {
  const window = { frame: square(size), room: room === undefined ? undefined : square(room) };
  const { kinds, odd } = gatherKinds(pieces, window, { across: 100, along: 100 });
  return proveRepeating(kinds, odd, window);
}

describe.each(EDGES)('at the %s edge', (edge) => {
  test('four whole diamonds of four', async () => {
    const found = await prove(field(400, 0), 400);
    expect(found.edges[edge]).toEqual({ whole: 4, halves: 0, cut: 0, lost: 0, odd: 0, over: 0 });
    expect(found).toMatchObject({ count: 16, lost: [], odd: [] });
  });

  test('five halves of four and two half repeats', async () => {
    const found = await prove(field(400, 0.5), 400);
    expect(found.edges[edge]).toEqual({ whole: 0, halves: 5, cut: 0, lost: 0, odd: 0, over: 0 });
    expect(found).toMatchObject({ count: 25, lost: [], odd: [] });
  });

  test('a third taken off is neither', async () => {
    const found = await prove(field(400, 1 / 3), 400);
    expect(found.edges[edge]).toMatchObject({ halves: 0, cut: 5, lost: 0, odd: 0 });
  });

  test('diamonds that reach over it are seen, and not those that should be there', async () => {
    const { edges } = await prove(field(400, 0), 380);
    expect(edges[edge]).toMatchObject({ over: 4, odd: 4, lost: 4 });
  });

  test('a piece that is missing, or has a corner 0.2 mm aside, is lost to the edges it reaches', async () => {
    const all = field(400, 0.5);
    const at = (x: number, y: number) =>
      all.findIndex(
        ({ outline: { frame } }) => frame.left <= x && frame.right >= x && frame.top <= y && frame.bottom >= y,
      );
    const [x, y] = { left: [-190, 0], right: [190, 0], far: [0, -190], near: [0, 190] }[edge] as [number, number];
    const piece = at(x, y);
    const { edges, lost } = await prove(
      all.filter((_, index) => index !== piece),
      400,
    );
    expect(lost).toHaveLength(1);
    expect(edges[edge]).toMatchObject({ lost: 1, odd: 0, halves: 4 });

    const touched = all.map((one, index) => {
      if (index !== piece) return one;
      const corners = one.outline.corners.slice();
      corners[0]! += 0.2;
      return { ...one, outline: makeOutline(corners, one.outline.handles) };
    });
    const moved = await prove(touched, 400);
    expect(moved.edges[edge]).toMatchObject({ lost: 1, odd: 1, halves: 4 });
  });
});

test('a room of two repeats in the middle holds nothing, and its edges are met from outside', async () => {
  const all = field(800, 0);
  const reach = ({ left, right, top, bottom }: { left: number; right: number; top: number; bottom: number }) =>
    Math.max(-left, right, -top, bottom);
  const outside = all.filter(({ outline }) => reach(outline.frame) > 150);
  const found = await prove(outside, 800, 200);
  expect(found).toMatchObject({ count: 60, lost: [], odd: [] });
  for (const edge of EDGES) expect(found.room[edge]).toEqual({ whole: 2, halves: 0, cut: 0, lost: 0, odd: 0, over: 0 });
  expect((await prove(all, 800, 200)).odd).toHaveLength(4);
});

// The mirror lines of a square lattice of squares on point (plane group p4mm, International Tables for Crystallography, volume A, no. 11).
test('the symmetry of a pattern is worked out from its pieces', async () => {
  const { kinds, period } = await prove(field(400, 0), 400);
  const symmetry = new Symmetry(kinds, period);
  expect([0, 25, 50, 100].map((at) => symmetry.mirrorsAt('across', at))).toEqual([true, false, true, true]);
  expect([symmetry.mirrors('across'), symmetry.mirrors('along'), symmetry.turns]).toEqual([true, true, true]);
  const lean = kinds.map(({ part, outline }) => {
    const corners = outline.corners.slice();
    corners[0]! += 20;
    corners[4]! -= 20;
    return { part, outline: makeOutline(corners, outline.handles) };
  });
  const leaning = new Symmetry(lean, period);
  expect([leaning.mirrors('across'), leaning.mirrors('along'), leaning.turns]).toEqual([false, false, true]);
});
