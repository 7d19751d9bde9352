import { ringArea } from './measure.ts';
import { nestRings } from './nest.ts';
import type { Piece, Ring, Side } from './path.ts';

/** Union, difference and intersection of painted areas. Curves stay curves; sides away from a cut come back unchanged. */
export interface Booleans {
  unite(a: Piece[], b: Piece[]): Piece[];
  subtract(a: Piece[], b: Piece[]): Piece[];
  intersect(a: Piece[], b: Piece[]): Piece[];
  /** What a fill paints of rings that may cross themselves and each other, and run either way, under a fill rule of SVG. */
  resolve(rings: Ring[], rule: 'nonzero' | 'evenodd'): Piece[];
}

/** Rings of less area than this, mm², are crumbs of rounding and left out. */
const CRUMB = 1e-6;

const isRing = (ring: Ring): boolean => Math.abs(ringArea(ring)) >= CRUMB;

/** Loads the geometry library on first use (about 45 ms) and returns the operations, which are then immediate. */
export async function loadBooleans(): Promise<Booleans> {
  const { default: core } = await import('paper/dist/paper-core.js');
  if (core.project === null || core.project === undefined) core.setup(new core.Size(1, 1));

  const toPath = (ring: Ring): paper.Path => {
    const path = new core.Path({ insert: false });
    path.moveTo(new core.Point(ring.start[0], ring.start[1]));
    for (const side of ring.sides) {
      if (side.kind === 'line') path.lineTo(new core.Point(side.to[0], side.to[1]));
      else
        path.cubicCurveTo(
          new core.Point(side.out[0], side.out[1]),
          new core.Point(side.into[0], side.into[1]),
          new core.Point(side.to[0], side.to[1]),
        );
    }
    path.closePath();
    return path;
  };
  const toItem = (pieces: Piece[]): paper.CompoundPath => {
    const item = new core.CompoundPath({ insert: false, fillRule: 'nonzero' });
    item.addChildren(pieces.flat().map(toPath));
    return item;
  };
  const toRing = (path: paper.Path): Ring => {
    const sides = path.curves.map((curve): Side => {
      const to = [curve.point2.x, curve.point2.y] as const;
      if (!curve.hasHandles()) return { kind: 'line', to };
      return {
        kind: 'curve',
        out: [curve.point1.x + curve.handle1.x, curve.point1.y + curve.handle1.y],
        into: [curve.point2.x + curve.handle2.x, curve.point2.y + curve.handle2.y],
        to,
      };
    });
    return { start: [path.firstSegment.point.x, path.firstSegment.point.y], sides };
  };
  const toPieces = (item: paper.PathItem): Piece[] => {
    const paths = item instanceof core.CompoundPath ? (item.children as paper.Path[]) : [item as paper.Path];
    return nestRings(
      paths
        .filter((path) => path.segments.length > 1)
        .map(toRing)
        .filter(isRing),
    );
  };
  const operation =
    (name: 'unite' | 'subtract' | 'intersect') =>
    (a: Piece[], b: Piece[]): Piece[] =>
      toPieces(toItem(a)[name](toItem(b), { insert: false }));

  return {
    unite: operation('unite'),
    subtract: operation('subtract'),
    intersect: operation('intersect'),
    resolve(rings, rule) {
      const item = new core.CompoundPath({ insert: false, fillRule: rule });
      // A compound path of one path is taken apart before it is resolved, so the path must know the rule too.
      item.addChildren(
        rings.map(toPath).map((path) => {
          path.fillRule = rule;
          return path;
        }),
      );
      return toPieces(item.unite(new core.CompoundPath({ insert: false }), { insert: false }));
    },
  };
}
