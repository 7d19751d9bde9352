import { isInside } from '../../geometry/inside.ts';
import { boxesMeet } from '../../geometry/measure.ts';
import type { Piece } from '../../geometry/path.ts';
import { type Outline, outlinesOf } from './outline.ts';

/** Windows that lie in one another and have islands: what is bridged at one go. */
export interface Cluster {
  outlines: Outline[];
  /** Outlines that are holes, by index. */
  islands: number[];
}

/** Groups windows by the outermost window round them; groups without a hole need no bridge and are left out. */
export function clustersOf(windows: Piece[]): Cluster[] {
  const outlines = outlinesOf(windows);
  const outer = outlines.filter(({ hole }) => !hole);
  const host = outer.map((one) => {
    const around = outlines
      .filter(({ hole, area, box, points }) => {
        return hole && Math.abs(area) > one.area && boxesMeet(box, one.box) && isInside(points, one.points[0]!);
      })
      .sort((a, b) => Math.abs(b.area) - Math.abs(a.area));
    return around[0]?.piece ?? one.piece;
  });
  return [...new Set(host)].flatMap((root) => {
    const own = outlines.filter(({ piece }) => host[piece] === root);
    const islands = own.flatMap(({ hole }, at) => (hole ? [at] : []));
    return islands.length > 0 ? [{ outlines: own, islands }] : [];
  });
}
