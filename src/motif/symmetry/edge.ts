import type { Point } from '../../geometry/path.ts';
import type { Part } from '../motif.ts';
import { distance } from './vector.ts';

/**
 * A stretch of an outline with its paint clockwise of it on the page (y down), as rings of positive area run. By its points:
 * `straight`: both ends. `curve`: a cubic Bézier, both ends with the handles between them.
 * `arc`: part of an ellipse: one end, its middle, the other end; `half` is half of the angle it takes up on the circle
 * that the ellipse is a stretched image of, radians, under π.
 */
export interface Edge {
  kind: 'straight' | 'curve' | 'arc';
  part: Part;
  points: Point[];
  /** 0 unless an arc. */
  half: number;
}

export const startOf = (edge: Edge): Point => edge.points[0]!;
export const endOf = (edge: Edge): Point => edge.points[edge.points.length - 1]!;

export const movedEdge = (edge: Edge, move: (point: Point) => Point): Edge => ({
  ...edge,
  points: edge.points.map(move),
});

export const reversedEdge = (edge: Edge): Edge => ({ ...edge, points: [...edge.points].reverse() });

/** Length of the line through all points, mm: alike for all images of an edge. */
export const measureOf = ({ points }: Edge): number =>
  points.slice(1).reduce((sum, point, i) => sum + distance(points[i]!, point), 0);

/** A box round all points: for a curve, that of its handles. */
export const boundsOf = ({ points }: Edge): [low: Point, high: Point] => [
  [Math.min(...points.map(([x]) => x)), Math.min(...points.map(([, y]) => y))],
  [Math.max(...points.map(([x]) => x)), Math.max(...points.map(([, y]) => y))],
];
