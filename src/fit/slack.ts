import type { Range } from '../job/job.ts';
import { type Frame, fieldIn, frameOf, runOf, type Slack } from './axis.ts';
import { Placed, placedCost } from './choices.ts';
import { POINTS } from './cost.ts';
import type { AxisProblem, FitProblem } from './problem.ts';

const isOpen = (range: Range | undefined): boolean => range !== undefined && range.to - range.from > 1e-9;

/** The slack of a direction whose stretch is fixed, if any of its lengths is left open. */
export function slackOf(axis: AxisProblem, stretch: Range): Slack | undefined {
  if (isOpen(stretch)) return undefined;
  if (axis.overall && isOpen(axis.endGap)) return 'gap';
  if (axis.overall && isOpen(axis.reserve)) return 'reserve';
  return isOpen(axis.overall ?? axis.field) ? 'size' : undefined;
}

/** The frames and counts along that go with this pitch and cost no more than `most` with their sides, each with the slack it leaves. */
export function slackPlaced(
  problem: FitProblem,
  slack: Slack,
  frames: readonly Frame[],
  width: number,
  pitch: number,
  most: number,
): Placed[] {
  const { along: axis, tape } = problem;
  const found: Placed[] = [];
  for (const frame of frames) {
    if (frame.cost > most) break;
    const { from, to } = slackHalves(axis, slack, frame, width, pitch);
    for (let halves = from; halves <= to; halves++) {
      const size = (halves * pitch) / 2;
      for (const way of axis.ways[halves % 4]!) {
        const run = runOf(axis, size, halves, way, tape);
        // The gap is not on the tape, so neither is any mark.
        const cost = run.cost + (run.exact ? POINTS.rounded : 0);
        if (frame.cost + cost > most) continue;
        const taken = takeUp(problem, slack, frame, width, size);
        const own = placedCost(problem, 'along', width, taken);
        if (own + cost > most || own === Number.POSITIVE_INFINITY) continue;
        found.push(new Placed(problem, 'along', width, taken, [{ ...run, exact: false, cost }], own));
      }
    }
  }
  return found;
}

/** The frame with its slack set to what a field of this size leaves. */
function takeUp({ along: axis, tape }: FitProblem, slack: Slack, frame: Frame, width: number, size: number): Frame {
  const { cost: _, ...open } = frame;
  if (slack === 'size')
    return frameOf(axis, { ...open, size: axis.overall ? size + 2 * (width + frame.reserve + frame.gap) : size }, tape);
  const strip = (fieldIn(axis, frame, width) - size) / 2;
  return frameOf(axis, { ...open, [slack]: strip }, tape);
}

/** Half-repeats of this pitch that keep the slack inside its range, the count inside its own. */
function slackHalves(
  axis: AxisProblem,
  slack: Slack,
  frame: Frame,
  width: number,
  pitch: number,
): { from: number; to: number } {
  const allowed = slack === 'gap' ? axis.endGap : slack === 'reserve' ? axis.reserve : (axis.overall ?? axis.field)!;
  const around = axis.overall ? 2 * (width + frame.reserve + frame.gap) : 0;
  const [least, most] =
    slack === 'size'
      ? [allowed.from - around, allowed.to - around]
      : [fieldIn(axis, frame, width) - 2 * allowed.to, fieldIn(axis, frame, width) - 2 * allowed.from];
  const within = pitch >= axis.pitch.from * (1 - 1e-9) && pitch <= axis.pitch.to * (1 + 1e-9);
  if (!within) return { from: 1, to: 0 };
  return {
    from: Math.max(axis.halves.from, 1, Math.ceil((2 * least) / pitch - 1e-9)),
    to: Math.min(axis.halves.to, Math.floor((2 * most) / pitch + 1e-9)),
  };
}
