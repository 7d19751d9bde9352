import { type Frame, fieldIn, framesOf, type Run, type Runs, runsIn, type Slack, workIn } from './axis.ts';
import { leastSideCost, type SideRun, sideIn, sideRuns } from './border.ts';
import { runKind } from './candidate.ts';
import { innerSideIn, innerSideRuns, leastInnerCost } from './inner.ts';
import type { AxisProblem, FitProblem } from './problem.ts';

type Name = 'across' | 'along';

/** Lengths of a side of the border and of the second border that their repeats have, mm. */
function sidesOf(problem: FitProblem, name: Name, width: number, frame: Frame): [own: number, inner: number] {
  const work = workIn(problem[name], frame, width);
  return [sideIn(problem.edging, name, work, width), innerSideIn(problem, name, width, work, frame.reserve)];
}

/** What a frame costs, and the least that its sides can cost; endless where one of them takes no whole repeats. */
export function placedCost(problem: FitProblem, name: Name, width: number, frame: Frame): number {
  const [own, inner] = sidesOf(problem, name, width, frame);
  return frame.cost + leastSideCost(problem.edging, own, width) + leastInnerCost(problem, inner);
}

/** A frame within a border of known width. */
export class Placed {
  private own: SideRun[] | undefined;
  private second: SideRun[] | undefined;

  constructor(
    private readonly problem: FitProblem,
    private readonly name: Name,
    private readonly width: number,
    readonly frame: Frame,
    /** Of its field, cheapest first. */
    readonly runs: readonly Run[],
    /** As `placedCost` has it. */
    readonly cost: number,
  ) {}

  /** The counts of the border on its sides, cheapest first. */
  get sides(): SideRun[] {
    const { problem, name, width, frame } = this;
    this.own ??= sideRuns(problem.edging, sidesOf(problem, name, width, frame)[0], width);
    return this.own;
  }

  /** The same of a second border; none without one. */
  get inner(): SideRun[] {
    const { problem, name, width, frame } = this;
    this.second ??= innerSideRuns(problem, sidesOf(problem, name, width, frame)[1]);
    return this.second;
  }
}

/** The frames of a direction at one width of the border, and the least that one of them costs with a run. */
export interface Placing {
  placed: Placed[];
  least: number;
}

const cheapest = ({ runs, most }: Runs): number => runs[0]?.cost ?? most;

/** Runs by the size of the field, mm. */
export interface KnownRuns {
  any: Map<number, Runs>;
  /** Those with every mark on the tape. */
  exact: Map<number, Runs>;
}

export const noRuns = (): KnownRuns => ({ any: new Map(), exact: new Map() });

/** Floors are kept for so many widths of the border. */
const MOST_WIDTHS = 2000;

/** One direction of the search: what can be chosen in it. What it finds out on the way holds for every search with the same numbers. */
export class Direction {
  /** Cheapest first. */
  readonly frames: readonly Frame[];
  /** What the last place on the list cost when it was last searched; a search of much the same may begin there. */
  last: number | undefined;
  private readonly axis: AxisProblem;
  /** By the width of the border: less than this none of the frames costs, as far as is known. */
  private readonly floors = new Map<number, Float64Array>();

  constructor(
    private readonly problem: FitProblem,
    private readonly name: Name,
    slack?: Slack,
    private readonly known: KnownRuns = noRuns(),
  ) {
    this.axis = problem[name];
    this.frames = framesOf(this.axis, problem.tape, slack);
  }

  /** Less than this no frame costs with a run, as far as is known. */
  leastAt(width: number, bound: number): number {
    const floors = this.floorsAt(width);
    let least = Number.POSITIVE_INFINITY;
    for (let n = 0; n < floors.length; n++) {
      const frame = this.frames[n]!;
      if (frame.cost >= least) break;
      if (floors[n] === 0) floors[n] = frame.cost + cheapest(this.runsFor(frame, width, bound));
      if (floors[n]! < least) least = floors[n]!;
    }
    return least;
  }

