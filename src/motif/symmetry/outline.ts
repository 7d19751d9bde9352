import type { Point } from '../../geometry/path.ts';
import type { Drawn, Part } from '../motif.ts';
import { arcOf, frameOf, spreadOf } from './arc.ts';
import { type Chain, chains } from './chains.ts';
import { type Edge, endOf, startOf } from './edge.ts';
import { gather } from './gather.ts';
import { KINDS } from './kinds.ts';
import type { Basis } from './lattice.ts';
import { cutAtEnds, withoutSeams } from './seams.ts';
import { cross, dot, minus, plus, times } from './vector.ts';

/** A whole ellipse. */
interface Oval {
  kind: 'oval';
  part: Part;
  points: [centre: Point];
  /** See `spreadOf`. */
  spread: [xx: number, xy: number, yy: number];
  /** 1 where it runs clockwise on the page, paint inside; −1 where it is a hole. */
  turn: 1 | -1;
}

/** A straight edge without end. */
export interface Endless {
  kind: 'endless';
  part: Part;
  /** The point of it nearest to the middle of the cell. */
  points: [Point];
  /** The translation at which it comes to itself. */
  run: Point;
}

export type Feature = Edge | Oval | Endless;

/** What is seen of a pattern: the edges of its parts, each as long as it can be and told once of all its repeats. */
export interface Outline {
  features: Feature[];
  /** Edges drawn inside of a part that cannot be seen. */
  seams: Edge[];
}

function endlessOf(first: Edge, last: Edge): Endless {
  const run = minus(endOf(last), startOf(first));
  const nearest = minus(startOf(first), times(run, dot(startOf(first), run) / dot(run, run)));
  return { kind: 'endless', part: first.part, points: [nearest], run };
}

function ovalOf(edge: Edge): Oval {
  const frame = frameOf(edge);
  const turn = cross(frame.e, frame.f) > 0 ? 1 : -1;
  return { kind: 'oval', part: edge.part, points: [frame.centre], spread: spreadOf(frame), turn };
}

function asOne({ edges, ring }: Chain, within: number): Feature[] {
  const [first] = edges;
  if (ring && first.kind === 'straight') return [endlessOf(first, edges[edges.length - 1]!)];
  if (ring && first.kind === 'arc') return [ovalOf(first)];
  const whole: [Edge, ...Edge[]] = [first];
  for (const edge of edges.slice(1)) {
    const joined = KINDS[edge.kind].join(whole[whole.length - 1]!, edge, within);
    if (joined === undefined) whole.push(edge);
    else whole[whole.length - 1] = joined;
  }
  return whole;
}

function seamless(edges: Edge[], lattice: Basis, within: number): Outline {
  const { edges: seen, seams } = withoutSeams(cutAtEnds(edges, lattice, within), lattice, within);
  return { features: chains(seen, lattice, within).flatMap((chain) => asOne(chain, within)), seams };
}

/**
 * The outline of a pattern that repeats by a lattice. Two drawings of which one is made of other pieces than the other, but
 * which paint the same places, have the same outline. Pieces of one part must not overlap.
 * @param within mm that points may be off
 */
export function outlineOf(drawn: readonly Drawn[], lattice: Basis, within: number): Outline {
  // Cubics are joined as cubics first, then known as arcs: a clipped arc is no arc by its handles until it is whole again.
  const cubic = seamless(gather(drawn, within), lattice, within);
  const arcs: Edge[] = [];
  const others: Feature[] = [];
  for (const feature of cubic.features) {
    const arc = feature.kind === 'curve' ? arcOf(feature) : undefined;
    if (arc === undefined) others.push(feature);
    else arcs.push(arc);
  }
  const round = seamless(arcs, lattice, within);
  return { features: [...others, ...round.features], seams: [...cubic.seams, ...round.seams] };
}

/** An outline's feature where a move takes it, the paint still on its right side. */
export function movedFeature(feature: Feature, move: (point: Point) => Point, mirrors: boolean): Feature {
  const points = feature.points.map(move);
  if (feature.kind === 'endless') {
    const through = points[0]!;
    const run = minus(move(plus(feature.points[0], feature.run)), through);
    return { ...feature, points: [through], run: mirrors ? times(run, -1) : run };
  }
  if (feature.kind === 'oval') {
    const [xx, xy, yy] = feature.spread;
    const still = move([0, 0]);
    const [e, f] = [minus(move([1, 0]), still), minus(move([0, 1]), still)];
    const spread = (i: 0 | 1, j: 0 | 1) => xx * e[i] * e[j] + xy * (e[i] * f[j] + f[i] * e[j]) + yy * f[i] * f[j];
    return { ...feature, points: [points[0]!], spread: [spread(0, 0), spread(0, 1), spread(1, 1)] };
  }
  return { ...feature, points: mirrors ? points.reverse() : points };
}
