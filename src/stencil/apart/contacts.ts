import type { Piece, Point } from '../../geometry/path.ts';
import { type Clipper, grown, outers, type Paths64, piecePaths, squareMm, UNITS_PER_MM } from '../clip.ts';
import { SLACK, SLIVER } from '../soundness.ts';

/** Strips reach so much past the place where two shapes come too near, mm; then so many widths further, until what is left keeps its distance. */
const PAST = 0.05;
const FURTHER = [0, 0.25, 0.5, 0.75, 1];
/** A place more bent than this is none that a straight strip can hold apart: its depth, in widths of the strip. */
const BENT = 1.4;
/** A place so little longer than deep, or less, does not show by its own shape which way it runs. */
const ROUND = 1.1;

/** Area, middle and second moments of a closed polygon about its middle, mm. */
function moments(path: Paths64[number]) {
  let [twice, sx, sy, xx, yy, xy] = [0, 0, 0, 0, 0, 0];
  const [ox, oy] = [path[0]!.x, path[0]!.y];
  let last = path[path.length - 1]!;
  for (const next of path) {
    const [x0, y0] = [(last.x - ox) / UNITS_PER_MM, (last.y - oy) / UNITS_PER_MM];
    const [x1, y1] = [(next.x - ox) / UNITS_PER_MM, (next.y - oy) / UNITS_PER_MM];
    const cross = x0 * y1 - x1 * y0;
    twice += cross;
    sx += (x0 + x1) * cross;
    sy += (y0 + y1) * cross;
    xx += (x0 * x0 + x0 * x1 + x1 * x1) * cross;
    yy += (y0 * y0 + y0 * y1 + y1 * y1) * cross;
    xy += (x0 * y1 + 2 * x0 * y0 + 2 * x1 * y1 + x1 * y0) * cross;
    last = next;
  }
  const area = twice / 2;
  const [x, y] = [sx / (3 * twice), sy / (3 * twice)];
  return {
    x: x + ox / UNITS_PER_MM,
    y: y + oy / UNITS_PER_MM,
    xx: xx / 12 / area - x * x,
    yy: yy / 12 / area - y * y,
    xy: xy / 24 / area - x * y,
  };
}

const middleOfAll = (paths: Paths64): Point => {
  let [sum, x, y] = [0, 0, 0];
  for (const path of paths) {
    const area = path.reduce((twice, { x: px, y: py }, at) => {
      const next = path[(at + 1) % path.length]!;
      return twice + px * next.y - next.x * py;
    }, 0);
    const middle = moments(path);
    sum += area;
    x += area * middle.x;
    y += area * middle.y;
  }
  return [x / sum, y / sum];
};

/** A direction, of length 1, drawn to the level, the upright or the diagonal that it all but is. */
function squared([x, y]: Point): Point {
  const angle = Math.atan2(y, x);
  const eighth = Math.PI / 4;
  const near = Math.round(angle / eighth) * eighth;
  const taken = Math.abs(angle - near) < 1e-3 ? near : angle;
  return [Math.cos(taken), Math.sin(taken)];
}

/** Which way two shapes part: along the place, or, where that is round, square to the line between what either has near it. */
function wayOf(place: Paths64[number], one: Paths64, other: Paths64, width: number, clipper: Clipper): Point {
  const { x, y, xx, yy, xy } = moments(place);
  const spread = Math.sqrt((xx - yy) ** 2 / 4 + xy * xy);
  const [most, least] = [(xx + yy) / 2 + spread, (xx + yy) / 2 - spread];
  if (Math.sqrt(most / least) > ROUND)
    return squared([Math.cos(Math.atan2(2 * xy, xx - yy) / 2), Math.sin(Math.atan2(2 * xy, xx - yy) / 2)]);
  const disc = Array.from({ length: 32 }, (_, n) => {
    const angle = (Math.PI * n) / 16;
    const at = (middle: number, off: number) => Math.round((middle + 2 * width * off) * UNITS_PER_MM);
    return { x: at(x, Math.cos(angle)), y: at(y, Math.sin(angle)) };
  });
  const near = (paths: Paths64) => middleOfAll(clipper.Clipper.intersect(paths, [disc], clipper.FillRule.NonZero));
  const [[ax, ay], [bx, by]] = [near(one), near(other)];
  const long = Math.sqrt((ax - bx) ** 2 + (ay - by) ** 2);
  return squared([(by - ay) / long, (ax - bx) / long]);
}

/**
 * Strips, as wide as a bridge, that hold two shapes apart wherever they touch or come nearer than that: along the line on which they meet, or across
 * their tips. Places too bent for a straight strip get none.
 */
export function contactStrips(clipper: Clipper, one: Paths64, other: Paths64, width: number): Piece[] {
  const { Clipper, FillRule } = clipper;
  const both = Clipper.intersect(grown(clipper, one, width / 2), grown(clipper, other, width / 2), FillRule.NonZero);
  return outers(clipper, both, SLIVER).flatMap((place): Piece[] => {
    if (squareMm(Math.abs(Clipper.area(place))) < SLIVER) return [];
    const { x, y } = moments(place);
    const [ux, uy] = wayOf(place, one, other, width, clipper);
    let [from, to, deep] = [0, 0, 0];
    for (const point of place) {
      const [px, py] = [point.x / UNITS_PER_MM - x, point.y / UNITS_PER_MM - y];
      const t = px * ux + py * uy;
      from = Math.min(from, t);
      to = Math.max(to, t);
      deep = Math.max(deep, Math.abs(py * ux - px * uy));
    }
    if (2 * deep > BENT * width) return [];
    const at = (t: number, off: number): Point => [x + t * ux - off * uy, y + t * uy + off * ux];
    const h = width / 2;
    const strip = (past: number): Piece => {
      const start = at(from - past, -h);
      const ends = [at(to + past, -h), at(to + past, h), at(from - past, h), start];
      return [{ start, sides: ends.map((end) => ({ kind: 'line', to: end }) as const) }];
    };
    const keepsApart = (piece: Piece): boolean => {
      const [a, b] = [one, other].map((shape) =>
        grown(clipper, Clipper.difference(shape, piecePaths(piece), FillRule.NonZero), width / 2 - SLACK / 2),
      ) as [Paths64, Paths64];
      const near = Clipper.intersect(Clipper.intersect(a, b, FillRule.NonZero), [place], FillRule.NonZero);
      return outers(clipper, near, SLIVER / 100).length === 0;
    };
    const strips = FURTHER.map((widths) => strip(PAST + widths * width));
    return [strips.find(keepsApart) ?? strips[0]!];
  });
}
