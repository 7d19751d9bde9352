import type { Box, Piece, Point, Ring } from './path.ts';

/** Exact signed area of a ring, mm² (Green's theorem over lines and cubics). Positive when it runs clockwise on the page (y down). */
export function ringArea(ring: Ring): number {
  let twice = 0;
  let [x0, y0] = ring.start;
  for (const side of ring.sides) {
    const [x3, y3] = side.to;
    if (side.kind === 'line') {
      twice += x0 * y3 - x3 * y0;
    } else {
      const [x1, y1] = side.out;
      const [x2, y2] = side.into;
      // Integral of x dy − y dx over the cubic, in closed form.
      twice +=
        (6 * (x0 * y1 - x1 * y0) + 3 * (x0 * y2 - x2 * y0) + (x0 * y3 - x3 * y0) + 3 * (x1 * y2 - x2 * y1)) / 10 +
        (3 * (x1 * y3 - x3 * y1) + 6 * (x2 * y3 - x3 * y2)) / 10;
    }
    x0 = x3;
    y0 = y3;
  }
  const [xs, ys] = ring.start;
  return (twice + x0 * ys - xs * y0) / 2;
}

/** Area of a piece with its holes taken out, mm². */
export function pieceArea(piece: Piece): number {
  return Math.abs(piece.reduce((sum, ring) => sum + ringArea(ring), 0));
}

export function emptyBox(): Box {
  return { left: Infinity, top: Infinity, right: -Infinity, bottom: -Infinity };
}

export function growBox(box: Box, x: number, y: number): void {
  if (x < box.left) box.left = x;
  if (x > box.right) box.right = x;
  if (y < box.top) box.top = y;
  if (y > box.bottom) box.bottom = y;
}

export function joinBoxes(a: Box, b: Box): Box {
  return {
    left: Math.min(a.left, b.left),
    top: Math.min(a.top, b.top),
    right: Math.max(a.right, b.right),
    bottom: Math.max(a.bottom, b.bottom),
  };
}

/** Parameters in (0, 1) at which one coordinate of a cubic turns back. */
export function turningPoints(p0: number, p1: number, p2: number, p3: number): number[] {
  const a = 3 * (p3 - 3 * p2 + 3 * p1 - p0);
  const b = 6 * (p2 - 2 * p1 + p0);
  const c = 3 * (p1 - p0);
  const inside = (t: number) => t > 0 && t < 1;
  if (Math.abs(a) < 1e-12) return Math.abs(b) < 1e-12 ? [] : [-c / b].filter(inside);
  const root = b * b - 4 * a * c;
  if (root < 0) return [];
  // Added up this way round, nearly equal terms are never taken from each other (a is next to nothing on a raised quadratic).
  const q = -(b + (b < 0 ? -1 : 1) * Math.sqrt(root)) / 2;
  return q === 0 ? [] : [q / a, c / q].filter(inside);
}

/** One coordinate of a cubic at parameter `t`. */
export const cubicAt = (p0: number, p1: number, p2: number, p3: number, t: number): number => {
  const u = 1 - t;
  return u * u * u * p0 + 3 * u * u * t * p1 + 3 * u * t * t * p2 + t * t * t * p3;
};

/** Tight box of a ring, curves followed to their turning points. */
export function ringBox(ring: Ring): Box {
  const box = emptyBox();
  let [x0, y0] = ring.start;
  growBox(box, x0, y0);
  for (const side of ring.sides) {
    const [x3, y3] = side.to;
    growBox(box, x3, y3);
    if (side.kind === 'curve') {
      const [x1, y1] = side.out;
      const [x2, y2] = side.into;
      for (const t of turningPoints(x0, x1, x2, x3)) growBox(box, cubicAt(x0, x1, x2, x3, t), y3);
      for (const t of turningPoints(y0, y1, y2, y3)) growBox(box, x3, cubicAt(y0, y1, y2, y3, t));
    }
    x0 = x3;
    y0 = y3;
  }
  return box;
}

export const pieceBox = (piece: Piece): Box => piece.map(ringBox).reduce(joinBoxes, emptyBox());

export const piecesBox = (pieces: Piece[]): Box => pieces.map(pieceBox).reduce(joinBoxes, emptyBox());

export const boxesMeet = (a: Box, b: Box, within = 0): boolean =>
  a.left <= b.right + within && b.left <= a.right + within && a.top <= b.bottom + within && b.top <= a.bottom + within;

export const boxWidth = (box: Box): number => box.right - box.left;
export const boxHeight = (box: Box): number => box.bottom - box.top;

export const boxCentre = (box: Box): Point => [(box.left + box.right) / 2, (box.top + box.bottom) / 2];
