import type { Drawing } from '../compose/drawing.ts';
import type { Layout } from '../fit/layout.ts';
import type { Box } from '../geometry/path.ts';
import type { Job } from '../job/job.ts';
import { limitsOf } from '../marks/words.ts';
import { hasFreeEnds } from '../site/free-ends.ts';
import { writeLength } from '../units/index.ts';
import { INK, RED } from './ink.ts';
import type { Sketch } from './sketch.ts';

/** How far the jambs of an opening are drawn, as shares of the size. */
const JAMB = { thick: 0.55, wide: 1.8 };

/** The openings that the work lies between. */
const openingsAt = (job: Job) => (hasFreeEnds(job) ? undefined : job.site.openings);

/** How far walls are drawn beyond the ends, mm. */
export const clearOf = (job: Job, size: number): number => (openingsAt(job) ? JAMB.thick * size : 0);

/** Fine lines round the work and between its elements. */
export function drawOutlines(sketch: Sketch, { work, border, innerBorder, field }: Drawing): void {
  const hair = { 'stroke-opacity': 0.5, 'stroke-width': sketch.size * 0.03 };
  const seen = (a: Box, b: Box) => Math.abs(a.left - b.left) > 1e-6 || Math.abs(a.top - b.top) > 1e-6;
  const boxes = [field, ...(innerBorder ? [innerBorder.inner, innerBorder.outer] : []), border.inner, work];
  boxes.slice(0, -1).forEach((box, at) => {
    if (seen(box, boxes[at + 1]!)) sketch.rectangle(box, hair);
  });
  sketch.rectangle(work, { 'stroke-width': sketch.size * 0.06 });
}

/** The thresholds of a runner, each between the jambs of its opening. */
export function drawThresholds(sketch: Sketch, ends: Box, job: Job): void {
  const openings = openingsAt(job);
  if (!openings) return;
  const { size } = sketch;
  for (const [end, y, way] of [
    ['far', ends.top, -1],
    ['near', ends.bottom, 1],
  ] as const) {
    const half = openings[end] / 2;
    sketch.path([
      [-half, y],
      [half, y],
    ]);
    for (const side of [-1, 1]) {
      const [inner, outer] = [side * half, side * (half + JAMB.wide * size)];
      const wall = y + way * JAMB.thick * size;
      const box = {
        left: Math.min(inner, outer),
        right: Math.max(inner, outer),
        top: Math.min(y, wall),
        bottom: Math.max(y, wall),
      };
      sketch.rectangle(box, { fill: INK, stroke: 'none' });
    }
  }
}

/** The centre line, as a chain line of long and short strokes, light-edged so that it shows on any colour. */
export function drawAxis(sketch: Sketch, ends: Box, clear: number): void {
  const { size } = sketch;
  const [from, to] = [ends.bottom + clear + 0.6 * size, ends.top - clear - 0.75 * size];
  const line = { 'stroke-dasharray': [1.5, 0.3, 0.25, 0.3].map((share) => (share * size).toFixed(3)).join(' ') };
  const points: [number, number][] = [
    [0, from],
    [0, to],
  ];
  sketch.path(points, { ...line, stroke: '#fffaf0', 'stroke-opacity': 0.8, 'stroke-width': size * 0.14 });
  sketch.path(points, { ...line, stroke: RED, 'stroke-width': size * 0.07 });
  sketch.label('axis', [0.35 * size, to + 0.1 * size], 'start', { size: 0.8 * size, fill: RED });
}

const lengthIn = (job: Job) => (mm: number) => writeLength(mm, job.units, job.step);
const hasRoom = (job: Job): boolean => job.surface === 'rug' && job.site.room !== undefined;

/** What lies at either end, in words. */
export function drawEnds(sketch: Sketch, above: number, below: number, { gaps }: Layout, job: Job): void {
  const length = lengthIn(job);
  const words = (end: 'near' | 'far'): string => {
    const name = limitsOf(job)[end].replace('the ', '');
    const openings = openingsAt(job);
    if (openings) return `${name}, opening ${length(openings[end])}`;
    return hasRoom(job) ? `${name}, ${length(gaps[end])} away` : name;
  };
  sketch.label(words('far'), [0, above], 'middle');
  sketch.label(words('near'), [0, below], 'middle');
}

/**
 * The walls beside the work, where the room was measured.
 * @param short where the short dimensions at the near end begin; above them the right side is free
 */
export function drawSides(
  sketch: Sketch,
  { left, right }: { left: number; right: { free: number; beyond: number; short: number } },
  { gaps }: Layout,
  job: Job,
): void {
  if (!hasRoom(job)) return;
  const turn = -Math.PI / 2;
  const away = 1.2 * sketch.size;
  const words = (side: 'left' | 'right') => `${side} wall, ${lengthIn(job)(gaps[side])} away`;
  sketch.label(words('left'), [left - away, 0], 'middle', { turn });
  const isFree = sketch.width(words('right')) / 2 + sketch.size < right.short;
  sketch.label(words('right'), [(isFree ? right.free : right.beyond) + away, 0], 'middle', { turn });
}