  /**
   * The frames that cost no more than `most` with a run and with their sides.
   * @param bound more than that no run is asked for before the next ceiling
   */
  at(width: number, most: number, bound: number): Placing {
    const { frames } = this;
    const floors = this.floorsAt(width);
    const placed: Placed[] = [];
    let least = Number.POSITIVE_INFINITY;
    for (let n = 0; n < frames.length; n++) {
      if (floors[n]! > most) continue;
      const frame = frames[n]!;
      if (frame.cost > most) break;
      const known = this.runsFor(frame, width, bound);
      floors[n] = frame.cost + cheapest(known);
      if (known.runs.length === 0 || floors[n]! > most) continue;
      const own = placedCost(this.problem, this.name, width, frame);
      const cost = own + cheapest(known);
      floors[n] = cost;
      if (cost > most || cost === Number.POSITIVE_INFINITY) continue;
      placed.push(new Placed(this.problem, this.name, width, frame, known.runs, own));
      if (cost < least) least = cost;
    }
    return { placed, least };
  }

  private floorsAt(width: number): Float64Array {
    let floors = this.floors.get(width);
    if (!floors) {
      if (this.floors.size >= MOST_WIDTHS) this.floors.clear();
      floors = new Float64Array(this.frames.length);
      this.floors.set(width, floors);
    }
    return floors;
  }

  private runsFor(frame: Frame, width: number, most: number): Runs {
    const all = frame.uneven ? this.known.exact : this.known.any;
    const size = fieldIn(this.axis, frame, width);
    let runs = all.get(size);
    if (!runs || runs.most < most) {
      runs = runsIn(this.axis, size, this.problem.tape, frame.uneven, most);
      all.set(size, runs);
    }
    return runs;
  }
}

/** One choice of everything in a direction at one width of the border. */
export interface Choice {
  placed: Placed;
  run: Run;
  /** Of frame and run, and the least that the sides can cost. */
  cost: number;
  /** Natural logarithm of the pitch along, or of the one that is true to shape with the pitch across. */
  log: number;
}

/** Choices with the same count and landing. */
export class Group {
  readonly choices: Choice[] = [];
  least = Number.POSITIVE_INFINITY;
  private sorted: Ladder | undefined;

  constructor(readonly kind: number) {}

  add(choice: Choice): void {
    this.choices.push(choice);
    if (choice.cost < this.least) this.least = choice.cost;
  }

  /** Made when it is first asked for. */
  get ladder(): Ladder {
    this.sorted ??= new Ladder(this.choices);
    return this.sorted;
  }
}

/** Choices by pitch, so that those near a pitch are found at once. */
class Ladder {
  readonly choices: readonly Choice[];
  /** Ascending. */
  readonly logs: Float64Array;
  readonly costs: Float64Array;

  constructor(choices: readonly Choice[]) {
    this.choices = choices.toSorted((a, b) => a.log - b.log);
    const { length } = choices;
    this.logs = new Float64Array(length);
    this.costs = new Float64Array(length);
    for (let at = 0; at < length; at++) {
      const { log, cost } = this.choices[at]!;
      this.logs[at] = log;
      this.costs[at] = cost;
    }
  }

  firstAtLeast(log: number): number {
    let [low, high] = [0, this.logs.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (this.logs[middle]! < log) low = middle + 1;
      else high = middle;
    }
    return low;
  }
}

/** Every choice that costs no more than `most`, in groups by kind, the cheapest group first. `ratio`: of the pitch along to this one. */
export function groupsOf({ placed }: Placing, most: number, ratio: number): Group[] {
  const groups = new Map<number, Group>();
  for (const one of placed) {
    for (const run of one.runs) {
      const cost = one.cost + run.cost;
      if (cost > most) break;
      const kind = runKind(run);
      let group = groups.get(kind);
      if (!group) {
        group = new Group(kind);
        groups.set(kind, group);
      }
      group.add({ placed: one, run, cost, log: Math.log(ratio * run.pitch) });
    }
  }
  return [...groups.values()].sort((a, b) => a.least - b.least);
}
