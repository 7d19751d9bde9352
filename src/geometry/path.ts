/** A point in millimetres, y down. */
export type Point = readonly [x: number, y: number];

/** One side of a ring: a straight line to `to`, or a cubic Bézier through two handles. */
export type Side = { kind: 'line'; to: Point } | { kind: 'curve'; out: Point; into: Point; to: Point };

/** A closed outline. The last side ends on `start`; a ring that ends elsewhere is closed by a straight line. */
export interface Ring {
  start: Point;
  sides: Side[];
}

/** One piece: an outer ring first, then its holes. Outer rings have positive area (see `ringArea`), holes negative. */
export type Piece = Ring[];

export interface Box {
  left: number;
  top: number;
  right: number;
  bottom: number;
}
