import { loadBooleans } from '../geometry/booleans.ts';
import { cutRings } from '../geometry/half-plane.ts';
import { boxesMeet, pieceArea, pieceBox, ringArea } from '../geometry/measure.ts';
import { nestRings } from '../geometry/nest.ts';
import type { Box, Piece, Point } from '../geometry/path.ts';
import { movePiece, shifted, shiftedBox } from '../geometry/transform.ts';
import type { Region } from './drawing.ts';

/** Nearer than this, mm, a piece that touches a wall is not cut by it. */
const TOUCH = 1e-6;

/** A line with the room on one side: what lies inside has nx·x + ny·y <= reach. The normal has length 1. */
interface WallLine {
  nx: number;
  ny: number;
  reach: number;
}

const boxOf = (points: readonly Point[]): Box => ({
  left: Math.min(...points.map(([x]) => x)),
  right: Math.max(...points.map(([x]) => x)),
  top: Math.min(...points.map(([, y]) => y)),
  bottom: Math.max(...points.map(([, y]) => y)),
});

const twiceArea = (points: readonly Point[]): number =>
  points.reduce((sum, [x, y], at) => {
    const [u, v] = points[(at + 1) % points.length]!;
    return sum + x * v - u * y;
  }, 0);

/** Clockwise on the page, as outer rings run. */
const clockwise = (points: readonly Point[]): Point[] => (twiceArea(points) < 0 ? [...points].reverse() : [...points]);

const polygonPiece = (points: readonly Point[]): Piece => {
  const [start, ...others] = clockwise(points);
  return [{ start: start!, sides: others.map((to) => ({ kind: 'line', to })) }];
};

function wallLines(outline: readonly Point[]): WallLine[] {
  const points = clockwise(outline);
  return points.map(([x0, y0], at) => {
    const [x1, y1] = points[(at + 1) % points.length]!;
    const long = Math.hypot(x1 - x0, y1 - y0);
    const [nx, ny] = [(y1 - y0) / long, (x0 - x1) / long];
    return { nx, ny, reach: nx * x0 + ny * y0 };
  });
}

/** Rings of less area than this, mm², are crumbs of rounding and left out. */
const CRUMB = 1e-6;

/** What of a piece lies inside the walls that its box reaches over: each in turn, in a frame in which the wall stands upright. */
function cutAtWalls(piece: Piece, box: Box, lines: readonly WallLine[]): Piece[] {
  const over = lines.filter(({ nx, ny, reach }) => {
    const far = nx * (nx > 0 ? box.right : box.left) + ny * (ny > 0 ? box.bottom : box.top);
    return far > reach + TOUCH;
  });
  if (over.length === 0) return [piece];
  const cut = over.reduce((rings: Piece, { nx, ny, reach }): Piece => {
    const turned = movePiece(rings, ([x, y]) => [x * nx + y * ny, y * nx - x * ny]);
    return movePiece(cutRings(turned, { axis: 0, at: reach, keep: -1 }), ([x, y]) => [
      x * nx - y * ny,
      x * ny + y * nx,
    ]);
  }, piece);
  return nestRings(cut.filter((ring) => Math.abs(ringArea(ring)) >= CRUMB));
}

/** A floor that painting is cut to. */
export interface Clip {
  /** The floor itself: the room less what stands in it. */
  floor: Piece[];
  /** What of a piece lies on the floor; the piece itself where all of it does. */
  piece(piece: Piece): Piece[];
  /** What of the regions lies on the floor. Pieces that nothing cuts come back as they are. */
  regions(regions: readonly Region[]): Region[];
  /** Area of a piece on the floor, mm². */
  area(piece: Piece): number;
}

/**
 * Cuts painting to a floor. Curves stay curves.
 * @param outline corners of a room, all pointing outwards, mm
 * @param blocked outlines of what stands in it
 */
export async function clipToFloor(outline: readonly Point[], blocked: readonly Point[][]): Promise<Clip> {
  const booleans = await loadBooleans();
  const lines = wallLines(outline);
  const rooms = [polygonPiece(outline)];
  const inTheWay = blocked.map((points) => ({ box: boxOf(points), pieces: [polygonPiece(points)] }));
  const floor = inTheWay.reduce((left, { pieces }) => booleans.subtract(left, pieces), rooms);

  /** 1 wholly on the floor, -1 wholly off it by the walls alone, 0 otherwise. */
  const lies = (box: Box): 1 | 0 | -1 => {
    let inside = true;
    for (const { nx, ny, reach } of lines) {
      const far = nx * (nx > 0 ? box.right : box.left) + ny * (ny > 0 ? box.bottom : box.top);
      const near = nx * (nx > 0 ? box.left : box.right) + ny * (ny > 0 ? box.top : box.bottom);
      if (near >= reach - TOUCH) return -1;
      if (far > reach + TOUCH) inside = false;
    }
    if (inTheWay.some((one) => boxesMeet(one.box, box, -TOUCH))) return 0;
    return inside ? 1 : 0;
  };
  const cut = (piece: Piece): Piece[] => {
    const box = pieceBox(piece);
    const where = lies(box);
    if (where !== 0) return where > 0 ? [piece] : [];
    const inRoom = cutAtWalls(piece, box, lines);
    return inTheWay.reduce(
      (left, one) => (boxesMeet(one.box, box) ? booleans.subtract(left, one.pieces) : left),
      inRoom,
    );
  };
  const regions = (all: readonly Region[]): Region[] =>
    all.flatMap((region): Region[] => {
      const boxes = region.pieces.map(pieceBox);
      const whole: number[] = [];
      const pieces: Piece[] = [];
      for (let n = 0; n < region.at.length; n += 2) {
        const [x, y] = [region.at[n]!, region.at[n + 1]!];
        if (boxes.every((box) => lies(shiftedBox(box, x, y)) > 0)) whole.push(x, y);
        else pieces.push(...region.pieces.flatMap((piece) => cut(shifted(piece, x, y))));
      }
      return [
        ...(whole.length > 0 ? [{ ...region, at: Float64Array.from(whole) }] : []),
        ...(pieces.length > 0 ? [{ ...region, pieces, cut: true, at: Float64Array.of(0, 0) }] : []),
      ];
    });
  return {
    floor,
    piece: cut,
    regions,
    area: (piece) => cut(piece).reduce((sum, one) => sum + pieceArea(one), 0),
  };
}
