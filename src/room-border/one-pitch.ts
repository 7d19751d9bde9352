import { onTape } from '../fit/steps.ts';
import { stretchCost, stripCost, unevenCost, widthCost } from './cost.ts';
import { type Bounds, boundsOf, type Counted, countings, stripsAt } from './counts.ts';
import type { Chain, RoomProblem } from './problem.ts';
import { type RoomCandidate, RoomShortlist } from './shortlist.ts';

const HAIR = 1e-9;

/**
 * By how many widths more the corners on the way there take than those on the way back, for each direction. Where it is not 0, whole repeats of one
 * pitch have to come to just so many widths: a room with an alcove decides the pitch.
 */
export const surplusOf = ({ links }: Chain): number =>
  links.reduce((sum, { sign, insides }) => sum + sign * insides, 0);

const within = (pitch: number, width: number, { ratio, stretch }: RoomProblem): boolean => {
  const pulled = pitch / (width * (ratio as number));
  return pulled >= stretch.from * (1 - HAIR) && pulled <= stretch.to * (1 + HAIR);
};

/** Every pitch with which whole repeats come to so many widths. */
function partsOf(widths: number, width: number, problem: RoomProblem): number[] {
  const { ratio, stretch, even } = problem;
  const by = even ? 2 : 1;
  const natural = width * (ratio as number);
  const found: number[] = [];
  for (let count = by; count <= (widths * width) / (natural * stretch.from) + by; count += by) {
    const pitch = (widths * width) / count;
    if (within(pitch, width, problem)) found.push(pitch);
  }
  return found;
}

/** The longest run: its wall, and how long it is when its strips add up to nothing. */
function longest({ chains }: RoomProblem, width: number) {
  const runs = chains.flatMap(({ lines, links }) =>
    links.map((link, at) => {
      const [from, to] = [lines[at]!, lines[(at + 1) % lines.length]!];
      const bare = link.sign * (to.at - from.at) - link.insides * width;
      return { bare, from: -link.sign * from.sign, to: link.sign * to.sign };
    }),
  );
  return runs.reduce((best, run) => (run.bare > best.bare + HAIR ? run : best));
}

/**
 * The pitches tried at a width: true to shape, and every one with which the longest run comes to whole repeats when the strips at its two ends are
 * read off the tape. Where corners decide the pitch, those that they allow.
 */
function findPitches(width: number, problem: RoomProblem, sums: SumsOf): number[] {
  const { chains, ratio, even, stretch } = problem;
  const surplus = chains.map((chain) => Math.abs(surplusOf(chain))).filter((widths) => widths > 0);
  const natural = width * (ratio as number);
  if (surplus.length > 0) {
    const [first, ...rest] = surplus.map((widths) => partsOf(widths, width, problem));
    return first!.filter((pitch) => rest.every((list) => list.some((other) => Math.abs(other - pitch) < HAIR * pitch)));
  }
  const run = longest(problem, width);
  const by = even ? 2 : 1;
  const found = new Map<number, number>();
  const add = (pitch: number): void => {
    if (within(pitch, width, problem)) found.set(Math.round(pitch * 1e6), pitch);
  };
  add(natural);
  for (const sum of sums(run.from, run.to)) {
    const length = run.bare + sum;
    const most = Math.floor(length / (natural * stretch.from) + HAIR);
    for (let count = by; count <= most; count += by) add(length / count);
  }
  return [...found.values()];
}

/** What the strips at both ends of a run add to it, each on the tape, by the directions in which they do. */
type SumsOf = (from: number, to: number) => number[];

function sumsFor({ strip, tape }: RoomProblem): SumsOf {
  const strips = onTape(strip, tape.step);
  const known = new Map<string, number[]>();
  return (from, to) => {
    const found = known.get(`${from} ${to}`);
    if (found) return found;
    const sums = new Map<number, number>();
    for (const a of strips) for (const b of strips) sums.set(Math.round((from * a + to * b) * 1e6), from * a + to * b);
    const all = [...sums.values()];
    known.set(`${from} ${to}`, all);
    return all;
  };
}

/** The search and the count go through the same pitches. */
const kept = new WeakMap<RoomProblem, (width: number) => number[]>();

/** `findPitches` of a problem, once for every width. */
function pitchesOf(problem: RoomProblem): (width: number) => number[] {
  const known = kept.get(problem);
  if (known) return known;
  const sums = sumsFor(problem);
  const byWidth = new Map<number, number[]>();
  const pitches = (width: number): number[] => {
    const found = byWidth.get(width) ?? findPitches(width, problem, sums);
    byWidth.set(width, found);
    return found;
  };
  kept.set(problem, pitches);
  return pitches;
}

/** How many combinations there are: every width, every pitch tried with it, every first strip of both directions. */
export function countOnePitch(problem: RoomProblem): number {
  const strips = onTape(problem.strip, problem.tape.step).length;
  const pitches = pitchesOf(problem);
  return onTape(problem.width, problem.tape.step).reduce(
    (sum, width) => sum + pitches(width).length * strips * strips,
    0,
  );
}

