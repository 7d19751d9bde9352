import type { Range } from '../../job/job.ts';
import { POINTS, pitchCost, readingCost, stretchCost } from '../cost.ts';
import { isOnTape, onTape } from '../steps.ts';
import type { Tape } from '../tape.ts';
import type { Way } from '../ways.ts';
import { type Cut, cutAt, isBalanced, type Spacing, shareOf } from './cut.ts';
import type { FloorAxis, FloorProblem } from './problem.ts';

/** One way to lay one direction of a floor: whole repeats that reach past both walls. Lengths in mm. */
export interface Laying {
  pitch: number;
  halves: number;
  way: Way;
  spacing: Spacing;
  cuts: [Cut, Cut];
  exact: boolean;
  cost: number;
}

export interface FloorCandidate {
  across: Laying;
  along: Laying;
  stretch: number;
  cost: number;
}

export interface Found {
  candidates: FloorCandidate[];
  /** Pairs of a laying across and one along that were gone through. */
  searched: number;
}

/** Where the first line lies from the centre line; undefined where the lines to its two sides lie unlike. */
export function spacingOf(pitch: number, halves: number, phase: number, pieces: number): Spacing | undefined {
  const unit = pitch / pieces;
  const share = (((-(halves / 4) - phase) * pieces) % 1) + 1;
  const rest = share % 1;
  if (rest < 1e-9 || rest > 1 - 1e-9) return { unit, first: 0 };
  return Math.abs(rest - 0.5) < 1e-9 ? { unit, first: unit / 2 } : undefined;
}

/**
 * 1. `pitch`, 2. `reading` and `rounded`: as for any field (see cost.ts).
 * 3. `half`: 0.5 where half a repeat is left at the worse of the two walls, less in proportion where more is, nothing where both are whole.
 */
function costOf(
  axis: FloorAxis,
  pitch: number,
  spacing: Spacing,
  cuts: [Cut, Cut],
  exact: boolean,
  tape: Tape,
): number {
  const share = Math.min(...cuts.map((cut) => shareOf(cut, spacing)));
  return (
    pitchCost(pitch, axis.pitch) +
    POINTS.half * 2 * (1 - share) +
    readingCost(spacing.unit, tape) +
    (exact ? 0 : POINTS.rounded)
  );
}

/** Every way to lay a direction with repeats of this pitch: the fewest that reach past both walls, by where the centre line falls. */
export function layingsOf(axis: FloorAxis, pitch: number, tape: Tape): Laying[] {
  const [one, other] = axis.walls;
  const reach = Math.max(one.most, other.most);
  const fewest = Math.max(1, Math.ceil((4 * reach) / pitch - 1e-7));
  const found: Laying[] = [];
  for (let halves = fewest; halves < fewest + 4; halves++) {
    if (halves < axis.halves.from || halves > axis.halves.to) continue;
    for (const way of axis.ways[halves % 4]!) {
      const spacing = spacingOf(pitch, halves, way.phase, axis.pieces);
      const cuts = spacing && [cutAt(one, spacing), cutAt(other, spacing)];
      if (!spacing || !cuts?.every((cut) => cut !== undefined && isBalanced(cut, spacing))) continue;
      const both = cuts as [Cut, Cut];
      const exact = isOnTape(spacing.unit, tape.step) && isOnTape(spacing.first, tape.step);
      const cost = costOf(axis, pitch, spacing, both, exact, tape);
      found.push({ pitch, halves, way, spacing, cuts: both, exact, cost });
    }
  }
  return found;
}

/** Every pitch of a range that the tape shows; none where the range is empty. */
export const pitchesIn = (range: Range, { step }: Tape): number[] =>
  range.from > range.to * (1 + 1e-8) ? [] : onTape(range, step);

const isFixed = ({ from, to }: { from: number; to: number }): boolean => to - from < 1e-9;

/** Cheapest first; equals in a fixed order, so that the same job always gives the same list. */
const compareFloors = (a: FloorCandidate, b: FloorCandidate): number =>
  a.cost - b.cost ||
  a.across.pitch - b.across.pitch ||
  a.along.pitch - b.along.pitch ||
  a.across.halves - b.across.halves ||
  a.along.halves - b.along.halves ||
  a.across.way.phase - b.across.way.phase ||
  a.along.way.phase - b.along.way.phase;

/** Floors of as many repeats, the centre lines falling alike, are one kind. */
const kindOfFloor = ({ across, along }: FloorCandidate): string =>
  [across.halves, across.way.phase, along.halves, along.way.phase].join(' ');

/**
 * Goes through every pitch on the tape, both ways, with every way for the centre lines to fall: on a line between repeats or through the middle of one. Where
 * the stretch is fixed, the pitch along follows from that across and need not be on the tape.
 */
export function searchFloor(problem: FloorProblem, most: number): Found {
  const { tape, ratio, stretch } = problem;
  const across = pitchesIn(problem.across.pitch, tape).flatMap((pitch) => layingsOf(problem.across, pitch, tape));
  const follows = isFixed(stretch);
  const steps = follows ? [] : pitchesIn(problem.along.pitch, tape);
  const along = steps.flatMap((pitch) => layingsOf(problem.along, pitch, tape));
  const kinds = new Map<string, FloorCandidate>();
  for (const x of across) {
    const own = x.pitch * ratio;
    for (const y of follows ? layingsOf(problem.along, own * stretch.from, tape) : along) {
      const pulled = y.pitch / own;
      if (pulled < stretch.from * (1 - 1e-9) || pulled > stretch.to * (1 + 1e-9)) continue;
      if (!problem.middleFits({ across: x.pitch, along: y.pitch })) continue;
      const cost = Math.round((x.cost + y.cost + stretchCost(pulled)) * 1e9) / 1e9;
      const candidate = { across: x, along: y, stretch: pulled, cost };
      const held = kinds.get(kindOfFloor(candidate));
      if (!held || compareFloors(candidate, held) < 0) kinds.set(kindOfFloor(candidate), candidate);
    }
  }
  return { candidates: [...kinds.values()].sort(compareFloors).slice(0, most), searched: count(problem) };
}

/** For each pitch on the tape, each number of repeats that reaches past both walls with each way to land; across times along. */
function count({ tape, across, along, stretch }: FloorProblem): number {
  const choices = (axis: FloorAxis) => axis.ways.reduce((sum, ways) => sum + ways.length, 0);
  const steps = (axis: FloorAxis) => pitchesIn(axis.pitch, tape).length;
  return steps(across) * choices(across) * (isFixed(stretch) ? 1 : steps(along)) * choices(along);
}
