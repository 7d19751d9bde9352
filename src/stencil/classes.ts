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
/** Steps of the search for them. Where that is not enough, another slope or more classes are taken. */
const STEPS = 20_000;

/** A conflict as the later of its two kinds sees it: the two starts must not differ by this. */
interface Bar {
  other: number;
  differs: number;
}

/** What bars each kind from a start, given the starts of the kinds before it; nothing when a kind is barred by itself. */
function barsFor(kinds: number, conflicts: Conflict[], m: number, a: number, b: number): Bar[][] | undefined {
  const bars = Array.from({ length: kinds }, (): Bar[] => []);
  for (const { from, to, di, dj } of conflicts) {
    const step = modulo(a * di + b * dj, m);
    if (from === to) {
      if (step === 0) return undefined;
    } else if (to > from) bars[to]!.push({ other: from, differs: modulo(-step, m) });
    else bars[from]!.push({ other: to, differs: step });
  }
  return bars;
}

/** Every way (up to `COMPARED`) to start the kinds so that no conflict falls into one class, the first kind at 0. */
function starts(kinds: number, conflicts: Conflict[], m: number, a: number, b: number): number[][] {
  const bars = barsFor(kinds, conflicts, m, a, b);
  if (!bars) return [];
  const found: number[][] = [];
  const start: number[] = [];
  let steps = 0;
  const next = (kind: number): void => {
    if (kind === kinds) {
      found.push([...start]);
      return;
    }
    for (let value = 0; value < (kind === 0 ? 1 : m); value++) {
      if (found.length >= COMPARED || ++steps > STEPS) return;
      if (bars[kind]!.some(({ other, differs }) => modulo(value - start[other]!, m) === differs)) continue;
      start[kind] = value;
      next(kind + 1);
    }
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
