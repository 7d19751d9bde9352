import type { Point } from '../../geometry/path.ts';
import type { Edge } from './edge.ts';
import { cross, distance, dot, length, mean, minus, plus, times } from './vector.ts';

/** An ellipse as the image of a circle: centre + e·cos φ + f·sin φ. */
export interface Frame {
  centre: Point;
  e: Point;
  f: Point;
}

/** Angles that a single cubic stands for as an arc: longer ones miss the circle by more than 4 parts in 10 000, shorter ones fix none. */
const [LEAST, MOST] = [(3 * Math.PI) / 180, (95 * Math.PI) / 180];
/** How unlike the two handles of an arc may be, as a share of their tangents. */
const UNEVEN = 1e-6;

const at = ({ centre, e, f }: Frame, angle: number): Point =>
  plus(centre, plus(times(e, Math.cos(angle)), times(f, Math.sin(angle))));

const pointsBetween = (frame: Frame, from: number, to: number): Point[] => [
  at(frame, from),
  at(frame, (from + to) / 2),
  at(frame, to),
];

/** The ellipse an arc is part of; the arc runs from −half to +half. */
export function frameOf({ points, half }: Edge): Frame {
  const [from, middle, to] = points as [Point, Point, Point];
  const f = times(minus(to, from), 1 / (2 * Math.sin(half)));
  const e = times(minus(middle, mean([from, to])), 1 / (1 - Math.cos(half)));
  return { centre: minus(middle, e), e, f };
}

/**
 * The arc that a cubic stands for, where it does. The handles of the usual cubic for an arc of angle θ end at the share
 * 4/3·tan(θ/4)/tan(θ/2) of the way to where the tangents meet, on a circle and on every stretched image of one.
 * Circles are compared as circles thereby, wherever their cubics begin.
 */
export function arcOf(edge: Edge): Edge | undefined {
  const [from, out, into, to] = edge.points as [Point, Point, Point, Point];
  const [u, v, chord] = [minus(out, from), minus(into, to), minus(to, from)];
  const width = cross(u, v);
  if (Math.abs(width) < 1e-9 * length(u) * length(v)) return undefined;
  const meet = plus(from, times(u, cross(chord, v) / width));
  const shares = [cross(chord, v) / width, cross(chord, u) / width].map((reach) => 1 / reach);
  const [one, other] = shares as [number, number];
  if (!(one > 0 && one < 2 / 3) || Math.abs(one - other) > UNEVEN) return undefined;
  const angle = 4 * Math.atan(Math.sqrt(1 - 0.75 * (one + other)));
  if (!(angle >= LEAST && angle <= MOST)) return undefined;
  const half = angle / 2;
  const [c, s] = [Math.cos(half), Math.sin(half)];
  const foot = mean([from, to]);
  const e = times(minus(meet, foot), c / (s * s));
  const middle = plus(minus(foot, times(e, c)), e);
  return { kind: 'arc', part: edge.part, points: [from, middle, to], half };
}

/** Where on an arc a point lies, from 0 to 1, or nothing where it lies `within` or more away. */
export function placeOnArc(edge: Edge, point: Point, within: number): number | undefined {
  const { centre, e, f } = frameOf(edge);
  const to = minus(point, centre);
  const area = cross(e, f);
  const [x, y] = [cross(to, f) / area, cross(e, to) / area];
  const off = Math.abs(Math.sqrt(x * x + y * y) - 1) * Math.max(length(e), length(f));
  return off < within ? (Math.atan2(y, x) + edge.half) / (2 * edge.half) : undefined;
}

export function cutArc(edge: Edge, t: number): [Edge, Edge] {
  const { half } = edge;
  const frame = frameOf(edge);
  const angle = half * (2 * t - 1);
  return [
    { ...edge, points: pointsBetween(frame, -half, angle), half: half * t },
    { ...edge, points: pointsBetween(frame, angle, half), half: half * (1 - t) },
  ];
}

/** Both edges as one, where the second begins at the end of the first and goes on along the same ellipse. */
export function joinArc(first: Edge, next: Edge, within: number): Edge | undefined {
  const [frame, half] = [frameOf(first), first.half];
  const ledOn = pointsBetween(frame, half, half + 2 * next.half);
  const off = 8 * within * Math.max(1, next.half / half);
  if (ledOn.some((point, i) => distance(point, next.points[i]!) > off)) return undefined;
  return { ...first, points: pointsBetween(frame, -half, half + 2 * next.half), half: half + next.half };
}

/** A box round the whole ellipse of an arc. */
export function boundsOfArc(edge: Edge): [low: Point, high: Point] {
  const { centre, e, f } = frameOf(edge);
  const reach: Point = [length([e[0], f[0]]), length([e[1], f[1]])];
  return [minus(centre, reach), plus(centre, reach)];
}

/** e·eᵀ + f·fᵀ as xx, xy, yy: alike for every way to tell the same ellipse. */
export const spreadOf = ({ e, f }: Frame): [number, number, number] => [
  dot([e[0], f[0]], [e[0], f[0]]),
  dot([e[0], f[0]], [e[1], f[1]]),
  dot([e[1], f[1]], [e[1], f[1]]),
];
