import type { Job } from '../../job/job.ts';
import { alikeLines } from '../../marks/alike.ts';
import type { GuideLine, Schedule } from '../../marks/schedule.ts';
import { sayBounds } from '../../marks/spans.ts';
import { sayTape } from '../../marks/tape.ts';
import { readingDoubt } from '../../units/index.ts';
import { drawDrift, driftOf, errorStep } from '../drift.ts';
import type { Lettering } from '../lettering.ts';
import { shortly } from '../shortly.ts';
import { escapeText } from '../svg.ts';
import { listed, type Readings, readingsOf, setFractions } from './reading.ts';

/** Tables of more rows than this are set in columns. */
const LONG = 12;

/** `repeats 4–5` stays on one line. */
const setReason = (reason: string): string =>
  escapeText(shortly(reason)).replace(/\w+ \d+–\d+/g, '<span class="n">$&</span>');

const upper = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** The parts of a long line, each with the total it closes on. They prove marks; none is made from them. */
function spanLine({ spans = [] }: GuideLine, { tape }: Pick<Readings, 'tape'>): string {
  if (spans.length === 0) return '';
  const parts = spans.map((span) => `<span class="n">${sayBounds(span)}: <b>${tape(span.total)}</b></span>`);
  return `<p>In parts, as a check beside the marks: ${parts.join('; ')}. A part that is out by more than a mark of the tape at either end: pull its marks again from the datum.</p>`;
}

function markTable(lines: GuideLine[], { tape }: Readings): string {
  const [first] = lines;
  const name = upper(listed(lines.map((line) => escapeText(line.name))));
  const data = new Set(lines.map((line) => line.datum));
  const from =
    data.size === 1
      ? `From ${escapeText(first!.datum)}`
      : upper(lines.map((line) => `${escapeText(line.name)} from ${escapeText(line.datum)}`).join('; '));
  const says = lines.length === 1 ? ` ${escapeText(first!.says)}` : '';
  const rows = first!.marks.map(
    (mark) =>
      `<tr><td class="box"></td><td class="no">${mark.number}</td><td class="read">${tape(mark.reads)}</td><td>${setReason(mark.for)}</td></tr>`,
  );
  const head =
    '<thead><tr><th scope="col">Done</th><th scope="col">No.</th><th scope="col" class="read">Tape</th><th scope="col">For</th></tr></thead>';
  const size = rows.length > LONG ? 'long' : 'short';
  return `<section class="${size}"><h3>${name}</h3><p class="soft">${from}.${says}</p><div class="rows"><table>${head}<tbody>${rows.join('')}</tbody></table></div>${spanLine(first!, { tape })}</section>`;
}

/** How many repeats are set one after another down the axis, from the first one on. */
const placements = (schedule: Schedule): number =>
  schedule.lines.find((line) => line.name === 'axis')?.marks.filter((mark) => mark.for.startsWith('between')).length ??
  0;

/** Why every mark starts at the datum, and how far the tape can be trusted. */
function whyOneDatum(schedule: Schedule, job: Job, { length }: Readings): string {
  const axis = schedule.lines.find((line) => line.name === 'axis');
  const each = schedule.step / 2;
  const fine = (mm: number) => readingsOf({ units: job.units, step: each }).length(mm);
  const far = axis?.marks.at(-1)?.true ?? 0;
  const doubt = readingDoubt(far, schedule.step, job.system);
  return `<p>Pull every mark of a line from its datum, without moving the tape; never add one mark to the next. Each is rounded by itself, so none is more than ${fine(each)} from true. The last mark of the axis is measured too: if it falls within ${length(Math.ceil(doubt / schedule.step - 1e-9) * schedule.step)} of the place it names, the measurements of this job were right; if not, measure again before going on. ${setFractions(sayTape(schedule.tape, job.units, schedule.step))} The same marks stand in large type in marks-large.html, for a phone or a wall.</p>`;
}

/** What stepping a sheet along would come to beside what the marks come to, and how often a mark is needed at least. */
function driftPart(schedule: Schedule, job: Job, lettering: Lettering): string {
  const count = placements(schedule);
  if (count < 2) return '';
  const drift = driftOf(count, job);
  const fine = (mm: number) => readingsOf({ units: job.units, step: errorStep(job.system) }).length(mm);
  const { bias, spread, limit, stepped, marked, every } = drift;
  const control =
    every >= count
      ? `Over these ${count} it would stay within ${fine(limit)} all the same.`
      : every > 0
        ? `To stay within ${fine(limit)}, check against a mark at least every ${every === 1 ? 'repeat' : `${every} repeats`}.`
        : `No two repeats may be stepped off without a mark to stay within ${fine(limit)}.`;
  return `<section class="checks"><h3>Why not one from the other?</h3><p>Placed ${fine(bias)} out the same way each time and ${fine(spread)} at random (a careful hand; common practice), repeats set one from the other may be ${fine(stepped)} out after ${count}. Set to marks, each is within ${fine(marked)}, the last like the first. ${control} If it has crept all the same, <b>evenfield refit</b> gives new marks for what is left.</p>${drawDrift(drift, job, lettering)}</section>`;
}

export function markTables(schedule: Schedule, job: Job, readings: Readings, lettering: Lettering): string {
  const tables = alikeLines(schedule.lines).map((lines) => markTable(lines, readings));
  return `<section class="page"><h2>Marks</h2>${whyOneDatum(schedule, job, readings)}<div class="tables">${tables.join('')}</div>${driftPart(schedule, job, lettering)}</section>`;
}

export function checkTable(schedule: Schedule, { tape }: Readings): string {
  const rows = schedule.checks.map(
    (check) =>
      `<tr><td class="box"></td><td class="read">${tape(check.reads)}</td><td>${setFractions(check.says)}</td><td>${setFractions(check.otherwise)}</td></tr>`,
  );
  return `<section class="checks"><h2>Is it square?</h2><p>Before any colour goes on. Equal diagonals prove a rectangle only when opposite sides are equal too.</p><table><thead><tr><th scope="col">Done</th><th scope="col" class="read">Tape</th><th scope="col">Between</th><th scope="col">If it is off</th></tr></thead><tbody>${rows.join('')}</tbody></table></section>`;
}
