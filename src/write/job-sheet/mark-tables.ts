import type { Job } from '../../job/job.ts';
import { alikeLines } from '../../marks/alike.ts';
import { stepDrift } from '../../marks/drift.ts';
import type { GuideLine, Schedule } from '../../marks/schedule.ts';
import { readingDoubt } from '../../marks/tape.ts';
import { shortly } from '../shortly.ts';
import { escapeText } from '../svg.ts';
import { listed, type Readings, readingsOf, setFractions } from './reading.ts';

/** Tables of more rows than this are set in columns. */
const LONG = 12;

/** `repeats 4–5` stays on one line. */
const setReason = (reason: string): string =>
  escapeText(shortly(reason)).replace(/\w+ \d+–\d+/g, '<span class="n">$&</span>');

const upper = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

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
  return `<section class="${size}"><h3>${name}</h3><p class="soft">${from}.${says}</p><div class="rows"><table>${head}<tbody>${rows.join('')}</tbody></table></div></section>`;
}

/** Why every mark starts at the datum, with the number that stepping a sheet along would come to. */
function whyOneDatum(schedule: Schedule, job: Job, { length }: Readings): string {
  const axis = schedule.lines.find((line) => line.name === 'axis');
  const steps = axis?.marks.filter((mark) => mark.for.startsWith('between')).length ?? 0;
  const each = schedule.step / 2;
  const fine = (mm: number) => readingsOf({ units: job.units, step: each }).length(mm);
  const far = axis?.marks.at(-1)?.true ?? 0;
  const doubt = readingDoubt(far, schedule.step, job.system);
  const stepped =
    steps > 1
      ? ` Setting each repeat against the one before, ${fine(each)} out every time, would end ${fine(stepDrift(steps, each, 0))} out.`
      : '';
  return `<p>Pull every mark of a line from its datum, without moving the tape; never add one mark to the next. Each is rounded by itself, so none is more than ${fine(each)} from true.${stepped} The last mark of the axis is measured too: if it falls within ${length(Math.ceil(doubt / schedule.step - 1e-9) * schedule.step)} of the place it names, the measurements of this job were right; if not, measure again before going on.</p>`;
}

export function markTables(schedule: Schedule, job: Job, readings: Readings): string {
  const tables = alikeLines(schedule.lines).map((lines) => markTable(lines, readings));
  return `<section class="page"><h2>Marks</h2>${whyOneDatum(schedule, job, readings)}<div class="tables">${tables.join('')}</div></section>`;
}

export function checkTable(schedule: Schedule, { tape }: Readings): string {
  const rows = schedule.checks.map(
    (check) =>
      `<tr><td class="box"></td><td class="read">${tape(check.reads)}</td><td>${setFractions(check.says)}</td><td>${setFractions(check.otherwise)}</td></tr>`,
  );
  return `<section class="checks"><h2>Is it square?</h2><p>Before any colour goes on. Equal diagonals prove a rectangle only when opposite sides are equal too.</p><table><thead><tr><th scope="col">Done</th><th scope="col" class="read">Tape</th><th scope="col">Between</th><th scope="col">If it is off</th></tr></thead><tbody>${rows.join('')}</tbody></table></section>`;
}
