import type { Job } from '../../job/job.ts';
import { alikeLines } from '../../marks/alike.ts';
import { lineWords } from '../../marks/line-words.ts';
import type { GuideLine, Schedule } from '../../marks/schedule.ts';
import { sayBounds } from '../../marks/spans.ts';
import { sayTape } from '../../marks/tape.ts';
import { readingDoubt } from '../../units/index.ts';
import { listed, upper } from '../../words.ts';
import { shortly } from '../shortly.ts';
import { type Block, heading, words } from './block.ts';
import { plainReadings, type Readings } from './reading.ts';

/** Tables of more rows than this are set in columns. */
const LONG = 8;

/** `repeats 4–5` stays on one line. */
const setReason = (reason: string): string => shortly(reason).replace(/(\w+) (\d+–\d+)/g, '$1\u00a0$2');

/** The parts of a long line, each with the total it closes on. They prove marks; none is made from them. */
function spanLine({ spans = [] }: GuideLine, { tape }: Pick<Readings, 'tape'>): Block[] {
  if (spans.length === 0) return [];
  const parts = spans.map((span) => `${sayBounds(span)}: ${tape(span.total)}`.replaceAll(' ', '\u00a0'));
  return [
    words(
      `In parts, as a check beside the marks: ${parts.join('; ')}. A part that is out by more than a mark of the tape at either end: pull its marks again from the datum.`,
    ),
  ];
}

function markTable(lines: GuideLine[], readings: Readings): Block[] {
  const [first] = lines;
  const data = new Set(lines.map((line) => line.datum));
  const from =
    data.size === 1
      ? `From ${first!.datum}`
      : upper(lines.map((line) => `${lineWords(line.name)} from ${line.datum}`).join('; '));
  const says = lines.length === 1 ? ` ${first!.says}` : '';
  const rows = first!.marks.map((mark) => [`${mark.number}`, readings.tape(mark.reads), setReason(mark.for)]);
  return [
    heading(3, upper(listed(lines.map((line) => lineWords(line.name))))),
    words(`${from}.${says}`, 'soft'),
    {
      kind: 'table',
      head: ['No.', 'Tape', 'For'],
      rows,
      ticked: true,
      reading: 1,
      narrow: [0, 1],
      ...(rows.length > LONG ? { columns: 2 } : {}),
    },
    ...spanLine(first!, readings),
  ];
}

/** Why every mark starts at the datum, and how far the tape can be trusted. */
function whyOneDatum(schedule: Schedule, job: Job, { length }: Readings): Block {
  const axis = schedule.lines.find((line) => line.name === 'axis') ?? schedule.lines[0];
  const each = schedule.step / 2;
  const fine = (mm: number) => plainReadings({ units: job.units, step: each }).length(mm);
  const far = axis?.marks.at(-1)?.true ?? 0;
  const doubt = readingDoubt(far, schedule.step, job.system);
  const last = length(Math.ceil(doubt / schedule.step - 1e-9) * schedule.step);
  const trial = axis
    ? ` The last mark of the ${lineWords(axis.name)} is measured too: if it falls within ${last} of the place it names, the measurements of this job were right; if not, measure again before going on.`
    : '';
  return words(
    `Pull every mark of a line from its datum, without moving the tape; never add one mark to the next. Each is rounded by itself, so none is more than ${fine(each)} from true.${trial} ${sayTape(schedule.tape, job.units, schedule.step)} The same marks stand in large type in marks-large.html, for a phone or a wall.`,
  );
}

/** Every guide line with its marks; lines alike stand once. */
export function markTables(schedule: Schedule, job: Job, readings: Readings): Block[] {
  return [
    { kind: 'page' },
    heading(2, 'Marks'),
    whyOneDatum(schedule, job, readings),
    ...alikeLines(schedule.lines).flatMap((lines) => markTable(lines, readings)),
  ];
}

/** The distances that prove the corners square, each with what to do when it is off. */
export function checkTable(schedule: Schedule, { tape }: Readings): Block[] {
  if (schedule.checks.length === 0) return [];
  return [
    heading(2, 'Is it square?'),
    words('Before any colour goes on. Equal diagonals prove a rectangle only when opposite sides are equal too.'),
    {
      kind: 'table',
      head: ['Tape', 'Between', 'If it is off'],
      rows: schedule.checks.map((check) => [tape(check.reads), check.says, check.otherwise]),
      ticked: true,
      reading: 0,
      narrow: [0],
    },
  ];
}
