import { POINTS, pitchCost, readingCost, sizeCost, stripCost } from './cost.ts';
import type { AxisProblem } from './problem.ts';
import { isOnTape, onTape } from './steps.ts';
import type { Tape } from './tape.ts';
import type { Way } from './ways.ts';

/** What the repeats decide instead of the tape, when squares must stay square: the ends take up the difference evenly. */
export type Slack = 'gap' | 'reserve' | 'size';

/** One choice of everything in a direction but border and repeats. Lengths in mm. */
export interface Frame {
  /** `overall` or `field`, whichever the problem gives. */
  size: number;
  reserve: number;
  /** Mean of both end gaps. */
  gap: number;
  /** The gaps differ by a step. */
  uneven: boolean;
  cost: number;
}

/** One choice of repeats for a field of known size. */
export interface Run {
  halves: number;
  pitch: number;
  way: Way;
  exact: boolean;
  cost: number;
}

/** A frame that has no price yet. */
export type Bare = Omit<Frame, 'cost'>;

/** All frames of a direction, in order of size, reserve and gap. What is slack is left at nothing: the repeats will decide it. */
export function bareFrames(axis: AxisProblem, { step }: Tape, slack?: Slack): Bare[] {
  const given = (axis.overall ?? axis.field)!;
  const sizes = slack === 'size' ? [0] : onTape(given, step);
  const reserves = slack === 'reserve' ? [0] : onTape(axis.reserve, step);
  const gaps = slack === 'gap' ? [0] : onTape(axis.endGap, step);
  const mayDiffer = axis.datum === 'end' && axis.mayDiffer && !slack;
  const frames: Bare[] = [];
  for (const size of sizes) {
    for (const reserve of reserves) {
      for (const gap of gaps) {
        frames.push({ size, reserve, gap, uneven: false });
        if (mayDiffer) frames.push({ size, reserve, gap: gap + step / 2, uneven: true });
      }
    }
  }
  return frames;
}

/** The same with what they cost, cheapest first. */
export const framesOf = (axis: AxisProblem, tape: Tape, slack?: Slack): Frame[] =>
  bareFrames(axis, tape, slack)
    .map((frame) => frameOf(axis, frame, tape, slack))
    .sort((a, b) => a.cost - b.cost || a.size - b.size || a.reserve - b.reserve || a.gap - b.gap);

/** Prices a frame. A length that is still slack costs nothing yet. */
export function frameOf(axis: AxisProblem, frame: Bare, tape: Tape, slack?: Slack): Frame {
  const cost =
    (slack === 'size' ? 0 : sizeCost(frame.size, (axis.overall ?? axis.field)!, tape)) +
    (slack === 'reserve' ? 0 : stripCost(frame.reserve, axis.reserve, tape)) +
    (slack === 'gap' ? 0 : stripCost(frame.gap, axis.endGap, tape)) +
    (frame.uneven ? POINTS.uneven : 0);
  return { ...frame, cost };
}

/** To the nanometre, so that one size reached by two sums is one number. */
const tidy = (mm: number): number => Math.round(mm * 1e6) / 1e6;

/** Size of the field inside a frame, for a border of this width. */
export const fieldIn = (axis: AxisProblem, frame: Bare, border: number): number =>
  tidy(axis.overall ? frame.size - 2 * (border + frame.reserve + frame.gap) : frame.size);

/** Size over border and reserves, without the end gaps. */
export const workIn = (axis: AxisProblem, frame: Bare, border: number): number =>
  tidy(axis.overall ? frame.size - 2 * frame.gap : frame.size + 2 * (border + frame.reserve));

/** The counts of half-repeats whose pitch is allowed in a field of this size. */
export function halvesIn(axis: AxisProblem, size: number): { from: number; to: number } {
  const { halves, pitch } = axis;
  return {
    from: Math.max(halves.from, Math.ceil((2 * size) / pitch.to - 1e-9)),
    to: Math.min(halves.to, pitch.from > 0 ? Math.floor((2 * size) / pitch.from + 1e-9) : halves.to),
  };
}

/** Every mark lies on a tape step: each piece of a repeat is whole steps long, and so is the way to the first line from where the marks are measured. */
function marksExact(axis: AxisProblem, size: number, pitch: number, way: Way, { step }: Tape): boolean {
  const start = axis.datum === 'middle' ? size / 2 : 0;
  return isOnTape(pitch / axis.pieces, step) && isOnTape(start - way.phase * pitch, step);
}

export function runOf(axis: AxisProblem, size: number, halves: number, way: Way, tape: Tape): Run {
  const pitch = (2 * size) / halves;
  const exact = marksExact(axis, size, pitch, way, tape);
  const cost =
    pitchCost(pitch, axis.pitch) +
    (way.edge === 'half' ? POINTS.half : 0) +
    readingCost(pitch / axis.pieces, tape) +
    (exact ? 0 : POINTS.rounded);
  return { halves, pitch, way, exact, cost };
}

/** Those of the counts of half-repeats whose pitch alone costs no more than `most`. */
function halvesWithin({ pitch }: AxisProblem, size: number, most: number, all: { from: number; to: number }) {
  const { wish } = pitch;
  if (wish === undefined) return all;
  const reach = Math.exp(most / POINTS.pitch);
  const wished = (2 * size) / wish;
  return { from: Math.max(all.from, Math.floor(wished / reach)), to: Math.min(all.to, Math.ceil(wished * reach)) };
}

/** Runs of one field, cheapest first. */
export interface Runs {
  runs: Run[];
  /** Those that cost more are left out; endless where there are none. */
  most: number;
}

/**
 * The runs for a field of this size that cost no more than `most`.
 * `exactOnly`: uneven gaps are worth having only where they put every mark on the tape.
 */
export function runsIn(axis: AxisProblem, size: number, tape: Tape, exactOnly: boolean, most: number): Runs {
  const runs: Run[] = [];
  const all = size > 0 ? halvesIn(axis, size) : { from: 1, to: 0 };
  const { from, to } = halvesWithin(axis, size, most, all);
  let isWhole = from <= all.from && to >= all.to;
  for (let halves = to; halves >= from; halves--) {
    for (const way of axis.ways[halves % 4]!) {
      const run = runOf(axis, size, halves, way, tape);
      if (exactOnly && !run.exact) continue;
      if (run.cost <= most) runs.push(run);
      else isWhole = false;
    }
  }
  return { runs: runs.sort((a, b) => a.cost - b.cost), most: isWhole ? Number.POSITIVE_INFINITY : most };
}
