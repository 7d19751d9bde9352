import type { Frame, Run, Slack } from './axis.ts';
import { bestBorder } from './border.ts';
import { type Candidate, kindOfRuns, price, runKind, widthCost } from './candidate.ts';
import { type Choice, Direction, type Group, groupsOf, type Placed } from './choices.ts';
import { POINTS, stretchCost } from './cost.ts';
import { bestInner } from './inner.ts';
import type { FitProblem } from './problem.ts';
import { ROUNDING, Shortlist } from './shortlist.ts';
import { slackOf, slackPlaced } from './slack.ts';
import { onTape } from './steps.ts';

/** What is asked for at most, in points, one after the other until the list is full. */
const CEILINGS = [0.5, 1, 2, 4, 8, 24, Number.POSITIVE_INFINITY];

/** How much more is asked for at first than what the last place of a list cost before: a share of it, and some points. */
const MARGIN = { share: 1.02, points: 0.02 };

/** From where a list much like this one was full, if that is known, a little more at first. */
function ceilingsFrom(last: number | undefined): number[] {
  if (last === undefined) return CEILINGS;
  const first = last * MARGIN.share + MARGIN.points;
  return [first, ...CEILINGS.filter((ceiling) => ceiling > first)];
}

/** A width of the border, and what it costs by itself. */
interface Width {
  width: number;
  cost: number;
}

/** Both directions of a problem, which several searches may share. */
export interface Directions {
  across: Direction;
  along: Direction;
}

const directionsOf = (problem: FitProblem): Directions => ({
  across: new Direction(problem, 'across'),
  along: new Direction(problem, 'along', slackOf(problem.along, problem.stretch)),
});

/**
 * The cheapest layouts over every border width, size, reserve, gap, pair of counts and way to land that the problem allows.
 * What is passed over costs more than a limit by those of its costs that are fixed already, each term being zero or more. The limit is the last place
 * on the list; until the list is full a ceiling stands for it, low at first, that is raised until enough lies under it.
 */
export function search(
  problem: FitProblem,
  most: number,
  { across, along }: Directions = directionsOf(problem),
): Candidate[] {
  const slack = slackOf(problem.along, problem.stretch);
  const widths = onTape(problem.border, problem.tape.step)
    .map((width): Width => ({ width, cost: widthCost(problem, width) }))
    .sort((a, b) => a.cost - b.cost || a.width - b.width);
  const shortlist = new Shortlist(most, problem.tape);
  for (const ceiling of ceilingsFrom(across.last ?? along.last)) {
    shortlist.ceiling = ceiling;
    for (const width of widths) {
      const left = () => shortlist.bound - width.cost;
      if (left() < 0) break;
      // What is slack is not known yet, so neither is what a field costs.
      const leastAlong = slack ? 0 : along.leastAt(width.width, shortlist.bound);
      const xs = across.at(width.width, left() - leastAlong, shortlist.bound);
      if (xs.placed.length === 0) continue;
      if (slack) {
        joinSlack(problem, slack, shortlist, width, xs.placed, along.frames);
        continue;
      }
      const ys = along.at(width.width, left() - xs.least, shortlist.bound);
      if (ys.placed.length === 0) continue;
      const kindsAcross = groupsOf(xs, left() - ys.least, problem.ratio);
      const kindsAlong = groupsOf(ys, left() - xs.least, 1);
      joinWidth(problem, shortlist, width, kindsAcross, kindsAlong);
    }
    if (shortlist.isFull) break;
  }
  across.last = along.last = shortlist.isFull ? shortlist.bound : undefined;
  return shortlist.best();
}

/** Every pair of kinds at one width of the border. */
function joinWidth(problem: FitProblem, shortlist: Shortlist, width: Width, xs: Group[], ys: Group[]): void {
  for (const x of xs) {
    x.choices.sort((a, b) => a.cost - b.cost);
    for (const y of ys) {
      if (width.cost + x.least + y.least > shortlist.bound) break;
      joinKinds(problem, shortlist, width, x, y);
    }
  }
}

