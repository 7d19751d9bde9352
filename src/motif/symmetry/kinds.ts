import type { Point } from '../../geometry/path.ts';
import { boundsOfArc, cutArc, joinArc, placeOnArc } from './arc.ts';
import { cutCurve, joinCurve, placeOnCurve } from './curve.ts';
import { boundsOf, type Edge } from './edge.ts';
import { cutStraight, joinStraight, placeOnStraight } from './straight.ts';

/** What can be asked of an edge whatever its kind. */
interface Kind {
  bounds(edge: Edge): [low: Point, high: Point];
  /** Share of the way along the edge at which a point lies on it; out of 0 to 1, or nothing, where it does not. */
  place(edge: Edge, point: Point, within: number): number | undefined;
  cut(edge: Edge, t: number): [Edge, Edge];
  /** Both as one edge, where the second begins at the end of the first and leads it on. */
  join(first: Edge, next: Edge, within: number): Edge | undefined;
}

export const KINDS: Record<Edge['kind'], Kind> = {
  straight: { bounds: boundsOf, place: placeOnStraight, cut: cutStraight, join: joinStraight },
  curve: { bounds: boundsOf, place: placeOnCurve, cut: cutCurve, join: joinCurve },
  arc: { bounds: boundsOfArc, place: placeOnArc, cut: cutArc, join: joinArc },
};
