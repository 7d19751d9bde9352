import type { Point } from '../geometry/path.ts';
import { type Classes, classOf } from './classes.ts';
import { type Axis, cellsBetween, type Kind } from './patch.ts';

/** A shift of the sheet that lays every kind on a kind of its own shape: which one, and how many cells over. */
export interface Shift {
  by: Point;
  to: { kind: number; di: number; dj: number }[];
}

/** How a sheet reaches one class of pieces: shifted, then moved on by whole cells. */
export interface Reach {
  shift: Shift;
  s: number;
  t: number;
}

/** One sheet's windows are the pieces of class `first`; through the same windows it paints these classes, `first` leading. */
export interface Orbit {
  first: number;
  reaches: Reach[];
}

/** Shifts inside a cell that lay the whole pattern on itself: none first, then any other. */
export function shiftsOf(kinds: Kind[], x: Axis, y: Axis): Shift[] {
  const found: Shift[] = [{ by: [0, 0], to: kinds.map((_, kind) => ({ kind, di: 0, dj: 0 })) }];
  const [from] = kinds;
  for (const target of kinds.slice(1)) {
    if (from === undefined || target.shape !== from.shape) continue;
    const by: Point = [target.x - from.x, target.y - from.y];
    const to = kinds.map((kind) => {
      for (const [index, other] of kinds.entries()) {
        if (other.shape !== kind.shape) continue;
        const cells = cellsBetween(x, y, [other.x, other.y], [kind.x + by[0], kind.y + by[1]]);
        if (cells) return { kind: index, ...cells };
      }
      return undefined;
    });
    if (to.every((place) => place !== undefined)) found.push({ by, to });
  }
  return found;
}

const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));

/** The kinds that have pieces in each class. */
function kindsByClass({ m, a, b, start }: Classes): number[][] {
  const every = gcd(gcd(a, b), m);
  const found = Array.from({ length: m }, (): number[] => []);
  for (const [kind, first] of start.entries()) {
    for (let which = first % every; which < m; which += every) found[which]!.push(kind);
  }
  return found;
}

/** The class that a shift and whole cells carry class `first` to, if it is carried to one class and fills it. `inClass`: kinds by class. */
function carried(classes: Classes, inClass: number[][], first: number, { shift, s, t }: Reach): number | undefined {
  let target: number | undefined;
  const kinds = inClass[first]!;
  for (const kind of kinds) {
    const { kind: to, di, dj } = shift.to[kind]!;
    const rest = first - classes.start[kind]!;
    const moved = classOf(classes, to, di + s, dj + t) + rest;
    const here = ((moved % classes.m) + classes.m) % classes.m;
    if (target !== undefined && here !== target) return undefined;
    target = here;
  }
  return target !== undefined && inClass[target]!.length === kinds.length ? target : undefined;
}

/** Sorts the classes by the sheets that paint them: classes that one sheet reaches by moving it share it. */
export function orbitsOf(classes: Classes, shifts: Shift[], x: boolean, y: boolean): Orbit[] {
  const done = new Set<number>();
  const orbits: Orbit[] = [];
  const inClass = kindsByClass(classes);
  for (let first = 0; first < classes.m; first++) {
    if (done.has(first) || inClass[first]!.length === 0) continue;
    const reaches = new Map<number, Reach>();
    for (const shift of shifts) {
      for (let sum = 0; sum <= 2 * (classes.m - 1); sum++) {
        for (let s = Math.min(sum, x ? classes.m - 1 : 0); s >= 0; s--) {
          const t = sum - s;
          if (t > (y ? classes.m - 1 : 0)) continue;
          const reach = { shift, s, t };
          const target = carried(classes, inClass, first, reach);
          if (target !== undefined && !done.has(target) && !reaches.has(target)) reaches.set(target, reach);
        }
      }
    }
    for (const target of reaches.keys()) done.add(target);
    orbits.push({ first, reaches: [...reaches.values()] });
  }
  return orbits;
}
