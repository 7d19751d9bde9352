import type { Point } from '../../geometry/path.ts';
import { type Basis, nearestTranslation } from './lattice.ts';

/** The translation that lays points `p` on points `q`, one by one and each `within` mm, or nothing where none does. */
export function translationTo(
  lattice: Basis,
  p: readonly Point[],
  q: readonly Point[],
  within: number,
): Point | undefined {
  if (p.length !== q.length) return undefined;
  let [fromX, fromY] = [0, 0];
  for (let i = 0; i < p.length; i++) {
    fromX += q[i]![0] - p[i]![0];
    fromY += q[i]![1] - p[i]![1];
  }
  const move = nearestTranslation(lattice, [fromX / p.length, fromY / p.length]);
  for (let i = 0; i < p.length; i++) {
    if (Math.abs(p[i]![0] + move[0] - q[i]![0]) > within) return undefined;
    if (Math.abs(p[i]![1] + move[1] - q[i]![1]) > within) return undefined;
  }
  return move;
}

/** Things sorted by kind and by a measure that moving does not change, so that those a given one may be an image of are near. */
export class Catalogue<T> {
  readonly #kinds = new Map<string, { measures: number[]; things: T[] }>();
  readonly #within: number;

  constructor(things: readonly T[], kindOf: (thing: T) => string, measureOf: (thing: T) => number, within: number) {
    this.#within = within;
    const sorted = things
      .map((thing) => ({ thing, measure: measureOf(thing) }))
      .sort((one, other) => one.measure - other.measure);
    for (const { thing, measure } of sorted) {
      const key = kindOf(thing);
      const list = this.#kinds.get(key) ?? { measures: [], things: [] };
      this.#kinds.set(key, list);
      list.measures.push(measure);
      list.things.push(thing);
    }
  }

  /** All things of this kind and measure. */
  near(kind: string, measure: number): T[] {
    const list = this.#kinds.get(kind);
    if (list === undefined) return [];
    let [from, to] = [0, list.measures.length];
    while (from < to) {
      const middle = (from + to) >> 1;
      if (list.measures[middle]! < measure - this.#within) from = middle + 1;
      else to = middle;
    }
    let end = from;
    while (end < list.measures.length && list.measures[end]! <= measure + this.#within) end++;
    return list.things.slice(from, end);
  }
}
