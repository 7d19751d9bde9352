import { type Frame, fieldIn, framesOf, type Run, type Runs, runsIn, type Slack, workIn } from './axis.ts';
import { bestBorder, leastSideCost, type SideRun, sideIn, sideRuns } from './border.ts';
import { type Candidate, compareCandidates, kindOf, price, runKind, widthCost } from './candidate.ts';
import { POINTS, stretchCost } from './cost.ts';
import { bestInner, innerRuns } from './inner.ts';
import { Matching } from './matching.ts';
import type { AxisProblem, FitProblem } from './problem.ts';
import { slackOf, slackRuns } from './slack.ts';
import { onTape } from './steps.ts';
import type { Tape } from './tape.ts';

/** Room for rounding in sums of costs: nothing within this of the bound is skipped. */
const ROUNDING = 2e-9;

/** Keeps the cheapest candidate of each kind, and the cost that a newcomer must not exceed to be listed. */
class Shortlist {
  private readonly kinds = new Map<number, Candidate>();
  bound = Number.POSITIVE_INFINITY;

  constructor(
    private readonly most: number,
    private readonly tape: Tape,
  ) {}

  offer(candidate: Candidate): void {
    const kind = kindOf(candidate, this.tape);
    const held = this.kinds.get(kind);
    if (held && compareCandidates(held, candidate) <= 0) return;
    this.kinds.set(kind, candidate);
    if (this.kinds.size >= this.most) {
      const costs = [...this.kinds.values()].map((one) => one.cost).sort((a, b) => a - b);
      this.bound = costs[this.most - 1]! + ROUNDING;
    }
  }

  /** Whether one of this kind and this cost, or nearly, would take the place of the one held. */
  wants(kind: number, cost: number): boolean {
    const held = this.kinds.get(kind);
    return held === undefined || cost <= held.cost + ROUNDING;
  }

  /** What the dearest of some kinds costs as held; endless where one is not held yet. */
  dearest(kinds: readonly number[]): number {
    let most = 0;
    for (const kind of kinds) most = Math.max(most, this.kinds.get(kind)?.cost ?? Number.POSITIVE_INFINITY);
    return most;
  }

  best(): Candidate[] {
    return [...this.kinds.values()].sort(compareCandidates).slice(0, this.most);
  }
}

/** A frame with the runs of its field and the border counts of its side, and the least that they cost together. */
interface Framed {
  frame: Frame;
  runs: Runs;
  sides(): SideRun[];
  /** The border counts of its side of a second border. */
  inner(): SideRun[];
  least: number;
}

/** Runs by the size of the field, each made once. */
function runsBySize(axis: AxisProblem, { tape }: FitProblem) {
  const made = { any: new Map<number, Runs>(), exact: new Map<number, Runs>() };
  return (size: number, exactOnly: boolean): Runs => {
    const known = exactOnly ? made.exact : made.any;
    let runs = known.get(size);
    if (!runs) {
      runs = runsIn(axis, size, tape, exactOnly);
      known.set(size, runs);
    }
    return runs;
  };
}