/** Every pair of choices of two kinds. Those along are taken from the window of pitches that the stretch limits and the limit on the cost leave. */
function joinKinds(problem: FitProblem, shortlist: Shortlist, { width, cost }: Width, xs: Group, ys: Group): void {
  const { ratio, stretch, tape } = problem;
  const kind = kindOfRuns(width, xs.kind, ys.kind, tape);
  const { ladder } = ys;
  const { choices, logs, costs } = ladder;
  const tightest = Math.log(stretch.from) - ROUNDING;
  const widest = Math.log(stretch.to) + ROUNDING;
  let limit = shortlist.limitOf(kind);
  for (const x of xs.choices) {
    const fixed = cost + x.cost;
    const left = limit - fixed - ys.least;
    if (left < 0) break;
    const reach = left / POINTS.stretch + ROUNDING;
    const square = ratio * x.run.pitch;
    const to = x.log + Math.min(widest, reach);
    for (let at = ladder.firstAtLeast(x.log + Math.max(tightest, -reach)); at < logs.length && logs[at]! <= to; at++) {
      if (fixed + costs[at]! + POINTS.stretch * Math.abs(logs[at]! - x.log) > limit) continue;
      const y = choices[at]!;
      const { run } = y;
      if (run.pitch < stretch.from * square * (1 - ROUNDING) || run.pitch > stretch.to * square * (1 + ROUNDING))
        continue;
      offer(problem, shortlist, { width, cost }, x, y, run.pitch / (x.run.pitch * ratio), limit);
      limit = shortlist.limitOf(kind);
    }
  }
}

/** Puts two choices together with the cheapest borders, and on the list where they cost no more than `limit`. */
function offer(
  problem: FitProblem,
  shortlist: Shortlist,
  { width, cost }: Width,
  x: Pick<Choice, 'placed' | 'run'>,
  y: Pick<Choice, 'placed' | 'run'>,
  stretch: number,
  limit: number,
): void {
  const [from, to] = [x.placed, y.placed];
  const bare = cost + from.frame.cost + to.frame.cost + x.run.cost + y.run.cost + stretchCost(stretch);
  const border = bestBorder(from.sides, to.sides);
  if (bare + border.cost > limit) return;
  const inner = bestInner(problem, from.inner, to.inner);
  if (bare + border.cost + inner.cost > limit) return;
  const across = { frame: from.frame, run: x.run };
  const along = { frame: to.frame, run: y.run };
  shortlist.offer(price(problem, { width, across, along, stretch, border, inner }));
}

/** With the stretch fixed, the pitch across fixes the pitch along, and the slack takes what is left of the length. */
function joinSlack(
  problem: FitProblem,
  slack: Slack,
  shortlist: Shortlist,
  width: Width,
  xs: readonly Placed[],
  frames: readonly Frame[],
): void {
  const { ratio, stretch, tape } = problem;
  const pulled = stretch.from;
  for (const [run, across] of byRun(xs, shortlist.bound - width.cost)) {
    const fixed = width.cost + run.cost;
    const left = shortlist.bound - fixed - across[0]!.cost;
    for (const y of slackPlaced(problem, slack, frames, width.width, run.pitch * ratio * pulled, left)) {
      const along = { placed: y, run: y.runs[0]! };
      const kind = kindOfRuns(width.width, runKind(run), runKind(along.run), tape);
      for (const x of across) {
        const limit = shortlist.limitOf(kind);
        if (fixed + x.cost + y.cost + along.run.cost + stretchCost(pulled) > limit) break;
        offer(problem, shortlist, width, { placed: x, run }, along, pulled, limit);
      }
    }
  }
}

/** Frames by their runs, cheapest first: those with a field of the same size have the same ones. */
function byRun(placed: readonly Placed[], most: number): Map<Run, Placed[]> {
  const found = new Map<Run, Placed[]>();
  for (const one of placed.toSorted((a, b) => a.cost - b.cost)) {
    for (const run of one.runs) {
      if (one.cost + run.cost > most) break;
      const frames = found.get(run);
      if (frames) frames.push(one);
      else found.set(run, [one]);
    }
  }
  return found;
}
