import type { Point } from '../../geometry/path.ts';
import type { Cell, Lattice } from '../motif.ts';
import { cross, distance, dot, length, minus, plus, times } from './vector.ts';

/** Two moves, mm, from which all translations of a pattern are made by adding and taking away. */
export interface Basis {
  a: Point;
  b: Point;
}

/**
 * How the drawn unit stands in its cell: once, or at the middle between four others as well, which is `centred`, and what every
 * lattice of a motif but the rectangular one comes to.
 */
export type Arrangement = Lattice | 'centred';

export const basisOf = ({ across, along }: Cell, arrangement: Arrangement): Basis => ({
  a: [across, 0],
  b: arrangement === 'rectangular' ? [0, along] : [across / 2, along / 2],
});

export const cellArea = ({ a, b }: Basis): number => Math.abs(cross(a, b));

/** `p` counted in the lattice's own moves: p = u·a + v·b. */
export const countIn = ({ a, b }: Basis, p: Point): Point => {
  const area = cross(a, b);
  return [cross(p, b) / area, cross(a, p) / area];
};

export const combine = ({ a, b }: Basis, [u, v]: Point): Point => plus(times(a, u), times(b, v));

/** The translation that a move near to one stands for. */
export const nearestTranslation = ({ a, b }: Basis, move: Point): Point => {
  const area = cross(a, b);
  const [u, v] = [Math.round(cross(move, b) / area), Math.round(cross(a, move) / area)];
  return [u * a[0] + v * b[0], u * a[1] + v * b[1]];
};

export const isTranslation = (lattice: Basis, move: Point, within: number): boolean =>
  distance(move, nearestTranslation(lattice, move)) <= within;

/** The same move less whole translations: from 0 to just under 1 in both counts, a hair below 1 being 0. */
export const withinCell = (lattice: Basis, move: Point): Point => {
  const part = (value: number): number => {
    const rest = value - Math.floor(value);
    return rest > 1 - 1e-9 ? 0 : rest;
  };
  const [u, v] = countIn(lattice, move);
  return combine(lattice, [part(u), part(v)]);
};

/** The same lattice told by its two shortest moves, which meet at 60° to 90° (Lagrange and Gauss). */
export function reduced({ a, b }: Basis): Basis {
  let [short, long] = length(a) <= length(b) ? [a, b] : [b, a];
  for (;;) {
    const next = minus(long, times(short, Math.round(dot(short, long) / dot(short, short))));
    if (length(next) >= length(long) * (1 - 1e-12)) break;
    [short, long] = length(next) < length(short) ? [next, short] : [short, next];
  }
  return { a: short, b: dot(short, long) < 0 ? times(long, -1) : long };
}

/** The shortest translation of a reduced lattice along a direction (either way along it), or nothing where none is near. */
export function translationAlong(lattice: Basis, direction: Point): Point | undefined {
  let found: Point | undefined;
  for (let u = -2; u <= 2; u++) {
    for (let v = -2; v <= 2; v++) {
      const move = combine(lattice, [u, v]);
      const slant = Math.abs(cross(move, direction));
      if (dot(move, direction) <= 0 || slant > 1e-4 * length(move) * length(direction)) continue;
      if (found === undefined || length(move) < length(found)) found = move;
    }
  }
  return found;
}
