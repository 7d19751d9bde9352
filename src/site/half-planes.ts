import type { Box, Point } from '../geometry/path.ts';

/** What lies on this side of a line: nx·x + ny·y <= reach. The normal has length 1. */
export interface HalfPlane {
  nx: number;
  ny: number;
  reach: number;
}

const sides = (polygon: Point[]): [Point, Point][] =>
  polygon.map((point, at) => [point, polygon[(at + 1) % polygon.length]!]);

function beside([[x0, y0], [x1, y1]]: [Point, Point]): HalfPlane {
  const long = Math.hypot(x1 - x0, y1 - y0);
  const [nx, ny] = [(y1 - y0) / long, (x0 - x1) / long];
  return { nx, ny, reach: nx * x0 + ny * y0 };
}

/** The half-planes whose common part is a convex polygon, clockwise on the page. */
export const halfPlanesOf = (polygon: Point[]): HalfPlane[] => sides(polygon).map(beside);

/** A side that leans by less than a hundredth of a millimetre in ten metres stands upright, or lies level. */
const STRAIGHT = 1e-6;

/** The same, where a side is as good as upright or level made so, on the safe side of its two ends. */
function settled(plane: HalfPlane, ends: [Point, Point]): HalfPlane {
  const { nx, ny } = plane;
  const onto = (axis: 0 | 1, sign: number): HalfPlane => ({
    nx: axis === 0 ? sign : 0,
    ny: axis === 1 ? sign : 0,
    reach: Math.min(...ends.map((end) => sign * end[axis])),
  });
  if (Math.abs(ny) < STRAIGHT) return onto(0, Math.sign(nx));
  return Math.abs(nx) < STRAIGHT ? onto(1, Math.sign(ny)) : plane;
}

/** The half-planes that a box inside a convex polygon keeps to. */
export const withinOf = (polygon: Point[]): HalfPlane[] => sides(polygon).map((ends) => settled(beside(ends), ends));

/** What lies beyond each side of a convex polygon, and on either side of all of it. */
export function clearOf(polygon: Point[]): HalfPlane[] {
  const xs = polygon.map(([x]) => x);
  const ys = polygon.map(([, y]) => y);
  const square: HalfPlane[] = [
    { nx: 1, ny: 0, reach: Math.min(...xs) },
    { nx: -1, ny: 0, reach: -Math.max(...xs) },
    { nx: 0, ny: 1, reach: Math.min(...ys) },
    { nx: 0, ny: -1, reach: -Math.max(...ys) },
  ];
  const leaning = sides(polygon)
    .map(([a, b]) => settled(beside([b, a]), [b, a]))
    .filter(({ nx, ny }) => nx !== 0 && ny !== 0);
  return [...square, ...leaning];
}

/** a + b·left + c·right, of a box's left and right edge. */
interface Reach {
  a: number;
  b: number;
  c: number;
}

/** A line in the plane of left and right edges: through (left, right), in a direction. */
interface Line {
  left: number;
  right: number;
  dl: number;
  dr: number;
}

/** How far up and down a box may reach for its left and right edges, and how far those may go. */
function reaches(planes: HalfPlane[]) {
  const up: Reach[] = [];
  const down: Reach[] = [];
  let [least, most] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (const { nx, ny, reach } of planes) {
    if (ny === 0) {
      if (nx > 0) most = Math.min(most, reach / nx);
      else least = Math.max(least, reach / nx);
      continue;
    }
    const slope = -nx / ny;
    const bound = { a: reach / ny, b: nx > 0 ? 0 : slope, c: nx > 0 ? slope : 0 };
    (ny > 0 ? down : up).push(bound);
  }
  return { up, down, least, most };
}

const heightAt = ({ a, b, c }: Reach, left: number, right: number): number => a + b * left + c * right;