/** The counts of both directions, by wall. */
function countsOf({ chains }: RoomProblem, ...chosen: [Counted, Counted]): number[] {
  const counts: number[] = [];
  chosen.forEach((counted, direction) => {
    chains[direction]!.links.forEach(({ wall }, n) => {
      counts[wall] = counted.counts[n]!;
    });
  });
  return counts;
}

/** The strips of both directions, by wall. */
function stripsOf({ chains }: RoomProblem, chosen: readonly { counted: Counted; first: number }[]): number[] {
  const strips: number[] = [];
  chosen.forEach(({ counted, first }, direction) => {
    chains[direction]!.lines.forEach(({ wall }, n) => {
      strips[wall] = counted.bases[n]! + counted.signs[n]! * first;
    });
  });
  return strips;
}

interface Placing {
  counted: Counted;
  first: number;
  least: number;
  most: number;
}

/** Every first strip that the tape shows and that is allowed, with what the strips of the direction then reach; those that differ by more than `uneven` left out. */
function placings(counted: Counted, firsts: readonly number[], uneven: number): Placing[] {
  const found: Placing[] = [];
  for (const first of firsts) {
    if (first < counted.low - 1e-6 || first > counted.high + 1e-6) continue;
    const { least, most } = stripsAt(counted, first);
    if (most - least <= uneven) found.push({ counted, first, least, most });
  }
  return found;
}

/** The cheapest place of the border for one choice of counts both ways, if any costs no more than `limit`. */
function bestPlace(
  { tape, strip }: RoomProblem,
  firsts: readonly number[],
  [x, y]: [Counted, Counted],
  cost: number,
  limit: number,
) {
  const uneven = (limit - cost + 2 * HAIR) / unevenCost(1, tape);
  let best: { cost: number; chosen: [Placing, Placing] } | undefined;
  const across = placings(x, firsts, uneven);
  const along = across.length === 0 ? [] : placings(y, firsts, uneven);
  for (const a of across) {
    const least = cost + unevenCost(a.most - a.least, tape);
    if (least > limit + 2 * HAIR || (best && least >= best.cost - HAIR)) continue;
    for (const b of along) {
      const low = Math.min(a.least, b.least);
      const high = Math.max(a.most, b.most);
      if (high - low > uneven) continue;
      const own = cost + unevenCost(high - low, tape) + stripCost((low + high) / 2, strip, tape);
      if (!best || own < best.cost - HAIR) best = { cost: own, chosen: [a, b] };
    }
  }
  return best;
}

/** Tries are sorted in bands up to so many points: the search ends long before the last of them. */
const BANDS = [0.5, 2, 8, Number.POSITIVE_INFINITY];

/** Every width with every pitch, the cheapest first. */
function* triesOf(problem: RoomProblem) {
  const { tape, width: widths, ratio } = problem;
  const pitches = pitchesOf(problem);
  const priced = onTape(widths, tape.step).map((width) => ({ width, own: widthCost(width, widths, tape) }));
  let above = Number.NEGATIVE_INFINITY;
  for (const most of BANDS) {
    const band: { width: number; pitch: number; cost: number }[] = [];
    for (const { width, own } of priced) {
      if (own > most) continue;
      const natural = width * (ratio as number);
      for (const pitch of pitches(width)) {
        const cost = own + stretchCost(pitch / natural);
        if (cost > above && cost <= most) band.push({ width, pitch, cost });
      }
    }
    yield* band.sort((a, b) => a.cost - b.cost || a.width - b.width || a.pitch - b.pitch);
    above = most;
  }
}

/** Counts of a direction, and what is known of their strips before they are placed. */
type Bounded = Bounds & { counted: Counted };

function bounded(counted: Counted): Bounded {
  const { uneven, low, high } = boundsOf(counted);
  return { counted, uneven, low, high };
}

/**
 * The best layouts with one pitch on every wall: every width on the tape with every pitch of `findPitches`, every choice of counts that keeps the strips
 * in their range, and every place of the border to and fro and up and down on the tape. What is passed over costs more by its stretch, its width and
 * the least its strips can differ than everything that is kept.
 */
export function searchOnePitch(problem: RoomProblem, most: number): RoomCandidate[] {
  const { tape, strip, chains } = problem;
  const shortlist = new RoomShortlist(most);
  const firsts = onTape(strip, tape.step);
  for (const { width, pitch, cost } of triesOf(problem)) {
    if (cost > shortlist.bound) break;
    const [across, along] = chains.map((chain) => countings(chain, problem, width, pitch).map(bounded)) as [
      Bounded[],
      Bounded[],
    ];
    for (const x of across) {
      if (cost + unevenCost(x.uneven, tape) > shortlist.bound) continue;
      for (const y of along) {
        if (cost + unevenCost(y.uneven, tape) > shortlist.bound) continue;
        const apart = Math.max(x.high, y.high) - Math.min(x.low, y.low) - HAIR;
        if (cost + unevenCost(apart, tape) > shortlist.bound) continue;
        const counts = countsOf(problem, x.counted, y.counted);
        const limit = shortlist.limitOf(counts);
        const best = bestPlace(problem, firsts, [x.counted, y.counted], cost, limit);
        if (best) shortlist.offer({ width, strips: stripsOf(problem, best.chosen), counts, cost: best.cost });
      }
    }
  }
  return shortlist.sorted;
}
