import { makeOutline, type Outline } from '../read/outline.ts';

/** x' = a x + b y + e, y' = c x + d y + f, lengths in mm. Quarter turns, mirrors and shifts only, so that sizes stay. */
export type Move = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

export const shift = (dx: number, dy: number): Move => [1, 0, 0, 1, dx, dy];
/** Mirror about the line x = 0, which runs along the work. */
export const MIRROR_ACROSS: Move = [-1, 0, 0, 1, 0, 0];
/** Mirror about the line y = 0, which runs across the work. */
export const MIRROR_ALONG: Move = [1, 0, 0, -1, 0, 0];

/** Quarter turns clockwise on the page (y down) about 0, 0, then a shift to x, y. */
export function placing(turn: number, x: number, y: number): Move {
  const turns: Move[] = [
    [1, 0, 0, 1, x, y],
    [0, -1, 1, 0, x, y],
    [-1, 0, 0, -1, x, y],
    [0, 1, -1, 0, x, y],
  ];
  return turns[((turn % 4) + 4) % 4]!;
}

export const movePoint = ([a, b, c, d, e, f]: Move, x: number, y: number): [number, number] => [
  a * x + b * y + e,
  c * x + d * y + f,
];

export function moveOutline(outline: Outline, move: Move): Outline {
  return makeOutline(moveAll(outline.corners, move), moveAll(outline.handles, move));
}

function moveAll(values: Float64Array, [a, b, c, d, e, f]: Move): Float64Array {
  const out = new Float64Array(values.length);
  for (let i = 0; i < out.length; i += 2) {
    const x = values[i]!;
    const y = values[i + 1]!;
    out[i] = a * x + b * y + e;
    out[i + 1] = c * x + d * y + f;
  }
  return out;
}
