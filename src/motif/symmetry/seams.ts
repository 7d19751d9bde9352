import type { Point } from '../../geometry/path.ts';
import { translationTo } from './alike.ts';
import { type Edge, endOf, measureOf, reversedEdge, startOf } from './edge.ts';
import { KINDS } from './kinds.ts';
import type { Basis } from './lattice.ts';
import { Places } from './places.ts';
import { distance, mean, minus, plus } from './vector.ts';

/** Cuts every edge where an end of another edge of its part, or of a repeat of one, lies on it. */
export function cutAtEnds(edges: Edge[], lattice: Basis, within: number): Edge[] {
  const ends = new Places(edges, startOf, lattice);
  return edges.flatMap((edge) => {
    const kind = KINDS[edge.kind];
    const [low, high] = kind.bounds(edge);
    const places: number[] = [];
    for (const { thing, at } of ends.inBox(minus(low, [within, within]), plus(high, [within, within]))) {
      if (thing.part !== edge.part) continue;
      if (distance(at, startOf(edge)) <= 4 * within || distance(at, endOf(edge)) <= 4 * within) continue;
      const place = kind.place(edge, at, within);
      if (place !== undefined && place > 0 && place < 1) places.push(place);
    }
    return cutAt(edge, places, within);
  });
}

function cutAt(edge: Edge, places: number[], within: number): Edge[] {
  const cuts: Edge[] = [];
  let [rest, at] = [edge, 0];
  for (const place of places.sort((one, other) => one - other)) {
    const [before, after] = KINDS[edge.kind].cut(rest, (place - at) / (1 - at));
    if (measureOf(before) <= 4 * within) continue;
    cuts.push(before);
    [rest, at] = [after, place];
  }
  return [...cuts, rest];
}

/**
 * Takes out what no eye can see: edges along which two pieces of one part meet, or a piece and a repeat of one. Those drawn
 * more than once are kept once. Edges must be cut at each other's ends first.
 * @returns the edges left, and the seams taken out
 */
export function withoutSeams(edges: Edge[], lattice: Basis, within: number): { edges: Edge[]; seams: Edge[] } {
  const middles = new Places(edges, ({ points }) => mean(points), lattice);
  const done = new Set<Edge>();
  const left: Edge[] = [];
  const seams: Edge[] = [];
  for (const edge of edges) {
    if (done.has(edge)) continue;
    let net = 0;
    for (const { thing: other } of middles.near(mean(edge.points), 4 * within)) {
      if (done.has(other) || other.part !== edge.part || other.kind !== edge.kind) continue;
      const run = (points: Point[]) => translationTo(lattice, points, edge.points, 4 * within) !== undefined;
      const same = run(other.points);
      if (!same && !run(reversedEdge(other).points)) continue;
      net += same ? 1 : -1;
      done.add(other);
    }
    if (net === 0) seams.push(edge);
    else left.push(net > 0 ? edge : reversedEdge(edge));
  }
  return { edges: left, seams };
}
