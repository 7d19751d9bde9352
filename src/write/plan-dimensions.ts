import type { Drawing } from '../compose/drawing.ts';
import type { Layout } from '../fit/layout.ts';
import type { Box } from '../geometry/path.ts';
import type { Job } from '../job/job.ts';
import { joints } from '../marks/joints.ts';
import type { Motif } from '../motif/motif.ts';
import { writeLength } from '../units/index.ts';
import { callouts, dimension, endOfReading, type Span } from './dimension.ts';
import type { Sketch } from './sketch.ts';

export interface Dimensioned {
  layout: Layout;
  job: Job;
  drawing: Drawing;
  field: Motif;
  /** The work with the end gaps of a runner. */
  ends: Box;
  /** How far the drawing of walls and thresholds stands out beyond the ends, mm. */
  clear: number;
}

type Way = 'across' | 'along';

/** Lengths nearer to each other than this are one, mm. */
const SAME = 1e-6;

const piecesIn = ({ field }: Dimensioned) => ({
  each: field.counts?.each ?? 'repeat',
  many: field.counts?.many ?? 'repeats',
  per: { across: field.counts?.across ?? 1, along: field.counts?.along ?? 1 },
});

const lengthIn =
  ({ job }: Dimensioned) =>
  (mm: number) =>
    writeLength(mm, job.units, job.step);

/** `9 repeats`, `4 1/2 repeats`, `half a repeat`. */
function countIn(told: Dimensioned, way: Way): string {
  const { each, many, per } = piecesIn(told);
  const count = told.layout.repeats[way] * per[way];
  const whole = Math.floor(count + 1e-9);
  if (whole === 0) return `half a ${each}`;
  return `${whole}${count - whole > 0.25 ? ' 1/2' : ''} ${count === 1 ? each : many}`;
}

/** Where one whole repeat (or one of the pieces it counts) lies in the field, nearest to `aim`, from the field's left or near edge. */
function oneRepeat(told: Dimensioned, way: Way, aim: number): [from: number, to: number] | undefined {
  const { field, pitch, phase } = told.layout;
  const each = piecesIn(told).per[way];
  const lines = [0, ...joints(field[way], pitch[way], phase[way], each).map((joint) => joint.at), field[way]];
  const apart = ([from, to]: [number, number]) => Math.abs((from + to) / 2 - aim);
  return lines
    .slice(1)
    .map((to, at): [number, number] => [lines[at]!, to])
    .filter(([from, to]) => to - from > (pitch[way] / each) * 0.999)
    .sort((a, b) => apart(a) - apart(b) || b[0] - a[0])[0];
}

/** Above the work: the width of the field, and over everything. */
function widthsAbove(sketch: Sketch, told: Dimensioned): void {
  const { layout, ends, clear, drawing } = told;
  const { work, field } = drawing;
  const length = lengthIn(told);
  const edge = ends.top - clear;
  const spans: Span[] = [];
  const over = length(layout.overall.across);
  if (work.right - field.right > SAME) {
    const inner = length(layout.field.across);
    const text = `field ${inner}, ${countIn(told, 'across')}`;
    spans.push({ runs: 'across', from: field.left, to: field.right, edge, text, brief: [`field ${inner}`, inner] });
    spans.push({ runs: 'across', from: work.left, to: work.right, edge, text: over });
  } else {
    const text = `${over}, ${countIn(told, 'across')}`;
    spans.push({ runs: 'across', from: work.left, to: work.right, edge, text, brief: [over] });
  }
  spans.forEach((span, at) => {
    dimension(sketch, span, edge - (1.8 + 1.7 * at) * sketch.size);
  });
}