/** The line on which two reaches are equal. */
function equalOn(one: Reach, other: Reach): Line | undefined {
  const [a, b, c] = [one.a - other.a, one.b - other.b, one.c - other.c];
  const size = b * b + c * c;
  return size < 1e-24 ? undefined : { left: (-a * b) / size, right: (-a * c) / size, dl: -c, dr: b };
}

function crossing(one: Line, other: Line): [number, number] | undefined {
  const turn = one.dl * other.dr - one.dr * other.dl;
  if (Math.abs(turn) < 1e-14 * Math.hypot(one.dl, one.dr) * Math.hypot(other.dl, other.dr)) return undefined;
  const t = ((other.left - one.left) * other.dr - (other.right - one.right) * other.dl) / turn;
  return [one.left + t * one.dl, one.right + t * one.dr];
}

/** Where on the line the area is stationary while these two reaches govern. */
function stationary({ left, right, dl, dr }: Line, up: Reach, down: Reach): [number, number] | undefined {
  const [wide, widens] = [right - left, dr - dl];
  const high = heightAt(down, left, right) - heightAt(up, left, right);
  const heightens = (down.b - up.b) * dl + (down.c - up.c) * dr;
  if (widens === 0 || heightens === 0) return undefined;
  const t = -(wide * heightens + high * widens) / (2 * widens * heightens);
  return [left + t * dl, right + t * dr];
}

/** Areas this near to each other, as a share, are the same. */
const SAME = 1e-11;

/**
 * The upright box of the largest area that lies in every half-plane, exactly. Undefined where none has area.
 *
 * For given left and right edges, each half-plane bounds the box above or below at one of its corners, so its height is the least of some
 * linear functions of the two edges less the greatest of others, and its area is a quadratic wherever the same two govern. The largest is
 * therefore stationary on one of the lines where the governing pair changes, or where two of them cross; all those places are tried.
 * Among equals the mean is taken, which is as large, as the set of boxes is convex.
 * @param middle the box is centred on this upright line
 */
export function largestBox(planes: HalfPlane[], middle?: number): Box | undefined {
  const { up, down, least, most } = reaches(planes);
  const lines: Line[] = [];
  for (const set of [up, down])
    set.forEach((one, at) => {
      for (const other of set.slice(at + 1)) {
        const line = equalOn(one, other);
        if (line) lines.push(line);
      }
    });
  if (Number.isFinite(least)) lines.push({ left: least, right: 0, dl: 0, dr: 1 });
  if (Number.isFinite(most)) lines.push({ left: 0, right: most, dl: 1, dr: 0 });

  let best = 0;
  let found: Box[] = [];
  const consider = (place: [number, number] | undefined): void => {
    if (!place) return;
    const left = Math.max(place[0], least);
    const right = Math.min(place[1], most);
    if (!(right > left)) return;
    if (middle !== undefined && Math.abs(left + right - 2 * middle) > 1e-6) return;
    let [top, bottom] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
    for (const bound of up) top = Math.max(top, heightAt(bound, left, right));
    for (const bound of down) bottom = Math.min(bottom, heightAt(bound, left, right));
    const area = (right - left) * (bottom - top);
    if (!(bottom > top) || area < best * (1 - SAME)) return;
    if (area > best * (1 + SAME)) found = [];
    best = Math.max(best, area);
    found.push({ left, right, top, bottom });
  };

  const centred = middle === undefined ? undefined : { left: middle, right: middle, dl: -1, dr: 1 };
  for (const line of centred ? [centred] : lines)
    for (const a of up) for (const b of down) consider(stationary(line, a, b));
  if (centred) for (const line of lines) consider(crossing(centred, line));
  else
    lines.forEach((line, at) => {
      for (const other of lines.slice(at + 1)) consider(crossing(line, other));
    });

  if (found.length === 0) return undefined;
  const mean = (edge: keyof Box): number => found.reduce((sum, box) => sum + box[edge], 0) / found.length;
  return { left: mean('left'), right: mean('right'), top: mean('top'), bottom: mean('bottom') };
}
