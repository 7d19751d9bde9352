import type { Point, Ring } from '../../geometry/path.ts';
import { cutBefore } from './contain.ts';
import { bestEntries, ringEnds } from './entry.ts';
import { shortTour } from './search.ts';
import type { Stops } from './tour.ts';

/** Where a blade goes in: at the start of every ring as drawn, or at whichever end of its sides makes the way shorter. */
export type Entry = 'fixed' | 'free';

export interface OrderOptions {
  entry: Entry;
  /** Where the pen begins and ends, mm. Default: 0, 0. */
  home?: Point;
  /** Trials of the search. Default: by the count of rings (see `trialsFor`). */
  trials?: number;
}

/** One ring to be cut: which one, and the end of its sides (an index into `ringEnds`) at which the blade goes in. */
export interface RingCut {
  ring: number;
  entry: number;
}

/** Ends of one ring that are tried; of a ring with more, as many spread evenly along it. */
const MOST_ENTRIES = 48;

function entriesOf(ring: Ring, entry: Entry): number[] {
  if (entry === 'fixed') return [0];
  const count = ringEnds(ring).length;
  const tried = Math.min(count, MOST_ENTRIES);
  return Array.from({ length: tried }, (_, k) => Math.floor((k * count) / tried));
}

/**
 * The order in which rings are cut and where each is entered: a short way with the pen up from `home` through all and back, in which
 * what lies inside comes before what lies outside, and small before large near each other (see `cutBefore`).
 *
 * A ring and all that is cut before it on its account stay together: they are one stop on the way, with a way of their own inside.
 * The same rings give the same order. Pure; never throws.
 * @param rings outlines of lines and cubics that do not cross each other, mm
 */
export function cutOrder(rings: readonly Ring[], { entry, home = [0, 0], trials }: OrderOptions): RingCut[] {
  if (rings.length === 0) return [];
  const entries = rings.map((ring) => entriesOf(ring, entry));
  const ends = rings.map((ring, i) => {
    const all = ringEnds(ring);
    return entries[i]!.map((end) => all[end]!);
  });
  const first = groups(cutBefore(rings));
  const order: number[] = [];
  /** The rings cut before one, by the way that begins nearer to where the pen is. */
  const visit = (after: number): void => {
    const members = first.get(after);
    if (!members) return;
    const round = roundOf(members, after < 0 ? [home] : ends[after]!, ends, trials);
    const [head, tail] = [round[0]!, round.at(-1)!];
    const at = order.length === 0 ? [home] : ends[order.at(-1)!]!;
    if (after >= 0 && least(at, ends[tail]!) < least(at, ends[head]!)) round.reverse();
    for (const ring of round) {
      visit(ring);
      order.push(ring);
    }
  };
  visit(-1);
  const chosen = bestEntries(
    order.map((ring) => ends[ring]!),
    home,
  );
  return order.map((ring, at) => ({ ring, entry: entries[ring]![chosen[at]!]! }));
}

/** The rings that are cut before each ring; those before none under -1. */
function groups(before: Int32Array): Map<number, number[]> {
  const found = new Map<number, number[]>();
  before.forEach((after, ring) => {
    const group = found.get(after);
    if (group) group.push(ring);
    else found.set(after, [ring]);
  });
  return found;
}

/** A short round through some rings that begins and ends at one of `last`; the rings in its order. */
function roundOf(members: number[], last: readonly Point[], ends: Point[][], trials: number | undefined): number[] {
  if (members.length === 1) return [...members];
  const stops = stopsOf([last, ...members.map((ring) => ends[ring]!)]);
  const { order, place, count } = shortTour(stops, trials);
  return Array.from({ length: members.length }, (_, k) => members[order[(place[0]! + 1 + k) % count]! - 1]!);
}

function stopsOf(points: readonly (readonly Point[])[]): Stops {
  const first = new Int32Array(points.length + 1);
  points.forEach((own, stop) => {
    first[stop + 1] = first[stop]! + own.length;
  });
  const all = points.flat();
  return { first, x: Float64Array.from(all, ([x]) => x), y: Float64Array.from(all, ([, y]) => y) };
}

const least = (a: readonly Point[], b: readonly Point[]): number =>
  Math.min(...a.flatMap(([x, y]) => b.map(([u, v]) => (x - u) * (x - u) + (y - v) * (y - v))));

/** Way with the pen up from `home` through rings cut in this order, and back, mm. */
export function penUpTravel(rings: readonly Ring[], cuts: readonly RingCut[], home: Point = [0, 0]): number {
  const stops = [home, ...cuts.map(({ ring, entry }) => ringEnds(rings[ring]!)[entry]!), home];
  let sum = 0;
  for (let i = 1; i < stops.length; i++) {
    const [dx, dy] = [stops[i]![0] - stops[i - 1]![0], stops[i]![1] - stops[i - 1]![1]];
    sum += Math.sqrt(dx * dx + dy * dy);
  }
  return sum;
}
