import { flatten, pointOnCurve } from '../geometry/flatten.ts';
import { boxCentre, boxHeight, boxWidth, pieceArea, pieceBox } from '../geometry/measure.ts';
import type { Box, Piece, Point, Ring } from '../geometry/path.ts';
import { mirrored, shifted, turned } from '../geometry/transform.ts';

/** Outlines closer to each other than this everywhere are one shape, mm. */
const ALIKE = 0.0005;

/** The outline of a piece about the centre of its own box, however often it is painted. */
export interface Shape {
  piece: Piece;
  box: Box;
  /** The outer ring, its chords within 2 µm of the curve. */
  polygon: Point[];
}

/** Places on a side that are looked at besides its end. Uneven, so that they do not fall on corners of a shape drawn on one grid. */
const BETWEEN = [0.23, 0.48, 0.79];

/** Corners, and three points on each side: two outlines may share all their corners and not their sides. */
function samples(piece: Piece): Point[] {
  return piece.flatMap((ring) => {
    let from = ring.start;
    return ring.sides.flatMap((side) => {
      const start = from;
      from = side.to;
      const on = (t: number): Point =>
        side.kind === 'curve'
          ? pointOnCurve(start, side, t)
          : [start[0] + t * (side.to[0] - start[0]), start[1] + t * (side.to[1] - start[1])];
      return [...BETWEEN.map(on), side.to];
    });
  });
}

function reaches(points: Point[], outlines: Point[][]): boolean {
  return points.every(([x, y]) =>
    outlines.some((outline) =>
      outline.some(([x1, y1], at) => {
        const [x0, y0] = outline[at === 0 ? outline.length - 1 : at - 1]!;
        const [ux, uy] = [x1 - x0, y1 - y0];
        const long = ux * ux + uy * uy;
        const t = long === 0 ? 0 : Math.min(1, Math.max(0, ((x - x0) * ux + (y - y0) * uy) / long));
        const [dx, dy] = [x0 + t * ux - x, y0 + t * uy - y];
        return dx * dx + dy * dy <= ALIKE * ALIKE;
      }),
    ),
  );
}

const near = ([ax, ay]: Point, [bx, by]: Point): boolean => Math.abs(ax - bx) <= ALIKE && Math.abs(ay - by) <= ALIKE;

/** Whether two rings have the same corners and handles in the same order, whichever corner each begins at. */
function sameCorners(a: Ring, b: Ring): boolean {
  const n = a.sides.length;
  if (n !== b.sides.length) return false;
  return b.sides.some((_, from) =>
    a.sides.every((side, at) => {
      const other = b.sides[(from + at) % n]!;
      if (side.kind !== other.kind || !near(side.to, other.to)) return false;
      return (
        side.kind === 'line' ||
        (near(side.out, (other as typeof side).out) && near(side.into, (other as typeof side).into))
      );
    }),
  );
}

/** Whether two outlines coincide to half a micrometre, wherever each begins. Both about the centre of their boxes. */
function alike(a: Shape, b: Shape): boolean {
  if (Math.abs(boxWidth(a.box) - boxWidth(b.box)) > 2 * ALIKE) return false;
  if (Math.abs(boxHeight(a.box) - boxHeight(b.box)) > 2 * ALIKE) return false;
  const around = 2 * (boxWidth(a.box) + boxHeight(a.box));
  if (a.piece.length !== b.piece.length || Math.abs(pieceArea(a.piece) - pieceArea(b.piece)) > 2 * ALIKE * around) {
    return false;
  }
  if (a.piece.every((ring, at) => sameCorners(ring, b.piece[at]!))) return true;
  const fine = (shape: Shape) => shape.piece.map((ring) => flatten(ring, ALIKE / 4));
  return reaches(samples(a.piece), fine(b)) && reaches(samples(b.piece), fine(a));
}

/** Every distinct shape of a job once, by number. */
export class ShapeBook {
  readonly shapes: Shape[] = [];
  private readonly moved = new Map<string, number>();

  /** The number of a piece's shape, and where the centre of its box lies. */
  find(piece: Piece): { shape: number; centre: Point } {
    const centre = boxCentre(pieceBox(piece));
    const own = shifted(piece, -centre[0], -centre[1]);
    const shape: Shape = { piece: own, box: pieceBox(own), polygon: flatten(own[0]!, 0.002) };
    const known = this.shapes.findIndex((other) => alike(shape, other));
    return { shape: known >= 0 ? known : this.shapes.push(shape) - 1, centre };
  }

  /** The number of the same shape after quarter turns. */
  turn(shape: number, turns: number): number {
    const quarter = ((turns % 4) + 4) % 4;
    if (quarter === 0) return shape;
    const key = `${shape} ${quarter}`;
    const known = this.moved.get(key);
    if (known !== undefined) return known;
    const found = this.find(turned(this.shapes[shape]!.piece, quarter)).shape;
    this.moved.set(key, found);
    return found;
  }

  /** The number of the same shape seen in a mirror, left and right exchanged. */
  mirror(shape: number): number {
    const key = `${shape} mirrored`;
    const known = this.moved.get(key);
    if (known !== undefined) return known;
    const found = this.find(mirrored(this.shapes[shape]!.piece, 'across')).shape;
    this.moved.set(key, found);
    return found;
  }
}
