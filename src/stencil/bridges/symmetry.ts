import { boxHeight, boxWidth, joinBoxes } from '../../geometry/measure.ts';
import type { Point } from '../../geometry/path.ts';
import type { Outline } from './outline.ts';

/** A turn, or a mirror image, about a point known from elsewhere: x' = a x + b y, y' = c x + d y. */
export interface Turning {
  a: number;
  b: number;
  c: number;
  d: number;
  /** The angle of its mirror line; nothing for a turn. */
  mirror?: number;
}

/** Turns are looked for up to this order; a circle counts as having it. */
const MOST = 12;
/** An image lies on the drawing when no point of it is further off than this share of its size. */
const SAME = 0.002;
const SAMPLES = 96;

const tidy = (value: number): number => {
  const near = Math.round(value);
  return Math.abs(value - near) < 1e-12 ? near : value;
};

const turn = (angle: number): Turning => {
  const [cos, sin] = [tidy(Math.cos(angle)), tidy(Math.sin(angle))];
  return { a: cos, b: -sin, c: sin, d: cos };
};

const mirror = (axis: number): Turning => {
  const [cos, sin] = [tidy(Math.cos(2 * axis)), tidy(Math.sin(2 * axis))];
  return { a: cos, b: sin, c: sin, d: -cos, mirror: axis };
};

export const AS_IS: Turning = turn(0);

export const sameTurning = (one: Turning, other: Turning): boolean =>
  Math.abs(one.a - other.a) + Math.abs(one.b - other.b) + Math.abs(one.c - other.c) + Math.abs(one.d - other.d) < 1e-6;

export const turnedWay = ({ a, b, c, d }: Turning, [x, y]: Point): Point => [a * x + b * y, c * x + d * y];

export const turnedAbout = (op: Turning, centre: Point, [x, y]: Point): Point => {
  const [u, v] = turnedWay(op, [x - centre[0], y - centre[1]]);
  return [centre[0] + u, centre[1] + v];
};

/** Squared distance from a point to a stretch of line. */
function offStretch(px: number, py: number, [ax, ay]: Point, [bx, by]: Point): number {
  const [ux, uy] = [bx - ax, by - ay];
  const long = ux * ux + uy * uy;
  const t = long === 0 ? 0 : Math.min(1, Math.max(0, ((px - ax) * ux + (py - ay) * uy) / long));
  const [dx, dy] = [ax + t * ux - px, ay + t * uy - py];
  return dx * dx + dy * dy;
}

function onSome(outlines: Outline[], [x, y]: Point, within: number): boolean {
  for (const { points, box } of outlines) {
    if (x < box.left - within || x > box.right + within || y < box.top - within || y > box.bottom + within) continue;
    let from = points[points.length - 1]!;
    for (const to of points) {
      if (offStretch(x, y, from, to) <= within * within) return true;
      from = to;
    }
  }
  return false;
}

/** Points spread over all outlines, corners among them. */
function samplesOf(outlines: Outline[]): Point[] {
  const every = Math.max(1, Math.floor(outlines.reduce((sum, { points }) => sum + points.length, 0) / SAMPLES));
  return outlines.flatMap(({ points, corners }) => [...corners, ...points.filter((_, at) => at % every === 0)]);
}

/** The turns and mirror images about a centre that lay the drawing onto itself, the drawing as it is first. */
export function symmetriesOf(outlines: Outline[], centre: Point): Turning[] {
  const box = outlines.map((one) => one.box).reduce(joinBoxes);
  const within = Math.max(0.02, SAME * Math.max(boxWidth(box), boxHeight(box)));
  const samples = samplesOf(outlines);
  const holds = (op: Turning) => samples.every((point) => onSome(outlines, turnedAbout(op, centre, point), within));
  let order = 1;
  for (let n = MOST; n > 1 && order === 1; n--) if (holds(turn((2 * Math.PI) / n))) order = n;
  const steps = Array.from({ length: order }, (_, at) => at);
  const turns = steps.map((at) => turn((2 * Math.PI * at) / order));
  const first = [Math.PI / 2, 0, Math.PI / 4, (3 * Math.PI) / 4].find((axis) => holds(mirror(axis)));
  if (first === undefined) return turns;
  return [...turns, ...steps.map((at) => mirror(first + (Math.PI * at) / order))];
}

/** All groups of turns and mirror images within a group, the largest first, each once. */
export function subgroupsOf(group: Turning[]): Turning[][] {
  const order = group.filter((op) => op.mirror === undefined).length;
  const mirrors = group.flatMap((op) => (op.mirror === undefined ? [] : [op.mirror]));
  const member = (op: Turning) => group.findIndex((one) => sameTurning(one, op));
  const found = new Map<string, number[]>();
  const add = (ops: Turning[]) => {
    const members = ops.map(member).sort((p, q) => p - q);
    found.set(members.join(), members);
  };
  for (let n = order; n >= 1; n--) {
    if (order % n !== 0) continue;
    const steps = Array.from({ length: n }, (_, at) => at);
    const turns = steps.map((at) => turn((2 * Math.PI * at) / n));
    for (const axis of mirrors) add([...turns, ...steps.map((at) => mirror(axis + (Math.PI * at) / n))]);
    add(turns);
  }
  return [...found.values()].sort((p, q) => q.length - p.length).map((members) => members.map((at) => group[at]!));
}
