import type { Point } from '../geometry/path.ts';
import type { Job } from '../job/job.ts';
import { controlEvery, DRIFT_LIMIT, type DriftPoint, datumError, driftCurve, PLACING } from '../marks/drift.ts';
import { writeLength } from '../units/index.ts';
import { FAINT, INK, RED, SOFT } from './ink.ts';
import type { Lettering } from './lettering.ts';
import { formatMm } from './number.ts';
import { Sketch } from './sketch.ts';
import { element, escapeText } from './svg.ts';

/** The drift of one job in numbers. Lengths in mm. */
export interface Drift {
  /** Placements from the first repeat to the last. */
  count: number;
  bias: number;
  spread: number;
  limit: number;
  /** What step-and-repeat comes to at the last of them, and what a mark for every repeat comes to anywhere. */
  stepped: number;
  marked: number;
  /** Repeats from one control mark to the next; 0 where no distance is short enough. */
  every: number;
}

export function driftOf(count: number, { system, step }: Pick<Job, 'system' | 'step'>): Drift {
  const placing = PLACING[system];
  const curve = driftCurve(count, placing, step, 1);
  const limit = DRIFT_LIMIT[system];
  return {
    count,
    ...placing,
    limit,
    stepped: curve.at(-1)!.stepped,
    marked: datumError(placing, step),
    every: controlEvery(placing, limit, step),
  };
}

/** The step that errors are written to, mm: far finer than a tape's own. */
export const errorStep = (system: Job['system']): number => (system === 'inch' ? 25.4 / 64 : 0.1);

/** Room of the plot inside its frame, mm of the page. */
const FRAME = { left: 15, top: 3, width: 84, height: 36 };
const PAGE = { width: 182, height: 48 };
const SIZE = 3.2;
const MOST_STROKES = 10;

/** 1, 2 or 5 times a power of ten, the smallest that needs no more than so many strokes. */
function evenStep(reach: number, most: number): number {
  for (let power = 1; ; power *= 10) {
    for (const times of [1, 2, 5]) if (reach / (times * power) <= most) return times * power;
  }
}

/** Strokes of the upright scale, mm: in halves of an inch step by step, or in whole millimetres. */
function heights(most: number, inch: boolean): number[] {
  const unit = inch ? 25.4 / 8 : 1;
  let each = unit;
  while (most / each > 5) each *= inch ? 2 : most / each > 12 ? 5 : 2;
  return Array.from({ length: Math.floor(most / each + 1e-9) + 1 }, (_, at) => at * each);
}

/**
 * How far out each repeat of a run comes: stepped off one from the other, and set to marks pulled from one datum; with control marks
 * between them where that helps. SVG that stands inside a page, lengths in mm.
 */
export function drawDrift(drift: Drift, job: Pick<Job, 'units' | 'system' | 'step'>, lettering: Lettering): string {
  const { count, limit, stepped, marked, every } = drift;
  const sketch = new Sketch(lettering, SIZE);
  const fine = (mm: number) => writeLength(mm, job.units, errorStep(job.system));
  const points = driftCurve(count, drift, job.step, Math.max(1, every));
  const top = Math.max(stepped, limit, marked) * 1.08;
  const at = (repeat: number, mm: number): Point => [
    FRAME.left + (FRAME.width * repeat) / count,
    FRAME.top + FRAME.height * (1 - mm / top),
  ];
  const [right, foot] = [FRAME.left + FRAME.width, FRAME.top + FRAME.height];

  for (const mm of heights(top, job.system === 'inch')) {
    const [x, y] = at(0, mm);
    sketch.path(
      [
        [x, y],
        [right, y],
      ],
      { stroke: FAINT, 'stroke-width': 0.1 },
    );
    sketch.label(mm === 0 ? '0' : writeLength(mm, job.units, errorStep(job.system)), [x - 1.5, y], 'end', {
      fill: SOFT,
    });
  }
  const each = evenStep(count, MOST_STROKES);
  for (let repeat = 0; repeat <= count; repeat += each) {
    const [x] = at(repeat, 0);
    sketch.path(
      [
        [x, foot],
        [x, foot + 1],
      ],
      { 'stroke-width': 0.2 },
    );
    sketch.label(`${repeat}`, [x, foot + 3.2], 'middle', { fill: SOFT });
  }
  sketch.label('repeats placed', [right, foot + 7], 'end', { fill: SOFT });

  const line = (value: (point: DriftPoint) => number, look: Record<string, string | number>) =>
    sketch.path(
      points.map((point) => at(point.repeat, value(point))),
      look,
    );
  line(() => limit, { stroke: INK, 'stroke-width': 0.2, 'stroke-dasharray': '1.2 1' });
  const controls = every > 0 && every < count;
  if (controls) line((point) => point.controlled, { stroke: FAINT, 'stroke-width': 0.35 });
  line((point) => point.stepped, { stroke: RED, 'stroke-width': 0.6 });
  line(() => marked, { stroke: INK, 'stroke-width': 0.6 });

  const told: [string, Record<string, string | number>][] = [
    [`stepped off: ${fine(stepped)} by the last`, { stroke: RED, 'stroke-width': 0.6 }],
    ...(controls
      ? [
          [`stepped off, a control mark every ${every}`, { stroke: FAINT, 'stroke-width': 0.35 }] as [
            string,
            Record<string, string | number>,
          ],
        ]
      : []),
    [`each to its own mark: ${fine(marked)}`, { stroke: INK, 'stroke-width': 0.6 }],
    [`limit: ${fine(limit)}`, { stroke: INK, 'stroke-width': 0.2, 'stroke-dasharray': '1.2 1' }],
  ];
  for (const [row, [words, look]] of told.entries()) {
    const y = FRAME.top + 4 + row * 6;
    sketch.path(
      [
        [right + 5, y],
        [right + 12, y],
      ],
      look,
    );
    sketch.label(words, [right + 14, y], 'start');
  }
  const title = `Drift over ${count} placements`;
  const size = { width: `${formatMm(PAGE.width)}mm`, height: `${formatMm(PAGE.height)}mm` };
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      class: 'drift',
      ...size,
      style: 'max-width:100%;height:auto',
      viewBox: `0 0 ${PAGE.width} ${PAGE.height}`,
      role: 'img',
      'aria-label': title,
    },
    `<title>${escapeText(title)}</title><g fill="none" stroke="${INK}">${sketch.text}</g>`,
  );
}