/** To the left: the length of the field, of the work where it has end gaps, and over everything. */
function lengthsLeft(sketch: Sketch, told: Dimensioned): void {
  const { layout, ends, drawing } = told;
  const { work, field } = drawing;
  const length = lengthIn(told);
  const spans: Span[] = [];
  const add = ({ top, bottom }: Box, text: string, ...brief: string[]) =>
    spans.push({ runs: 'along', from: top, to: bottom, edge: work.left, text, brief });
  const over = length(ends.bottom - ends.top);
  if (ends.bottom - field.bottom > SAME) {
    const inner = length(layout.field.along);
    add(field, `field ${inner}, ${countIn(told, 'along')}`, `field ${inner}`, inner);
    if (ends.bottom - work.bottom > SAME && work.bottom - field.bottom > SAME) {
      add(work, `work ${length(layout.work.along)}`);
    }
    add(ends, over);
  } else add(ends, `${over}, ${countIn(told, 'along')}`);
  spans.forEach((span, at) => {
    dimension(sketch, span, work.left - (1.5 + 1.7 * at) * sketch.size);
  });
}

/** To the right, from the near end on: end gap, border, reserve, inner border, one repeat. Returns how far up and down they reach. */
function shortRight(sketch: Sketch, told: Dimensioned): { top: number; bottom: number } {
  const { layout, ends, drawing } = told;
  const { work, field, innerBorder } = drawing;
  const length = lengthIn(told);
  const spans: Span[] = [];
  const add = (from: number, to: number, what: string) => {
    if (from - to <= SAME) return;
    spans.push({ runs: 'along', from: to, to: from, edge: work.right, text: `${length(from - to)} ${what}` });
  };
  const inner = work.bottom - layout.border;
  add(ends.bottom, work.bottom, 'end gap');
  add(work.bottom, inner, 'border');
  add(inner, innerBorder?.outer.bottom ?? field.bottom, 'reserve');
  if (innerBorder) {
    add(innerBorder.outer.bottom, innerBorder.inner.bottom, 'inner border');
    add(innerBorder.inner.bottom, field.bottom, 'inside it');
  }
  const one = oneRepeat(told, 'along', 0);
  if (one) add(field.bottom - one[0], field.bottom - one[1], `each ${piecesIn(told).each}`);
  const bottom = callouts(sketch, spans, work.right + 1.3 * sketch.size);
  return { top: Math.min(work.bottom, ...spans.map((span) => span.from)), bottom };
}

function repeatSpan(told: Dimensioned, from: number, to: number, edge: number): Span {
  const brief = lengthIn(told)(to - from);
  return { runs: 'across', from, to, edge, text: `${brief} each ${piecesIn(told).each}`, brief: [brief] };
}

/** Below: one repeat across, next to the axis, and the reserve at the sides where it differs from that at the ends. Readings beside it end at `free`. */
function repeatBelow(sketch: Sketch, told: Dimensioned, free: number): void {
  const { layout, ends, clear, drawing } = told;
  const { field, border, innerBorder } = drawing;
  const length = lengthIn(told);
  const edge = ends.bottom + clear;
  let level = Math.max(edge + 1.5 * sketch.size, free + 0.8 * sketch.size);
  const one = oneRepeat(told, 'across', layout.field.across / 2);
  const repeat = one && repeatSpan(told, field.left + one[0], field.left + one[1], edge);
  const { across, along } = layout.reserve;
  const from = innerBorder?.outer.right ?? field.right;
  const to = border.inner.right;
  if (Math.abs(across - along) > SAME && to - from > SAME) {
    const text = `reserve ${length(to - from)} at the sides`;
    const reserve: Span = { runs: 'across', from, to, edge, text };
    // The one whose reading would reach the thin lines of the other goes below it.
    const below = repeat !== undefined && endOfReading(sketch, repeat) + 0.4 * sketch.size > from;
    dimension(sketch, reserve, below ? level : level + 1.7 * sketch.size);
    if (below) level += 1.7 * sketch.size;
  }
  if (repeat) dimension(sketch, repeat, level);
}

/** Every length that fixes the work, once. Returns how far up the short ones at the near end reach on the right. */
export function drawDimensions(sketch: Sketch, told: Dimensioned): number {
  widthsAbove(sketch, told);
  lengthsLeft(sketch, told);
  const { top, bottom } = shortRight(sketch, told);
  repeatBelow(sketch, told, bottom);
  return top;
}
