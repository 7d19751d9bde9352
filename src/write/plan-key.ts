import type { Drawing } from '../compose/drawing.ts';
import type { Layout } from '../fit/layout.ts';
import type { Box } from '../geometry/path.ts';
import type { Job } from '../job/job.ts';
import type { Part } from '../motif/motif.ts';
import { FAINT, INK, SOFT } from './ink.ts';
import type { Sketch } from './sketch.ts';
import { wrap } from './wrap.ts';

/** The colours that are used, in the order they go on, and the parts each is for. */
export function coloursUsed(drawing: Drawing, job: Pick<Job, 'colours'>): { colour: string; parts: Part[] }[] {
  const used = new Map<string, Part[]>();
  for (const part of ['ground', ...drawing.regions.map((region) => region.part)] as Part[]) {
    const parts = used.get(job.colours[part]) ?? [];
    if (!parts.includes(part)) parts.push(part);
    used.set(job.colours[part], parts);
  }
  return [...used].map(([colour, parts]) => ({ colour, parts }));
}

export const partWords = (part: Part): string => part.replaceAll('-', ' ');

/** Steps that people count in, mm. */
const STEPS = {
  inch: [...[1, 2, 3, 6].map((inches) => inches * 25.4), ...[1, 2, 3, 5, 10, 20, 50].map((feet) => feet * 304.8)],
  metric: [10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10_000, 20_000],
};

/** A bar of four steps that stays within the width, and the unit it is counted in. */
function scaleStep(width: number, system: Job['system']): { step: number; per: number; word: string } {
  const step = STEPS[system].filter((one) => one <= width / 5).at(-1) ?? STEPS[system][0]!;
  if (system === 'inch') return step < 304.8 ? { step, per: 25.4, word: 'in' } : { step, per: 304.8, word: 'ft' };
  return step < 1000 ? { step, per: 10, word: 'cm' } : { step, per: 1000, word: 'm' };
}

/** A bar of four steps with its figures. `width`: the most it may take, mm. */
export function drawScale(sketch: Sketch, x: number, y: number, width: number, system: Job['system']): void {
  const { size } = sketch;
  const { step, per, word } = scaleStep(width, system);
  const high = 0.3 * size;
  for (let at = 0; at < 4; at++) {
    const box = { left: x + at * step, right: x + (at + 1) * step, top: y, bottom: y + high };
    sketch.rectangle(box, { fill: at % 2 === 0 ? INK : 'none', 'stroke-width': size * 0.04 });
  }
  for (let at = 0; at <= 4; at += 2) {
    const text = `${Math.round((at * step) / per)}${at === 4 ? ` ${word}` : ''}`;
    sketch.label(text, [x + at * step, y + high + 0.65 * size], 'middle', { size: 0.8 * size });
  }
}

/** The title block under the drawing: title, the line that explains the layout, colours and scale. */
export function drawKey(
  sketch: Sketch,
  {
    layout,
    job,
    drawing,
    room,
  }: { layout: Pick<Layout, 'says'>; job: Job; drawing: Drawing; room: Pick<Box, 'left' | 'right' | 'top'> },
): void {
  const { size, lettering } = sketch;
  const { left, right } = room;
  let y = room.top;
  sketch.path(
    [
      [left, y],
      [right, y],
    ],
    { 'stroke-width': size * 0.06 },
  );
  y += 0.6 * size;
  const write = (text: string, lettered: number, lead: number, fill?: string) => {
    if (!lettering.canSet(text)) return;
    for (const line of wrap(text, right - left, (words) => sketch.width(words, lettered))) {
      sketch.label(
        line,
        [left, y + lead / 2],
        'start',
        fill === undefined ? { size: lettered } : { size: lettered, fill },
      );
      y += lead;
    }
  };
  write(job.title, 1.6 * size, 2 * size);
  write(layout.says, size, 1.45 * size, SOFT);
  y += 0.6 * size;

  let x = left;
  for (const { colour, parts } of coloursUsed(drawing, job)) {
    const hex = job.palette[colour]!;
    const words = `${lettering.canSet(colour) ? colour : hex}: ${parts.map(partWords).join(', ')}`;
    const width = sketch.width(words) + 3.4 * size;
    if (x > left && x + width > right) {
      x = left;
      y += 1.7 * size;
    }
    sketch.rectangle(
      { left: x, right: x + 1.2 * size, top: y, bottom: y + 1.2 * size },
      { fill: hex, stroke: FAINT, 'stroke-width': size * 0.04 },
    );
    sketch.label(words, [x + 1.6 * size, y + 0.6 * size], 'start');
    x += width;
  }
  drawScale(sketch, left, y + 2.2 * size, Math.min(right - left, 24 * size), job.system);
}
