import type { Range } from '../job/job.ts';
import type { AxisProblem, FitProblem } from './problem.ts';

/** The least and the largest field of a direction, mm, over every border, reserve and gap allowed. */
export function fieldBounds(axis: AxisProblem, border: Range): { least: number; most: number } {
  if (axis.field) return { least: axis.field.from, most: axis.field.to };
  const { from, to } = axis.overall!;
  const around = (side: 'from' | 'to') => 2 * (border[side] + axis.reserve[side] + axis.endGap[side]);
  return { least: Math.max(0, from - around('to')), most: Math.max(0, to - around('from')) };
}

/** What the counts and the room leave of a pitch range. */
function pitchBounds(axis: AxisProblem, border: Range): Range {
  const { least, most } = fieldBounds(axis, border);
  return {
    from: Math.max(axis.pitch.from, (2 * least) / axis.halves.to),
    to: Math.min(axis.pitch.to, (2 * most) / axis.halves.from),
  };
}

const narrowed = (pitch: Range, from: number, to: number): Range => ({
  ...pitch,
  from: Math.max(pitch.from, from * (1 - 1e-9)),
  to: Math.min(pitch.to, to * (1 + 1e-9)),
});

/**
 * Narrows the pitch of each direction to what the other allows through the stretch. Nothing that fits is lost:
 * along = across × ratio × stretch for every layout.
 */
export function boundPitches(problem: FitProblem): FitProblem {
  const { across, along, border, ratio, stretch } = problem;
  const x = pitchBounds(across, border);
  const y = pitchBounds(along, border);
  return {
    ...problem,
    across: { ...across, pitch: narrowed(across.pitch, y.from / (ratio * stretch.to), y.to / (ratio * stretch.from)) },
    along: { ...along, pitch: narrowed(along.pitch, x.from * ratio * stretch.from, x.to * ratio * stretch.to) },
  };
}
