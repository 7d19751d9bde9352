import { bezier, cornerCount, isStraight, type Outline } from '../read/outline.ts';

/** Side of the squares that outlines are looked up by, mm. */
const SQUARE = 5;

/** How far each outline of one drawing lies from its like in another, at the most, mm; infinite where one has no like. */
export function farthestApart(drawn: readonly Outline[], due: readonly Outline[]): number {
  if (drawn.length !== due.length) return Number.POSITIVE_INFINITY;
  const places = new Map<string, Outline[]>();
  const square = (value: number): number => Math.floor(value / SQUARE);
  const middle = ({ frame }: Outline): [number, number] => [
    square((frame.left + frame.right) / 2),
    square((frame.top + frame.bottom) / 2),
  ];
  for (const outline of due) {
    const key = middle(outline).join();
    places.set(key, [...(places.get(key) ?? []), outline]);
  }
  let worst = 0;
  for (const outline of drawn) {
    const [column, row] = middle(outline);
    let best = Number.POSITIVE_INFINITY;
    let from: [key: string, at: number] | undefined;
    for (let x = column - 1; x <= column + 1; x++)
      for (let y = row - 1; y <= row + 1; y++)
        places.get(`${x},${y}`)?.forEach((other, at) => {
          const off = framesApart(outline, other) >= best ? best : apart(outline, other);
          if (off < best) [best, from] = [off, [`${x},${y}`, at]];
        });
    if (!from) return Number.POSITIVE_INFINITY;
    places.get(from[0])!.splice(from[1], 1);
    worst = Math.max(worst, best);
  }
  return worst;
}

const framesApart = ({ frame: a }: Outline, { frame: b }: Outline): number =>
  Math.max(
    Math.abs(a.left - b.left),
    Math.abs(a.right - b.right),
    Math.abs(a.top - b.top),
    Math.abs(a.bottom - b.bottom),
  );

/** By frames, by corners and middles of curves both ways, and by the area over the length round the frame, which sees how curves bulge. */
function apart(a: Outline, b: Outline): number {
  const { left, right, top, bottom } = a.frame;
  const round = 2 * (right - left + bottom - top);
  const bulge = round > 0 ? Math.abs(Math.abs(a.area) - Math.abs(b.area)) / round : 0;
  const [here, there] = [pointsOf(a), pointsOf(b)];
  return Math.max(framesApart(a, b), bulge, pointsApart(here, there), pointsApart(there, here));
}

/** x and y of each corner, and of the middle of each side that is a curve. */
function pointsOf(outline: Outline): number[] {
  const { corners, handles } = outline;
  const points = [...corners];
  const n = cornerCount(outline);
  for (let i = 0; i < n; i++) {
    if (isStraight(outline, i)) continue;
    const j = (i + 1) % n;
    for (const way of [0, 1])
      points.push(
        bezier(corners[2 * i + way]!, handles[4 * i + way]!, handles[4 * i + 2 + way]!, corners[2 * j + way]!, 0.5),
      );
  }
  return points;
}

function pointsApart(a: number[], b: number[]): number {
  let worst = 0;
  for (let i = 0; i < a.length; i += 2) {
    let best = Number.POSITIVE_INFINITY;
    for (let j = 0; j < b.length; j += 2) best = Math.min(best, Math.hypot(a[i]! - b[j]!, a[i + 1]! - b[j + 1]!));
    worst = Math.max(worst, best);
  }
  return worst;
}
