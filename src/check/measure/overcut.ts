import { bezier } from '../read/outline.ts';
import type { Overcut } from '../read/overcut.ts';

/** Points set along every curve; a stretch of a few mm is followed to well below a micrometre. */
const STEPS = 200;

/** The stretch, as points along it. */
function along(corners: Float64Array, handles: Float64Array, sides: number): [number, number][] {
  const n = corners.length / 2;
  const points: [number, number][] = [[corners[0]!, corners[1]!]];
  for (let i = 0; i < sides; i++) {
    const j = (i + 1) % n;
    const [x0, y0, x3, y3] = [corners[2 * i]!, corners[2 * i + 1]!, corners[2 * j]!, corners[2 * j + 1]!];
    const [x1, y1, x2, y2] = [handles[4 * i]!, handles[4 * i + 1]!, handles[4 * i + 2]!, handles[4 * i + 3]!];
    for (let k = 1; k <= STEPS; k++) {
      const t = k / STEPS;
      if (Number.isNaN(x1)) points.push([x0 + (x3 - x0) * t, y0 + (y3 - y0) * t]);
      else points.push([bezier(x0, x1, x2, x3, t), bezier(y0, y1, y2, y3, t)]);
    }
  }
  return points;
}

/** How long the blade runs on past the start, and how far it strays there from the line it cut first, mm. */
export function followed({ ring, corners, handles }: Overcut): { long: number; off: number } {
  const tail = along(corners, handles, handles.length / 4);
  const first = along(ring.corners, ring.handles, ring.corners.length / 2);
  let [long, gone, at, off] = [0, 0, 1, 0];
  tail.forEach(([x, y], k) => {
    if (k > 0) long += Math.hypot(x - tail[k - 1]![0], y - tail[k - 1]![1]);
    for (;;) {
      const [[ax, ay], [bx, by]] = [first[at - 1]!, first[at]!];
      const step = Math.hypot(bx - ax, by - ay);
      if (gone + step < long && at < first.length - 1) {
        gone += step;
        at++;
        continue;
      }
      const t = step === 0 ? 0 : Math.min(1, (long - gone) / step);
      off = Math.max(off, Math.hypot(ax + (bx - ax) * t - x, ay + (by - ay) * t - y));
      break;
    }
  });
  return { long, off };
}
