import type { FloorAxis, FloorProblem } from '../../src/fit/floor/problem.ts';
import type { Tape } from '../../src/fit/tape.ts';

const near = (a: number, b: number): boolean => Math.abs(a - b) < 1e-6;

/** What is over the last whole line before a wall, at a place so far from the centre line: counted by laying one repeat after another. */
function over(away: number, first: number, pitch: number): { lines: number; left: number } {
  let line = first;
  let lines = 0;
  while (line + pitch < away - 1e-6) {
    line += pitch;
    lines += 1;
  }
  return { lines, left: away - line };
}

/** Points for how a length reads: an inch, a half, a quarter, an eighth, a sixteenth, or finer. */
function reading(mm: number): number {
  const at = [1, 2, 4, 8, 16].findIndex((part) => near((mm / 25.4) * part, Math.round((mm / 25.4) * part)));
  return (0.1 * (at < 0 ? 5 : at)) / 5;
}

interface Laid {
  halves: number;
  cost: number;
}

/** Repeats from the middle out, the centre line on a joint (even count) or through the middle of a repeat (odd count). */
function lay({ walls, pitch: { wish } }: FloorAxis, pitch: number, { step }: Tape): { laid: Laid[]; tried: number } {
  const laid: Laid[] = [];
  let tried = 0;
  for (const odd of [0, 1]) {
    tried += 1;
    let count = odd === 0 ? 2 : 1;
    while ((count / 2) * pitch < Math.max(walls[0].most, walls[1].most) - 1e-6) count += 2;
    const first = odd === 0 ? 0 : pitch / 2;
    let share = 1;
    let fits = true;
    for (const { ends } of walls) {
      const [a, b] = ends.map((end) => over(end, first, pitch)) as [ReturnType<typeof over>, ReturnType<typeof over>];
      const whole = near(a.left, pitch) && near(b.left, pitch);
      if (Math.min(...ends) <= first || a.lines !== b.lines || (!whole && Math.min(a.left, b.left) < pitch / 2 - 1e-6))
        fits = false;
      share = Math.min(share, Math.min(a.left, b.left) / pitch);
    }
    if (!fits) continue;
    const onTape = (mm: number) => near(mm / step, Math.round(mm / step));
    const cost =
      (wish === undefined ? 0 : 20 * Math.abs(Math.log(pitch / wish))) +
      (1 - share) +
      reading(pitch) +
      (onTape(pitch) && onTape(first) ? 0 : 0.3);
    laid.push({ halves: 2 * count, cost });
  }
  return { laid, tried };
}

const steps = ({ from, to }: { from: number; to: number }, step: number): number[] => {
  const found: number[] = [];
  for (let n = 0; n * step <= to + 1e-6; n++) if (n * step >= from - 1e-6) found.push(n * step);
  return found;
};

/** Every pitch across with every pitch along, one after the other; the cheapest of each number of repeats. */
export function plainFloors({ across, along, stretch, tape }: FloorProblem, most: number) {
  const best = new Map<string, [number, number, number, number, number]>();
  let gone = 0;
  for (const p of steps(across.pitch, tape.step)) {
    const fixed = stretch.from === stretch.to;
    for (const q of fixed ? [p * stretch.from] : steps(along.pitch, tape.step)) {
      const [x, y] = [lay(across, p, tape), lay(along, q, tape)];
      gone += x.tried * y.tried;
      if (q / p < stretch.from - 1e-9 || q / p > stretch.to + 1e-9) continue;
      for (const one of x.laid)
        for (const other of y.laid) {
          const cost = Math.round((one.cost + other.cost + 100 * Math.abs(Math.log(q / p))) * 1e9) / 1e9;
          const kind = `${one.halves} ${other.halves}`;
          const held = best.get(kind);
          if (!held || cost < held[4]) best.set(kind, [p, one.halves, q, other.halves, cost]);
        }
    }
  }
  const list = [...best.values()].sort(
    (a, b) => a[4] - b[4] || a[0] - b[0] || a[2] - b[2] || a[1] - b[1] || a[3] - b[3],
  );
  return { list: list.slice(0, most), gone };
}
