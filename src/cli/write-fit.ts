import { sayCloth } from '../cloth/says.ts';
import type { Fit, Layout, Pair } from '../fit/layout.ts';
import type { Job } from '../job/job.ts';
import type { Site } from '../site/site.ts';
import { sayFlight } from '../stairs/says.ts';
import { writeLength } from '../units/index.ts';
import { halves } from '../words.ts';
import type { Inks } from './inks.ts';
import { wrap, writeTable } from './table.ts';

function writeStretch(stretch: number): string {
  const percent = (stretch - 1) * 100;
  if (Math.abs(percent) < 0.005) return 'true';
  return `${percent > 0 ? '+' : '−'}${Math.max(0.01, Math.abs(percent)).toFixed(2)} %`;
}

/** One row of the table. A length the tape cannot show is marked with ~. */
function row(layout: Layout, job: Job): string[] {
  const length = (mm: number) => {
    const steps = mm / job.step;
    return `${Math.abs(steps - Math.round(steps)) > 1e-6 ? '~' : ''}${writeLength(mm, job.units, job.step)}`;
  };
  const pair = ({ across, along }: Pair, write: (value: number) => string) => `${write(across)} × ${write(along)}`;
  return [
    `${layout.rank}`,
    pair(layout.overall, length),
    layout.border === 0 ? 'none' : length(layout.border),
    pair(layout.repeats, halves),
    pair(layout.pitch, length),
    writeStretch(layout.stretch),
    layout.endGap === 0 ? 'none' : length(layout.endGap),
  ];
}

const HEAD = ['', 'size over all', 'border', 'repeats', 'one repeat', 'stretch', 'end gap'];

/** The table without the columns in which no layout has anything. */
function table(rows: string[][]): string[] {
  const used = HEAD.map((_, at) => rows.some((row) => row[at] !== 'none'));
  return writeTable(
    [HEAD, ...rows].map((row) => row.filter((_, at) => used[at])),
    [0],
  );
}

/** What is known of the place, and what the best layout makes of it. */
function notesOf(job: Job, site: Site, { layouts }: Fit): string[] {
  const best = layouts[0];
  return best ? [...site.notes, ...sayCloth(job, best), ...sayFlight(job, best)] : site.notes;
}

/**
 * The best layouts as a person reads them: a row of numbers, the line that explains it, and what the search covered.
 * @param room how many characters a line may hold
 */
export function writeFit({ job, site, fit }: { job: Job; site: Site; fit: Fit }, inks: Inks, room: number): string {
  const [head = '', ...rows] = table(fit.layouts.map((layout) => row(layout, job)));
  const lines = [
    inks.strong(job.title),
    ...notesOf(job, site, fit).flatMap((note) => wrap(note, room, 0)),
    '',
    inks.faint(head),
  ];
  for (const [at, layout] of fit.layouts.entries()) {
    lines.push(inks.strong(rows[at]!), ...wrap(layout.says, room, 4).map(inks.faint));
  }
  const searched = fit.searched.toLocaleString('en');
  lines.push(
    '',
    'Sizes are across × along. ~ is rounded to the tape; stretch is how far a repeat is drawn out (+) or in (−) along.',
    `${searched} combinations covered, every one of them priced or ruled out by a stated bound (${fit.proof}):`,
    'within the limits of the job there is no better layout than 1.',
  );
  return lines.join('\n');
}
