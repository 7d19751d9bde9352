import type { Job } from '../job/job.ts';
import { lineWords } from '../marks/line-words.ts';
import type { NewLine } from '../refit/lines.ts';
import { writeTape } from '../units/index.ts';
import { upper } from '../words.ts';
import { htmlPage } from './html-page.ts';
import { type Readings, readingsOf, setFractions } from './job-sheet/reading.ts';
import { styleOf } from './job-sheet/style.ts';
import { row } from './marks.ts';
import { formatMm } from './number.ts';
import { shortly } from './shortly.ts';
import { escapeText } from './svg.ts';

/** The new marks, one a row, with what the tape read for each before. */
function writeTable(lines: NewLine[], job: Pick<Job, 'units' | 'step'>): string {
  const tape = (mm: number) => writeTape(mm, job.units, job.step);
  const rows = lines.flatMap((line) =>
    line.marks.map((mark) =>
      row([
        line.name,
        line.datum,
        `${mark.number}`,
        tape(mark.reads),
        formatMm(mark.true),
        mark.for,
        tape(mark.before),
      ]),
    ),
  );
  return [row(['line', 'datum', 'number', 'tape', 'true_mm', 'for', 'before']), ...rows].join('');
}

/** Lines that carry the same marks, under one heading. */
function grouped(lines: NewLine[]): NewLine[][] {
  const groups = new Map<string, NewLine[]>();
  for (const line of lines) {
    const key = JSON.stringify(line.marks);
    groups.set(key, [...(groups.get(key) ?? []), line]);
  }
  return [...groups.values()];
}

function table(lines: NewLine[], { tape }: Readings): string {
  const data = [...new Set(lines.map((line) => line.datum))].map(setFractions).join('; ');
  const rows = lines[0]!.marks.map(
    ({ number, reads, before, for: use }) =>
      `<tr><td class="box"></td><td class="no">${number}</td><td class="read">${tape(reads)}</td><td class="was">${reads === before ? 'as before' : tape(before)}</td><td>${escapeText(shortly(use))}</td></tr>`,
  );
  const names = upper(lines.map(({ name }) => escapeText(lineWords(name))).join(', '));
  return `<section><h3>${names}</h3><p class="soft">From ${data}.</p><table><thead><tr><th scope="col">Done</th><th scope="col">No.</th><th scope="col" class="read">Tape</th><th scope="col">Before</th><th scope="col">For</th></tr></thead><tbody>${rows.join('')}</tbody></table></section>`;
}

/** What the page has beside the look of the job sheet. */
const LOOK =
  'td.was { color: var(--soft); white-space: nowrap; padding-right: 4mm; } h2 + p { margin-top: 2mm; } .says { font-variant-ligatures: none; }';

function writePage(
  number: number,
  lines: NewLine[],
  says: string[],
  job: Pick<Job, 'title' | 'units' | 'step' | 'system'>,
): string {
  const title = escapeText(job.title);
  const readings = readingsOf(job);
  return htmlPage(`${title}: re-fit ${number}`, `${styleOf(job.system === 'inch' ? 'letter' : 'A4')}${LOOK}`, [
    `<header><div class="head"><h1>${title}</h1><div class="kind">Re-fit ${number}</div></div></header>`,
    '<main>',
    ...says.map((line) => `<p class="says">${setFractions(line)}</p>`),
    `<h2>New marks for what is left</h2><p>Rub out the old marks of these lines from the first number on, so that nobody takes one for the other. Pull every new mark from its datum, without moving the tape. Sheets stay as they are cut: centre each between its marks.</p>`,
    `<div class="tables">${grouped(lines)
      .map((group) => table(group, readings))
      .join('')}</div>`,
    '</main>',
  ]);
}

/** The files of one re-fit, by name: the marks as a list and as a page to print. Nothing of an earlier schedule is in their names. */
export function writeRefit(
  number: number,
  lines: NewLine[],
  says: string[],
  job: Pick<Job, 'title' | 'units' | 'step' | 'system'>,
): Map<string, string> {
  return new Map([
    [`refit-${number}.csv`, writeTable(lines, job)],
    [`refit-${number}.html`, writePage(number, lines, says, job)],
  ]);
}
