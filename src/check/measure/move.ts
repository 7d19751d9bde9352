import { makeOutline, type Outline, shiftOutline } from '../read/outline.ts';

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

/** Outlines turned and mirrored about 0, 0, by what was done with them. */
const turned = new WeakMap<Outline, Map<string, Outline>>();

/** An outline moved. What copies of one outline have in common is worked out once. */
export function moveOutline(outline: Outline, [a, b, c, d, e, f]: Move): Outline {
  const own = outline.copyOf ?? outline;
  const [x, y] = outline.by ?? [0, 0];
  const known = turned.get(own) ?? new Map<string, Outline>();
  turned.set(own, known);
  const key = `${a} ${b} ${c} ${d}`;
  let found = known.get(key);
  if (!found) {
    const turn: Move = [a, b, c, d, 0, 0];
    found = makeOutline(moveAll(own.corners, turn), moveAll(own.handles, turn));
    known.set(key, found);
  }
  return shiftOutline(found, a * x + b * y + e, c * x + d * y + f);
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
