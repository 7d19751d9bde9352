import type { Drawing } from '../compose/drawing.ts';
import type { Layout } from '../fit/layout.ts';
import { joinBoxes } from '../geometry/measure.ts';
import type { Job } from '../job/job.ts';
import { type PlacedStep, placeFlight } from '../stairs/flight.ts';
import { sayFlight } from '../stairs/says.ts';
import { writeLength } from '../units/index.ts';
import { dimension } from './dimension.ts';
import { drawStrips } from './flight-strips.ts';
import { FAINT, paperFor, RED, SOFT } from './ink.ts';
import { loadLettering } from './label.ts';
import { rectangleText, regionText } from './path.ts';
import { coloursUsed } from './plan-key.ts';
import { inkGroup, writePage } from './plan-page.ts';
import { Sketch } from './sketch.ts';
import { element } from './svg.ts';

/** How many lines of lettering the longer side of the flight stands for, and the fewest for one step. */
const LINES = 66;
const LINES_A_STEP = 3;

/** Bare wood or old paint: what is not painted. */
const PLAIN = '#e4dac6';

/**
 * The flight from the front, true to size, its risers one on the other (its treads unrolled) from the bottom up: one user unit is 1 mm,
 * x 0 is the centre line of the flight, y 0 the foot of the lowest step. Every outline and every piece of paint says in `data-step`
 * which step it is on.
 */
export async function writeFlight(drawing: Drawing, layout: Layout, job: Job): Promise<string> {
  const lettering = await loadLettering();
  const steps = placeFlight(job, layout);
  const length = (mm: number) => writeLength(mm, job.units, job.step);
  const flight = steps.map(({ outline }) => outline).reduce(joinBoxes, { ...steps[0]!.outline });
  const tall = Math.max(flight.right - flight.left, flight.bottom - flight.top) / LINES;
  const size = Math.min(tall, Math.min(...steps.map(({ along }) => along)) / LINES_A_STEP);
  const [outlines, lines, dimensions, words] = [0, 1, 2, 3].map(() => new Sketch(lettering, size)) as [
    Sketch,
    Sketch,
    Sketch,
    Sketch,
  ];
  for (const { step, kind, outline } of steps)
    outlines.rectangle(outline, { 'data-step': step, 'data-line': kind, fill: PLAIN, 'stroke-width': size * 0.07 });
  if (job.stairs!.painted === 'treads') drawNosings(lines, steps, job.stairs!.nosing);

  const top = flight.top - 0.9 * size;
  const centre: [number, number][] = [
    [0, flight.bottom + 0.9 * size],
    [0, top],
  ];
  const dashes = [1.5, 0.3, 0.25, 0.3].map((share) => (share * size).toFixed(3)).join(' ');
  lines.path(centre, {
    stroke: '#fffaf0',
    'stroke-opacity': 0.8,
    'stroke-width': size * 0.14,
    'stroke-dasharray': dashes,
  });
  lines.path(centre, { 'data-line': 'centre', stroke: RED, 'stroke-width': size * 0.07, 'stroke-dasharray': dashes });
  words.label('centre line', [0.35 * size, top + 0.1 * size], 'start', { size: 0.8 * size, fill: RED });

  const panel = steps.at(-1)!.panel;
  const width = { runs: 'across', from: panel.left, to: panel.right, edge: flight.top } as const;
  dimension(dimensions, { ...width, text: `panel ${length(layout.work.across)}` }, flight.top - 2.4 * size);
  for (const { step, outline } of steps) {
    const y = (outline.top + outline.bottom) / 2;
    words.label(`${step}`, [flight.left - 1.1 * size, y], 'end', { size: 1.2 * size });
  }
  drawStrips(dimensions, steps, flight, length);
  const foot = job.stairs!.painted === 'risers' ? 'foot of the flight' : 'front of the lowest tread';
  words.label(foot, [0, flight.bottom + 2 * size], 'middle', { fill: SOFT });

  return writePage(lettering, {
    reach: [outlines, lines, dimensions, words].map(({ box }) => box).reduce(joinBoxes),
    paper: paperFor(coloursUsed(drawing, job).map(({ colour }) => job.palette[colour]!)),
    size,
    title: `${job.title}: the flight`,
    says: [
      `The ${job.stairs!.painted} of the flight from the bottom up, true to size, one unit to the millimetre; left and right as one stands before it.`,
      ...sayFlight(job, layout),
    ].join(' '),
    groups: [
      inkGroup('steps', outlines),
      paintOnSteps(drawing, steps, job),
      inkGroup('lines', lines),
      inkGroup('dimensions', dimensions),
      inkGroup('words', words),
    ],
  });
}

/** Behind this line a tread is painted; in front of it, where feet wear and slip, it is not. */
function drawNosings(sketch: Sketch, steps: PlacedStep[], nosing: number): void {
  if (nosing <= 0) return;
  for (const { step, outline } of steps)
    sketch.path(
      [
        [outline.left, outline.bottom - nosing],
        [outline.right, outline.bottom - nosing],
      ],
      { 'data-step': step, 'data-line': 'nosing', stroke: FAINT, 'stroke-width': sketch.size * 0.05 },
    );
}

/** The panel of the plan on every step: its ground, and its pieces moved to where they stand. */
function paintOnSteps(drawing: Drawing, steps: PlacedStep[], job: Pick<Job, 'palette' | 'colours'>): string {
  const hex = (part: keyof Job['colours']) => job.palette[job.colours[part]]!;
  const paint = steps.flatMap(({ step, panel }) => {
    const middle = (panel.top + panel.bottom) / 2;
    return [
      element('path', { 'data-step': step, 'data-line': 'panel', fill: hex('ground'), d: rectangleText(panel) }),
      ...drawing.regions.map(({ element: of, part, pieces, fills, at }) =>
        element('path', {
          'data-step': step,
          'data-element': fills ? `gap-${of}` : of,
          'data-part': part,
          fill: hex(part),
          d: regionText(
            pieces,
            at.map((value, index) => (index % 2 === 0 ? value : value + middle)),
          ),
        }),
      ),
    ];
  });
  return element('g', { id: 'paint' }, paint.join('\n'));
}
