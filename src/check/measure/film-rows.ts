/** A straight side of an opening, the end with the lesser y first, mm. */
interface Side {
  x0: number;
  y0: number;
  x1: number;
  y1: number;
}

type Stretch = [from: number, to: number];

function sidesOf(polygons: readonly (readonly number[])[]): Side[] {
  const sides: Side[] = [];
  for (const points of polygons) {
    for (let i = 0, j = points.length - 2; i < points.length; j = i, i += 2) {
      const [ax, ay, bx, by] = [points[j]!, points[j + 1]!, points[i]!, points[i + 1]!];
      sides.push(ay <= by ? { x0: ax, y0: ay, x1: bx, y1: by } : { x0: bx, y0: by, x1: ax, y1: ay });
    }
  }
  return sides.sort((a, b) => a.y0 - b.y0);
}

const across = ({ x0, y0, x1, y1 }: Side, y: number): number => x0 + ((y - y0) / (y1 - y0)) * (x1 - x0);

/** What of the line at height `y` lies within `reach` of a side: one stretch, since the place within reach of a side is convex. */
function within(side: Side, reach: number, y: number): Stretch | undefined {
  const { x0, y0, x1, y1 } = side;
  let from = Infinity;
  let to = -Infinity;
  const take = (x: number, half: number) => {
    if (x - half < from) from = x - half;
    if (x + half > to) to = x + half;
  };
  if (Math.abs(y - y0) <= reach) take(x0, Math.sqrt(reach * reach - (y - y0) ** 2));
  if (Math.abs(y - y1) <= reach) take(x1, Math.sqrt(reach * reach - (y - y1) ** 2));
  const long = Math.hypot(x1 - x0, y1 - y0);
  if (long > 0 && y1 > y0) {
    const [nx, ny] = [(reach * (y1 - y0)) / long, (reach * (x0 - x1)) / long];
    if (y >= y0 + ny && y <= y1 + ny) take(across(side, y - ny) + nx, 0);
    if (y >= y0 - ny && y <= y1 - ny) take(across(side, y + ny) - nx, 0);
  }
  return to >= from ? [from, to] : undefined;
}

/**
 * The rows of a picture of the film, exact along each row: for every row, from the top down, the stretches of film that the openings leave, in order.
 * @param polygons openings as x, y, x, y … (even-odd), mm
 * @param reach what is pared off the film all round each opening, mm
 * @param step from row to row, mm
 */
export function* filmRows(
  polygons: readonly (readonly number[])[],
  { left, top, right, bottom }: { left: number; top: number; right: number; bottom: number },
  reach: number,
  step: number,
): Generator<Stretch[]> {
  const sides = sidesOf(polygons);
  const near: Side[] = [];
  let next = 0;
  for (let y = top + step / 2; y < bottom; y += step) {
    while (next < sides.length && sides[next]!.y0 - reach <= y) near.push(sides[next++]!);
    const crossings: number[] = [];
    const cut: Stretch[] = [];
    for (let at = near.length - 1; at >= 0; at--) {
      const side = near[at]!;
      if (side.y1 + reach < y) {
        near[at] = near[near.length - 1]!;
        near.pop();
        continue;
      }
      if (side.y0 <= y && y < side.y1) crossings.push(across(side, y));
      if (reach > 0) {
        const stretch = within(side, reach, y);
        if (stretch) cut.push(stretch);
      }
    }
    crossings.sort((a, b) => a - b);
    for (let i = 0; i + 1 < crossings.length; i += 2) cut.push([crossings[i]!, crossings[i + 1]!]);
    cut.sort((a, b) => a[0] - b[0]);
    const film: Stretch[] = [];
    let from = left;
    for (const stretch of cut) {
      if (stretch[0] > from) film.push([from, stretch[0]]);
      if (stretch[1] > from) from = stretch[1];
    }
    if (right > from) film.push([from, right]);
    yield film;
  }
}
