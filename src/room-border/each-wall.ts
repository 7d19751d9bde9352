import { onTape } from '../fit/steps.ts';
import { POINTS, stretchCost, stripCost, widthCost } from './cost.ts';
import { type RoomProblem, runLength } from './problem.ts';
import { type RoomCandidate, RoomShortlist } from './shortlist.ts';

export const countEachWall = ({ width, strip, tape }: RoomProblem): number =>
  onTape(width, tape.step).length * onTape(strip, tape.step).length;

/** The length of every run, by wall, when all strips are alike, mm. */
function lengthsAt({ chains }: RoomProblem, width: number, strip: number): number[] {
  const lengths: number[] = [];
  for (const { lines, links } of chains) {
    const places = lines.map(({ at, sign }) => at + sign * strip);
    links.forEach((link, n) => {
      lengths[link.wall] = runLength(link, places[n]!, places[(n + 1) % places.length]!, width);
    });
  }
  return lengths;
}

/** The count with the least stretch on a run of this length; nothing where none is allowed. */
function countFor(length: number, natural: number, { stretch, even }: RoomProblem): number | undefined {
  if (Math.abs(length) < 1e-6) return 0;
  if (length < 0) return undefined;
  const by = even ? 2 : 1;
  const below = Math.floor(length / natural / by) * by;
  const off = (count: number) => Math.abs(Math.log(length / count / natural));
  return [below, below + by]
    .filter((count) => {
      const pulled = length / count / natural;
      return count > 0 && pulled >= stretch.from - 1e-9 && pulled <= stretch.to + 1e-9;
    })
    .sort((a, b) => off(a) - off(b))[0];
}

/** The best layouts with the same strip along every wall, and the nearest pitch to true on each: every width and every strip on the tape. */
export function searchEachWall(problem: RoomProblem, most: number): RoomCandidate[] {
  const { tape, width: widths, strip: strips, ratio } = problem;
  const shortlist = new RoomShortlist(most);
  for (const width of onTape(widths, tape.step)) {
    for (const strip of onTape(strips, tape.step)) {
      const lengths = lengthsAt(problem, width, strip);
      const base = widthCost(width, widths, tape) + stripCost(strip, strips, tape);
      const same = lengths.map(() => strip);
      if (ratio === 'plain') {
        if (lengths.every((length) => length > -1e-6))
          shortlist.offer({ width, strips: same, counts: lengths.map(() => 0), cost: base });
        continue;
      }
      const counts = lengths.map((length) => countFor(length, width * ratio, problem));
      if (counts.some((count) => count === undefined)) continue;
      const pulls = lengths.flatMap((length, at) => (counts[at]! > 0 ? [length / counts[at]! / (width * ratio)] : []));
      const costs = pulls.map(stretchCost);
      const mean = costs.reduce((sum, one) => sum + one, 0) / Math.max(1, costs.length);
      const apart = pulls.length > 0 ? Math.log(Math.max(...pulls) / Math.min(...pulls)) : 0;
      const cost = base + mean / 2 + Math.max(0, ...costs) / 2 + POINTS.unlike * apart;
      shortlist.offer({ width, strips: same, counts: counts as number[], cost });
    }
  }
  return shortlist.sorted;
}