function firstAtLeast(runs: Run[], pitch: number): number {
  let [low, high] = [0, runs.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (runs[middle]!.pitch < pitch) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Runs of a frame that are few enough for each kind of layout that it can give to be known beforehand. */
const FEW = 3;

/** Frames that give the same few kinds of layout together, each group in the order given; all of them in one group where any gives many. */
function byKinds(frames: Framed[]): Framed[][] {
  if (frames.some(({ runs }) => runs.byPitch.length > FEW)) return [frames];
  const groups = new Map<string, Framed[]>();
  for (const frame of frames) {
    const kinds = [...new Set(frame.runs.byPitch.map(runKind))].sort().join();
    const group = groups.get(kinds);
    if (group) group.push(frame);
    else groups.set(kinds, [frame]);
  }
  return [...groups.values()];
}

/** What a layout of two groups of frames must not exceed to be listed: the last place on the list, or the dearest of its own kinds that is held. */
function limitFor({ tape }: FitProblem, shortlist: Shortlist, width: number, x: Framed, y: Framed): () => number {
  if (x.runs.byPitch.length > FEW || y.runs.byPitch.length > FEW) return () => shortlist.bound;
  const kinds = x.runs.byPitch.flatMap((across) =>
    y.runs.byPitch.map((along) => kindOf({ width, across: { run: across }, along: { run: along } }, tape)),
  );
  return () => Math.min(shortlist.bound, shortlist.dearest(kinds) + ROUNDING);
}

/** How many frames of each direction are tried first, to learn what a place on the list costs before all are built. */
const SCOUTS = 12;

/**
 * The cheapest layouts over every border width, size, reserve, gap, pair of counts and way to land that the problem allows.
 * Best first: a branch is skipped only when the costs already fixed, each term being zero or more, exceed the last place on the list.
 */
export function search(problem: FitProblem, most: number): Candidate[] {
  const { tape, edging } = problem;
  const shortlist = new Shortlist(most, tape);
  const slack = slackOf(problem.along, problem.stretch);
  const across = {
    axis: problem.across,
    frames: framesOf(problem.across, tape),
    runs: runsBySize(problem.across, problem),
  };
  const along = {
    axis: problem.along,
    frames: framesOf(problem.along, tape, slack),
    runs: runsBySize(problem.along, problem),
  };

  const framed = ({ axis, frames, runs }: typeof across, width: number, cost: number): Framed[] => {
    const list: Framed[] = [];
    for (const frame of frames) {
      if (cost + frame.cost > shortlist.bound) break;
      const own = runs(fieldIn(axis, frame, width), frame.uneven);
      const direction = axis === problem.across ? 'across' : 'along';
      const side = sideIn(edging, direction, workIn(axis, frame, width), width);
      const least = frame.cost + own.least + leastSideCost(edging, side, width);
      if (least === Number.POSITIVE_INFINITY) continue;
      let sides: SideRun[] | undefined;
      let inner: SideRun[] | undefined;
      list.push({
        frame,
        runs: own,
        sides: () => (sides ??= sideRuns(edging, side, width)),
        inner: () => (inner ??= innerRuns(problem, direction, width, ofWork(axis, frame, width))),
        least,
      });
    }
    return list.sort((a, b) => a.least - b.least);
  };

  const searchWidth = (width: number, cost: number, frames: number): void => {
    const xs = framed({ ...across, frames: across.frames.slice(0, frames) }, width, cost);
    if (slack) {
      joinSlack(problem, slack, shortlist, width, cost, xs, along.frames);
      return;
    }
    const ys = framed({ ...along, frames: along.frames.slice(0, frames) }, width, cost);
    for (const across of byKinds(xs)) {
      for (const along of byKinds(ys)) {
        const limit = limitFor(problem, shortlist, width, across[0]!, along[0]!);
        const least = along[0]!.least;
        let matching: Matching<Framed> | undefined;
        for (const x of across) {
          if (cost + x.least + least > limit()) break;
          let near = along;
          if (limit() < shortlist.bound) {
            // Of frames with few runs, those whose pitches would have to be pulled too far are passed over.
            matching ??= new Matching(along);
            const left = limit() - cost - x.frame.cost - least;
            near = matching.within(x.runs.byCost.map((run) => pitchesFor(problem, run, left - run.cost)));
          }
          for (const y of near) {
            if (cost + x.least + y.least > limit()) break;
            join(problem, shortlist, width, cost, x, y);
          }
        }
      }
    }
  };

  const widths = onTape(problem.border, tape.step)
    .map((width) => ({ width, cost: widthCost(problem, width) }))
    .sort((a, b) => a.cost - b.cost || a.width - b.width);
  for (const { width, cost } of widths.slice(0, SCOUTS)) searchWidth(width, cost, SCOUTS);
  for (const { width, cost } of widths) {
    if (cost > shortlist.bound) break;
    searchWidth(width, cost, Number.POSITIVE_INFINITY);
  }
  return shortlist.best();
}

const ofWork = (axis: AxisProblem, frame: Frame, width: number) => ({
  work: workIn(axis, frame, width),
  reserve: frame.reserve,
});

/** The pitches along that go with one across, when no more than `left` may be paid for the stretch. */
function pitchesFor({ ratio, stretch }: FitProblem, run: Run, left: number): [from: number, to: number] {
  const reach = Math.exp(left / POINTS.stretch);
  return [
    Math.max(stretch.from, 1 / reach) * ratio * run.pitch * (1 - ROUNDING),
    Math.min(stretch.to, reach) * ratio * run.pitch * (1 + ROUNDING),
  ];
}

/** Every pair of runs in one pair of frames. Runs along are taken from the window of pitches that the stretch limits and the bound leave. */
function join(problem: FitProblem, shortlist: Shortlist, width: number, cost: number, x: Framed, y: Framed): void {
  const { ratio } = problem;
  const border = bestBorder(x.sides(), y.sides());
  const inner = bestInner(problem, x.inner(), y.inner());
  if (!inner) return;
  const fixed = cost + x.frame.cost + y.frame.cost + border.cost + inner.cost;
  if (fixed + x.runs.least + y.runs.least > shortlist.bound) return;
  for (const run of x.runs.byCost) {
    const left = shortlist.bound - fixed - run.cost - y.runs.least;
    if (left < 0) break;
    const [from, to] = pitchesFor(problem, run, left);
    const candidates = y.runs.byPitch;
    for (let at = firstAtLeast(candidates, from); at < candidates.length; at++) {
      const other = candidates[at]!;
      if (other.pitch > to) break;
      const stretch = other.pitch / (run.pitch * ratio);
      const sum = fixed + run.cost + other.cost + stretchCost(stretch);
      if (sum > shortlist.bound + ROUNDING) continue;
      const pair = { width, across: { run }, along: { run: other } };
      if (!shortlist.wants(kindOf(pair, problem.tape), sum)) continue;
      const candidate = price(problem, {
        width,
        across: { frame: x.frame, run },
        along: { frame: y.frame, run: other },
        stretch,
        border,
        inner,
      });
      if (candidate.cost <= shortlist.bound) shortlist.offer(candidate);
    }
  }
}

/** With the stretch fixed, the pitch across fixes the pitch along, and the slack takes what is left of the length. */
function joinSlack(
  problem: FitProblem,
  slack: Slack,
  shortlist: Shortlist,
  width: number,
  cost: number,
  xs: Framed[],
  frames: Frame[],
): void {
  const stretch = problem.stretch.from;
  for (const x of xs) {
    if (cost + x.least > shortlist.bound) break;
    for (const run of x.runs.byCost) {
      if (cost + x.frame.cost + run.cost > shortlist.bound) break;
      for (const frame of frames) {
        if (cost + x.frame.cost + run.cost + frame.cost > shortlist.bound) break;
        const pitch = run.pitch * problem.ratio * stretch;
        for (const along of slackRuns(problem, slack, frame, width, pitch)) {
          const work = workIn(problem.along, along.frame, width);
          const sides = sideRuns(problem.edging, sideIn(problem.edging, 'along', work, width), width);
          if (sides.length === 0) continue;
          const border = bestBorder(x.sides(), sides);
          const across = { frame: x.frame, run };
          const { reserve } = along.frame;
          const inner = bestInner(problem, x.inner(), innerRuns(problem, 'along', width, { work, reserve }));
          if (!inner) continue;
          const candidate = price(problem, { width, across, along, stretch, border, inner });
          if (candidate.cost <= shortlist.bound) shortlist.offer(candidate);
        }
      }
    }
  }
}
