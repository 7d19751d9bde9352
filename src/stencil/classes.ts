import type { Kind } from './patch.ts';

/** Two kinds that lie closer than the bridge when the second is `di`, `dj` cells on from the first. */
export interface Conflict {
  from: number;
  to: number;
  di: number;
  dj: number;
}

/**
 * Which pieces go through a sheet together: class = (a·i + b·j + start of the kind) mod m.
 * No two pieces of one class lie closer than the bridge.
 */
export interface Classes {
  m: number;
  a: number;
  b: number;
  start: number[];
}

const modulo = (value: number, m: number): number => ((value % m) + m) % m;

export const classOf = ({ m, a, b, start }: Classes, kind: number, i: number, j: number): number =>
  modulo(a * i + b * j + start[kind]!, m);

/** Most classes tried: more passes than anybody would paint. */
const MOST = 24;
/** Solutions compared for one number of classes and one slope. */
const COMPARED = 64;

/** Every way (up to `COMPARED`) to start the kinds so that no conflict falls into one class, the first kind at 0. */
function starts(kinds: number, conflicts: Conflict[], m: number, a: number, b: number): number[][] {
  const found: number[][] = [];
  const start: number[] = [];
  const clash = (kind: number): boolean =>
    conflicts.some(
      ({ from, to, di, dj }) =>
        Math.max(from, to) === kind && modulo(a * di + b * dj + start[to]! - start[from]!, m) === 0,
    );
  const next = (kind: number): void => {
    if (found.length >= COMPARED) return;
    if (kind === kinds) {
      found.push([...start]);
      return;
    }
    for (let value = 0; value < (kind === 0 ? 1 : m); value++) {
      start[kind] = value;
      if (!clash(kind)) next(kind + 1);
    }
    start.length = kind;
  };
  next(0);
  return found;
}

/**
 * All colourings with the fewest classes, the simplest first; none when more than `MOST` classes would be needed.
 * @param x,y whether the pattern repeats that way
 */
export function colourings(kinds: Kind[], conflicts: Conflict[], x: boolean, y: boolean): Classes[] {
  for (let m = 1; m <= MOST; m++) {
    const found: Classes[] = [];
    for (let a = 0; a < (x ? m : 1); a++) {
      for (let b = 0; b < (y ? m : 1); b++) {
        for (const start of starts(kinds.length, conflicts, m, a, b)) found.push({ m, a, b, start });
      }
    }
    if (found.length > 0) return found;
  }
  return [];
}
