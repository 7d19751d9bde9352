import type { Motifs } from '../compose/compose.ts';
import type { Drawing } from '../compose/drawing.ts';
import type { Layout } from '../fit/layout.ts';
import { joinBoxes } from '../geometry/measure.ts';
import type { Box } from '../geometry/path.ts';
import type { Job } from '../job/job.ts';
import { limitsOf } from '../marks/words.ts';
import { writeLength } from '../units/index.ts';
import { FAINT, INK, paperFor } from './ink.ts';
import { loadLettering } from './label.ts';
import { formatMm } from './number.ts';
import { drawDimensions } from './plan-dimensions.ts';
import { coloursUsed, drawKey, partWords } from './plan-key.ts';
import { paintGroup } from './plan-paint.ts';
import { clearOf, drawAxis, drawEnds, drawOutlines, drawSides, drawThresholds } from './plan-place.ts';
import { Sketch } from './sketch.ts';
import { element, escapeText } from './svg.ts';

export interface PlanChoice {
  /** The title, the line that explains the layout, the colours and the scale under the drawing; wanted unless told otherwise. */
  key?: boolean;
}

/** The numbers of the plan in sentences, for those who hear it read out. */
export function describePlan(drawing: Drawing, layout: Layout, job: Job): string {
  const length = (mm: number) => writeLength(mm, job.units, job.step);
  const { overall, field, pitch, repeats, border, endGap } = layout;
  const limits = limitsOf(job);
  const colours = coloursUsed(drawing, job).map(({ colour, parts }) => `${colour} (${parts.map(partWords).join(', ')})`);
  return [
    `Plan to scale, one unit to the millimetre, ${limits.near} at the bottom and ${limits.far} at the top.`,
    `Overall ${length(overall.across)} across and ${length(overall.along)} along.`,
    `Field ${length(field.across)} by ${length(field.along)}: ${repeats.across} by ${repeats.along} repeats of ${length(pitch.across)} by ${length(pitch.along)}.`,
    border > 0 ? `Border ${length(border)} all round.` : 'No border.',
    endGap > 0 ? `End gaps ${length(layout.gaps.near)} near and ${length(layout.gaps.far)} far.` : '',
    `Colours: ${colours.join('; ')}.`,
  ]
    .filter(Boolean)
    .join(' ');
}

const group = (id: string, sketch: Sketch): string =>
  element('g', { id, fill: 'none', stroke: INK, 'stroke-width': formatMm(sketch.size * 0.045) }, `\n${sketch.text}\n`);

/**
 * The painted floor to scale with its dimensions, as SVG text: one user unit is 1 mm, the origin lies at the centre of the
 * work, y runs down, the near end is at the bottom. Every label is an outline and keeps its text in `data-label`.
 */
export async function writePlan(
  drawing: Drawing,
  layout: Layout,
  job: Job,
  motifs: Motifs,
  { key = true }: PlanChoice = {},
): Promise<string> {
  const lettering = await loadLettering();
  const { work } = drawing;
  const gaps = job.surface === 'runner' ? layout.gaps : { near: 0, far: 0 };
  const ends: Box = { ...work, top: work.top - gaps.far, bottom: work.bottom + gaps.near };
  const size = Math.max(work.right - work.left, ends.bottom - ends.top) / 70;
  const clear = clearOf(job, size);
  const sketch = () => new Sketch(lettering, size);

  const lines = sketch();
  drawOutlines(lines, drawing);
  drawThresholds(lines, ends, job);
  const axis = sketch();
  drawAxis(axis, ends, clear);
  const dimensions = sketch();
  drawDimensions(dimensions, { layout, job, drawing, field: motifs.field, ends, clear });
  const words = sketch();
  const above = Math.min(dimensions.box.top, axis.box.top) - 1.2 * size;
  const below = Math.max(dimensions.box.bottom, axis.box.bottom) + 1.2 * size;
  drawEnds(words, above, below, layout, job);

  drawSides(words, dimensions.box, layout, job);

  const reach = [lines, axis, dimensions, words].map(({ box }) => box).reduce(joinBoxes);
  const title = sketch();
  if (key) {
    // Beside a long narrow work there is room to its right; otherwise the title goes below.
    const tall = reach.bottom - reach.top > 1.8 * (reach.right - reach.left);
    const beside = { left: work.right + 4 * size, right: work.right + 26 * size, top: work.top + size };
    const under = { left: reach.left, right: Math.max(reach.right, reach.left + 24 * size), top: reach.bottom + size };
    drawKey(title, { layout, job, drawing, room: tall ? beside : under });
    reach.bottom = Math.max(reach.bottom, title.box.bottom);
    reach.right = Math.max(reach.right, title.box.right);
  }

  const margin = 2 * size;
  const page = { left: reach.left - margin, top: reach.top - margin, right: reach.right + margin, bottom: reach.bottom + margin };
  const [width, height] = [page.right - page.left, page.bottom - page.top].map(formatMm);
  const frame = sketch();
  const inset = 0.6 * size;
  frame.rectangle(page, { fill: paperFor(coloursUsed(drawing, job).map(({ colour }) => job.palette[colour]!)), stroke: 'none' });
  frame.rectangle(
    { left: page.left + inset, top: page.top + inset, right: page.right - inset, bottom: page.bottom - inset },
    { stroke: FAINT, 'stroke-width': formatMm(size * 0.05) },
  );

  return `${element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width: `${width}mm`,
      height: `${height}mm`,
      viewBox: `${formatMm(page.left)} ${formatMm(page.top)} ${width} ${height}`,
      role: 'img',
      'aria-labelledby': 'plan-title plan-desc',
    },
    [
      '',
      element('title', { id: 'plan-title' }, escapeText(`${job.title}: plan`)),
      element('desc', { id: 'plan-desc' }, escapeText(describePlan(drawing, layout, job))),
      group('paper', frame),
      paintGroup(drawing, job),
      group('outlines', lines),
      group('axis', axis),
      group('dimensions', dimensions),
      group('words', words),
      ...(key ? [group('key', title)] : []),
      '',
    ].join('\n'),
  )}\n`;
}
