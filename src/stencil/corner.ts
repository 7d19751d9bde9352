import { clipPieces } from '../geometry/clip.ts';
import { flatten } from '../geometry/flatten.ts';
import { pieceArea, pieceBox } from '../geometry/measure.ts';
import type { Box, Piece, Point, Ring, Side } from '../geometry/path.ts';
import { KEY } from './key.ts';
import type { Shape } from './shape.ts';

/** A corner of a shape, and the opening that shows it: the part of the shape within `KEY` of the corner. */
export interface Corner {
  point: Point;
  piece: Piece;
  polygon: Point[];
  box: Box;
}

/** A turn of the outline counts as a corner from here on, radians. */
const BEND = 0.35;
/** An opening of less area than this shows too little, mm². */
const LEAST = 3;

const unit = (from: Point, to: Point): Point => {
  const [x, y] = [to[0] - from[0], to[1] - from[1]];
  const long = Math.sqrt(x * x + y * y);
  return long < 1e-9 ? [0, 0] : [x / long, y / long];
};

/** Which way a side leaves its first point and reaches its last. */
function directions(from: Point, side: Side): { leaves: Point; reaches: Point } {
  const points: Point[] = side.kind === 'line' ? [from, side.to] : [from, side.out, side.into, side.to];
  const last = points.length - 1;
  const first = points.find((point) => unit(from, point)[0] !== 0 || unit(from, point)[1] !== 0) ?? side.to;
  const before = [...points].reverse().find((point) => unit(point, side.to)[0] !== 0 || unit(point, side.to)[1] !== 0);
  return { leaves: unit(from, first), reaches: unit(before ?? from, points[last]!) };
}

/** Points at which the outline turns sharply outwards. */
function sharpPoints(ring: Ring): Point[] {
  const starts: Point[] = [ring.start, ...ring.sides.map((side) => side.to)];
  const ways = ring.sides.map((side, at) => directions(starts[at]!, side));
  return ring.sides.flatMap((_, at): Point[] => {
    const before = ways[(at + ways.length - 1) % ways.length]!.reaches;
    const after = ways[at]!.leaves;
    const turn = Math.atan2(before[0] * after[1] - before[1] * after[0], before[0] * after[0] + before[1] * after[1]);
    return turn > BEND ? [starts[at]!] : [];
  });
}

/** The outermost points left, right, far and near, for shapes without corners. */
function outermost(polygon: Point[]): Point[] {
  const by = (measure: (point: Point) => number) => polygon.reduce((a, b) => (measure(b) > measure(a) ? b : a));
  return [by(([x]) => -x), by(([x]) => x), by(([, y]) => -y), by(([, y]) => y)];
}

const square = ([x, y]: Point): Box => ({ left: x - KEY, top: y - KEY, right: x + KEY, bottom: y + KEY });

const holdsPoint = (polygon: Point[], [x, y]: Point): boolean =>
  polygon.some(([px, py]) => Math.abs(px - x) < 0.01 && Math.abs(py - y) < 0.01);

/** The corners of a shape that an opening can show, about the shape's own centre. */
export function cornersOf(shape: Shape): Corner[] {
  const sharp = sharpPoints(shape.piece[0]!);
  const points = sharp.length > 0 ? sharp : outermost(shape.polygon);
  return points.flatMap((point): Corner[] => {
    for (const piece of clipPieces([shape.piece], square(point))) {
      const polygon = flatten(piece[0]!, 0.002);
      if (piece.length > 1 || pieceArea(piece) < LEAST || !holdsPoint(polygon, point)) continue;
      return [{ point, piece, polygon, box: pieceBox(piece) }];
    }
    return [];
  });
}
