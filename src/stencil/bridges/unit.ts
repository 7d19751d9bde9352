import type { Piece, Point } from '../../geometry/path.ts';
import { type Chosen, chooseBridges, type Wish } from './choose.ts';
import { type Cluster, clustersOf } from './cluster.ts';
import { chooseForLetter } from './letters.ts';
import { centreOf, type Outline, outlinesOf } from './outline.ts';
import { type Span, shiftedSpan, turnedSpan } from './span.ts';
import { symmetriesOf, type Turning, turnedAbout } from './symmetry.ts';

/** What is chosen for a whole sheet unit: spans, and islands for which there is none. */
export interface Choice {
  spans: Span[];
  loose: Outline[];
}

/** A cluster that has its bridges. */
interface Done {
  cluster: Cluster;
  centre: Point;
  chosen: Chosen;
}

const NEAR = 0.02;
const near = (a: Point, b: Point): boolean => Math.abs(a[0] - b[0]) < NEAR && Math.abs(a[1] - b[1]) < NEAR;

/** The outline of one cluster that another's outline becomes under a motion. */
const imageIn = (cluster: Cluster, of: Outline, motion: (point: Point) => Point): number =>
  cluster.outlines.findIndex(({ centre, area, hole }) => {
    return hole === of.hole && near(centre, motion(of.centre)) && Math.abs(area / of.area - 1) < 1e-3;
  });

const isImage = (cluster: Cluster, of: Cluster, motion: (point: Point) => Point): boolean =>
  cluster.outlines.length === of.outlines.length &&
  of.outlines.every((outline) => imageIn(cluster, outline, motion) >= 0);

/** Whether two clusters are one and the same drawing, shifted: every point lies where it should. */
function isCopy({ cluster, centre }: Done, other: Cluster, there: Point): boolean {
  const [dx, dy] = [there[0] - centre[0], there[1] - centre[1]];
  return (
    cluster.outlines.length === other.outlines.length &&
    cluster.outlines.every(({ points }, at) => {
      const theirs = other.outlines[at]!.points;
      return points.length === theirs.length && points.every(([x, y], n) => near([x + dx, y + dy], theirs[n]!));
    })
  );
}

/**
 * Bridges for all windows of a sheet unit. A cluster that is the image of one already bridged gets the images of its bridges, so that
 * the symmetry of the whole is kept and copies look alike.
 */
export function chooseForUnit(windows: Piece[], wish: Wish, style: 'motif' | 'letter'): Choice {
  const clusters = clustersOf(windows);
  if (clusters.length === 0) return { spans: [], loose: [] };
  const all = outlinesOf(windows);
  const middle = centreOf(all);
  const motions: Turning[] = style === 'letter' || clusters.length > 400 ? [] : symmetriesOf(all, middle);
  // Upright and level mirror lines first, then half a turn, then the rest.
  const rank = ({ a, b, c, d }: Turning) => (Math.abs(b) + Math.abs(c) > 1e-9 ? 2 : a === d ? 1 : 0);
  motions.sort((p, q) => rank(p) - rank(q));
  const done: Done[] = [];
  for (const cluster of clusters) {
    const centre = centreOf(cluster.outlines);
    const mirrored = () => {
      for (const op of motions)
        for (const one of done) {
          const motion = (point: Point) => turnedAbout(op, middle, point);
          if (!near(motion(one.centre), centre) || !isImage(cluster, one.cluster, motion)) continue;
          const spans = one.chosen.spans.map((span) => turnedSpan(span, op, middle));
          const loose = one.chosen.loose.map((at) => imageIn(cluster, one.cluster.outlines[at]!, motion));
          return { spans, loose };
        }
      return undefined;
    };
    const copied = () => {
      const one = done.find((other) => isCopy(other, cluster, centre));
      if (!one) return undefined;
      const [dx, dy] = [centre[0] - one.centre[0], centre[1] - one.centre[1]];
      return { spans: one.chosen.spans.map((span) => shiftedSpan(span, dx, dy)), loose: one.chosen.loose };
    };
    const fresh = () => {
      if (style === 'letter') return chooseForLetter(cluster, wish);
      const keep = motions.filter((op) => rank(op) < 2 && near(turnedAbout(op, middle, centre), centre));
      return chooseBridges(cluster, keep, wish);
    };
    done.push({ cluster, centre, chosen: mirrored() ?? copied() ?? fresh() });
  }
  return {
    spans: done.flatMap(({ chosen }) => chosen.spans),
    loose: done.flatMap(({ cluster, chosen }) => chosen.loose.map((at) => cluster.outlines[at]!)),
  };
}
