import type { Drawing } from '../compose/drawing.ts';
import type { Layout } from '../fit/layout.ts';
import type { Box } from '../geometry/path.ts';
import type { Job } from '../job/job.ts';
import { joints } from '../marks/joints.ts';
import type { Motif } from '../motif/motif.ts';
import { writeLength } from '../units/index.ts';
import { callouts, dimension, type Span } from './dimension.ts';
import type { Sketch } from './sketch.ts';

/** Where one whole repeat (or one of the pieces it counts) lies in a strip, nearest to `aim`, from the strip's beginning. */
function oneRepeat(length: number, pitch: number, phase: number, each: number, aim: number): [number, number] | undefined {
  const lines = [0, ...joints(length, pitch, phase, each).map((joint) => joint.at), length];
  const whole = lines
    .slice(1)
    .map((to, at): [number, number] => [lines[at]!, to])
    .filter(([from, to]) => to - from > (pitch / each) * 0.999);
  const apart = ([from, to]: [number, number]) => Math.abs((from + to) / 2 - aim);
  return whole.sort((a, b) => apart(a) - apart(b) || b[0] - a[0])[0];
}

const counted = (count: number, each: string, many: string): string => {
  const whole = Math.floor(count + 1e-9);
  const half = count - whole > 0.25;
  if (whole === 0) return `half a ${each}`;
  return `${whole}${half ? ' 1/2' : ''} ${count === 1 ? each : many}`;
};

/**
 * Every length that fixes the work, once: widths above it, lengths to its left, the short ones at its near end to the right,
 * one repeat across below.
 * @param ends  the work with the end gaps of a runner
 * @param clear how far the drawing of walls and thresholds stands out beyond the ends
 */
export function drawDimensions(
  sketch: Sketch,
  { layout, job, drawing, field, ends, clear }: { layout: Layout; job: Job; drawing: Drawing; field: Motif; ends: Box; clear: number },
): void {
  const { size } = sketch;
  const { work, field: inside } = drawing;
  const length = (mm: number) => writeLength(mm, job.units, job.step);
  const { each, many } = field.counts ?? { each: 'repeat', many: 'repeats' };
  const per = { across: field.counts?.across ?? 1, along: field.counts?.along ?? 1 };
  const count = (way: 'across' | 'along') => counted(layout.repeats[way] * per[way], each, many);
  const bare = layout.field.across === work.right - work.left;

  const widths: Span[] = [];
  if (!bare) {
    const brief = `field ${length(layout.field.across)}`;
    const text = `${brief}, ${count('across')}`;
    widths.push({ runs: 'across', from: inside.left, to: inside.right, edge: ends.top - clear, text, brief });
  }
  const brief = length(layout.overall.across);
  const text = bare ? `${brief}, ${count('across')}` : brief;
  widths.push({ runs: 'across', from: work.left, to: work.right, edge: ends.top - clear, text, brief });
  widths.forEach((span, at) => {
    dimension(sketch, span, ends.top - clear - (1.8 + 1.7 * at) * size);
  });

  const lengths: Span[] = [];
  const long = (from: number, to: number, text: string) =>
    lengths.push({ runs: 'along', from, to, edge: work.left, text });
  if (inside.bottom - inside.top < ends.bottom - ends.top - 1e-6) {
    long(inside.top, inside.bottom, `field ${length(layout.field.along)}, ${count('along')}`);
    if (ends.bottom - work.bottom > 1e-6) long(work.top, work.bottom, `work ${length(layout.work.along)}`);
    long(ends.top, ends.bottom, length(ends.bottom - ends.top));
  } else long(ends.top, ends.bottom, `${length(ends.bottom - ends.top)}, ${count('along')}`);
  lengths.forEach((span, at) => {
    dimension(sketch, span, work.left - (1.5 + 1.7 * at) * size);
  });

  const short: Span[] = [];
  const up = (from: number, by: number, text: string) => {
    if (by > 1e-6) short.push({ runs: 'along', from: from - by, to: from, edge: work.right, text: `${length(by)} ${text}` });
    return from - by;
  };
  const border = up(up(ends.bottom, ends.bottom - work.bottom, 'end gap'), layout.border, 'border');
  up(border, layout.reserve.along, 'reserve');
  const along = oneRepeat(layout.field.along, layout.pitch.along, layout.phase.along, per.along, 0);
  if (along) {
    const from = inside.bottom - along[0];
    up(from, along[1] - along[0], `each ${each}`);
  }
  callouts(sketch, short, work.right + 1.3 * size);

  const across = oneRepeat(layout.field.across, layout.pitch.across, layout.phase.across, per.across, layout.field.across / 2);
  if (across) {
    const [from, to] = across.map((at) => inside.left + at) as [number, number];
    const brief = length(to - from);
    const edge = ends.bottom + clear;
    dimension(sketch, { runs: 'across', from, to, edge, text: `${brief} each ${each}`, brief }, edge + 1.5 * size);
  }
  if (Math.abs(layout.reserve.across - layout.reserve.along) > 1e-6 && layout.reserve.across > 1e-6) {
    const text = `reserve ${length(layout.reserve.across)} at the sides`;
    const from = inside.right;
    dimension(
      sketch,
      { runs: 'across', from, to: from + layout.reserve.across, edge: ends.bottom + clear, text },
      ends.bottom + clear + 3.2 * size,
    );
  }
}
