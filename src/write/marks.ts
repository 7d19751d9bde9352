import type { Job } from '../job/job.ts';
import type { Schedule } from '../marks/schedule.ts';
import { writeTape } from '../units/index.ts';
import { formatMm } from './number.ts';

export { writeMarksDrawing } from './marks-drawing.ts';

/** A field as RFC 4180 wants it: quoted where it holds a comma, a quote or a line end, quotes doubled. */
const field = (text: string): string => (/[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

/** One record of a comma-separated file. */
export const row = (fields: string[]): string => `${fields.map(field).join(',')}\r\n`;

/**
 * Every mark, one a row; the spans of long lines, as rows of the line `span`; and the distances that prove the corners square, as
 * rows of the line `check`. The number of a span is its own; what it reaches from and to stands in `datum` and `for`.
 */
export function writeMarks(schedule: Schedule, job: Pick<Job, 'units' | 'step'>): string {
  const tape = (mm: number) => writeTape(mm, job.units, job.step);
  const marks = schedule.lines.flatMap((line) =>
    line.marks.map((mark) =>
      row([line.name, line.datum, String(mark.number), tape(mark.reads), formatMm(mark.true), mark.for]),
    ),
  );
  const spans = schedule.lines.flatMap((line) =>
    (line.spans ?? []).map(({ from, to, total }, at) => {
      const start = from === 0 ? 'the datum' : `mark ${from}`;
      return row(['span', `${start} of ${line.name}`, String(at + 1), tape(total), formatMm(total), `to mark ${to}`]);
    }),
  );
  const checks = schedule.checks.map((check, at) =>
    row(['check', 'from point to point', String(at + 1), tape(check.reads), formatMm(check.true), check.says]),
  );
  return [row(['line', 'datum', 'number', 'tape', 'true_mm', 'for']), ...marks, ...spans, ...checks].join('');
}
