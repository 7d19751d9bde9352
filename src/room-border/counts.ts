import type { Chain, RoomProblem } from './problem.ts';

/**
 * One choice of counts along a direction at a given width and pitch. The lines lie at `offsets` from the first of them, so that all the strips follow from
 * the first; `low` to `high` is what that first strip may be, mm.
 */
export interface Counted {
  counts: number[];
  /** Strip of each line less that of the first line, or the sum of the two, as `signs` say: strip n = base n + sign n × first strip. */
  bases: number[];
  signs: (1 | -1)[];
  low: number;
  high: number;
}

const HAIR = 1e-6;

/** Every choice of whole counts with which all strips of a direction stay within their range, at this width and pitch. */
export function countings({ lines, links }: Chain, problem: RoomProblem, width: number, pitch: number): Counted[] {
  const { strip, even } = problem;
  const by = even ? 2 : 1;
  const found: Counted[] = [];
  const counts: number[] = [];
  const first = lines[0]!;
  const bases: number[] = [0];
  const signs = lines.map(({ sign }) => (sign * first.sign) as 1 | -1);
  // Where the first line lies is first.at + first.sign × its strip; the others lie `offset` on from there.
  const next = (at: number, offset: number, low: number, high: number): void => {
    const { sign, insides } = links[at]!;
    if (at === links.length - 1) {
      const count = (-sign * offset - insides * width) / pitch;
      const whole = Math.round(count / by) * by;
      if (whole < 0 || Math.abs(count - whole) * pitch > HAIR) return;
      found.push({ counts: [...counts, whole], bases: [...bases], signs, low, high });
      return;
    }
    const line = lines[at + 1]!;
    // strip = line.sign × (first.at + first.sign × s + offset' − line.at), with offset' = offset + sign × (count × pitch + insides × width).
    const base = (count: number) =>
      line.sign * (first.at + offset + sign * (count * pitch + insides * width) - line.at);
    const turn = signs[at + 1]!;
    const reach = (s: number, wanted: number) => (wanted - turn * s - base(0)) / (line.sign * sign * pitch);
    const ends = [reach(low, strip.from), reach(low, strip.to), reach(high, strip.from), reach(high, strip.to)];
    const least = Math.max(0, Math.ceil(Math.min(...ends) / by - HAIR) * by);
    const most = Math.floor(Math.max(...ends) / by + HAIR) * by;
    for (let count = least; count <= most; count += by) {
      const own = base(count);
      const limits = [turn * (strip.from - own), turn * (strip.to - own)];
      const [from, to] = [Math.max(low, Math.min(...limits)), Math.min(high, Math.max(...limits))];
      if (from > to + HAIR) continue;
      counts.push(count);
      bases.push(own);
      next(at + 1, offset + sign * (count * pitch + insides * width), from, to);
      counts.pop();
      bases.pop();
    }
  };
  next(0, 0, strip.from, strip.to);
  return found;
}

/** The narrowest and the widest strip of a direction when its first strip is so wide, mm. */
export function stripsAt({ bases, signs }: Counted, first: number): { least: number; most: number } {
  let [least, most] = [Infinity, -Infinity];
  for (let n = 0; n < bases.length; n++) {
    const strip = bases[n]! + signs[n]! * first;
    if (strip < least) least = strip;
    if (strip > most) most = strip;
  }
  return { least, most };
}

/** What is known of the strips of a direction whatever its first strip is, mm. */
export interface Bounds {
  /** They differ by no less than this: those that grow together keep their distance. */
  uneven: number;
  /**
   * The narrowest is no wider than `low`, the widest no narrower than `high`. Of two strips that grow against each other the sum stays, so one is at least half
   * of it and the other at most. Without such strips, endless and minus endless.
   */
  low: number;
  high: number;
}

export function boundsOf({ bases, signs }: Counted): Bounds {
  let [upLeast, upMost, downLeast, downMost] = [Infinity, -Infinity, Infinity, -Infinity];
  for (let n = 0; n < bases.length; n++) {
    const base = bases[n]!;
    if (signs[n] === 1) {
      if (base < upLeast) upLeast = base;
      if (base > upMost) upMost = base;
    } else {
      if (base < downLeast) downLeast = base;
      if (base > downMost) downMost = base;
    }
  }
  return {
    uneven: Math.max(0, upMost - upLeast, downMost - downLeast),
    low: (upLeast + downLeast) / 2,
    high: (upMost + downMost) / 2,
  };
}
