import type { Point, Ring } from '../../../../src/geometry/path.ts';

/** A square by its corner nearest to 0, 0. */
export const square = (x: number, y: number, side: number): Ring => ({
  start: [x, y],
  sides: [
    { kind: 'line', to: [x + side, y] },
    { kind: 'line', to: [x + side, y + side] },
    { kind: 'line', to: [x, y + side] },
    { kind: 'line', to: [x, y] },
  ],
});

/** A circle of four cubics, begun at its right end. */
export function circle(cx: number, cy: number, r: number): Ring {
  const k = (4 / 3) * (Math.SQRT2 - 1) * r;
  return {
    start: [cx + r, cy],
    sides: [
      { kind: 'curve', out: [cx + r, cy + k], into: [cx + k, cy + r], to: [cx, cy + r] },
      { kind: 'curve', out: [cx - k, cy + r], into: [cx - r, cy + k], to: [cx - r, cy] },
      { kind: 'curve', out: [cx - r, cy - k], into: [cx - k, cy - r], to: [cx, cy - r] },
      { kind: 'curve', out: [cx + k, cy - r], into: [cx + r, cy - k], to: [cx + r, cy] },
    ],
  };
}

/** Squares on a grid, row by row. */
export const grid = (columns: number, rows: number, pitch: number, side: number): Ring[] =>
  Array.from({ length: columns * rows }, (_, i) =>
    square((i % columns) * pitch, Math.floor(i / columns) * pitch, side),
  );

/** Numbers from 0 to 1, the same for the same seed (Park and Miller, 1988). */
export function seeded(seed: number): () => number {
  let state = seed % 2147483647 || 1;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

/** Tiny squares strewn over a square field with one of them to every `room` by `room` mm. */
export function strewn(count: number, seed: number, room = 20): Ring[] {
  const random = seeded(seed);
  const side = room * Math.sqrt(count);
  return Array.from({ length: count }, () => square(random() * side, random() * side, 0.01));
}

export const starts = (rings: readonly Ring[]): Point[] => rings.map(({ start }) => start);
