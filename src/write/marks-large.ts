import type { Job } from '../job/job.ts';
import { alikeLines } from '../marks/alike.ts';
import { lineWords } from '../marks/line-words.ts';
import type { GuideLine, Mark, Schedule } from '../marks/schedule.ts';
import { upper } from '../words.ts';
import { FACE } from './face.ts';
import { htmlPage } from './html-page.ts';
import { INK, RED, SOFT } from './ink.ts';
import { type Readings, readingsOf, setFractions } from './job-sheet/reading.ts';
import { escapeText } from './svg.ts';

/** One mark fills the height of a screen, so that it is read from where one stands; on paper eight share a page. */
const STYLE = `
@font-face { font-family: Sheet; src: url(${FACE}) format('woff'); unicode-range: U+0-2031, U+2033-FFFF; }
* { box-sizing: border-box; }
html { scroll-snap-type: y proximity; -webkit-print-color-adjust: exact; print-color-adjust: exact; }
body { margin: 0; background: #fdfaf3; color: ${INK}; font: 5vmin/1.25 Sheet, sans-serif; }
h1, h2, p { margin: 0; font-weight: 500; }
.top, .mark { min-height: 100vh; min-height: 100svh; padding: 5vmin; display: flex; flex-direction: column; justify-content: center; border-bottom: 1px solid #cdbfa6; scroll-snap-align: start; }
.top h1 { font-size: 10vmin; line-height: 1.1; }
.line { font-size: 7vmin; color: ${RED}; }
.soft { color: ${SOFT}; }
.tape { font-size: min(42vh, calc(170vw / var(--wide))); line-height: 1.1; white-space: nowrap; }
.for { font-size: 7vmin; }
.f { font-feature-settings: 'frac'; }
.n { white-space: nowrap; }
@page { margin: 12mm; }
@media print {
  body { background: #fff; font-size: 11pt; }
  .top, .mark { min-height: 0; padding: 2.5mm 0; break-inside: avoid; }
  .top { break-after: avoid; }
  .top + .mark { break-before: avoid; }
  .mark { display: grid; grid-template-columns: 1fr auto; column-gap: 6mm; align-items: center; }
  .mark .tape { grid-column: 2; grid-row: 1 / 4; font-size: 54pt; }
  .mark .tape ~ p { grid-column: 1; }
  .top h1 { font-size: 26pt; } .line, .for { font-size: 15pt; }
}
`;

/** `axis, left edge, right edge`, each an element of its own. */
const namesOf = (lines: GuideLine[]): string =>
  lines.map(({ name }) => `<span class="name">${escapeText(lineWords(name))}</span>`).join(', ');

/** A reading as large as the screen is wide: its figures are about half as wide as high, those of a fraction smaller. */
function numeral(reading: string): string {
  const plain = reading
    .replace(/<[^>]*>/g, '')
    .replace(/\d+\/\d+/, (fraction) => '0'.repeat(Math.ceil(0.6 * fraction.length)));
  return `<p class="tape" style="--wide:${Math.max(4, plain.length)}">${reading}</p>`;
}

function markSection(lines: GuideLine[], mark: Mark, { tape }: Readings): string {
  const spans = (lines[0]!.spans ?? []).filter((span) => span.to === mark.number);
  const closes = spans.map(
    ({ from, total }) =>
      `<p class="soft">from ${from === 0 ? 'the datum' : `mark ${from}`} to here: ${tape(total)}</p>`,
  );
  return `<section class="mark"><p class="line">${namesOf(lines)} · mark <span class="no">${mark.number}</span></p>${numeral(tape(mark.reads))}<p class="for">${escapeText(mark.for)}</p>${closes.join('')}</section>`;
}

function lineSections(lines: GuideLine[], readings: Readings): string {
  const [first] = lines;
  const data = [...new Set(lines.map((line) => line.datum))].map(setFractions).join('; ');
  const says = lines.map((line) => `<p class="soft">${setFractions(line.says)}</p>`).join('');
  const marks = first!.marks.map((mark) => markSection(lines, mark, readings));
  return `<section class="top"><h2 class="line">${upper(lines.map(({ name }) => escapeText(lineWords(name))).join(', '))}</h2><p>Every mark from ${data}.</p>${says}</section>\n${marks.join('\n')}`;
}

function checkSections({ checks }: Schedule, { tape }: Readings): string[] {
  return checks.map(
    (check, at) =>
      `<section class="mark"><p class="line"><span class="name">check</span> · <span class="no">${at + 1}</span></p>${numeral(tape(check.reads))}<p>${setFractions(check.says)}</p><p class="soft">${setFractions(check.otherwise)}</p></section>`,
  );
}

/** Every mark in numerals to be read from standing height: one to a screen, several to a page. HTML that stands by itself. */
export function writeMarksLarge(schedule: Schedule, job: Pick<Job, 'title' | 'units' | 'step'>): string {
  const readings = readingsOf(job);
  const title = escapeText(job.title);
  return htmlPage(`${title}: marks in large type`, STYLE, [
    `<section class="top"><h1>${title}</h1><p>Pull every mark of a line from its datum, without moving the tape.</p></section>`,
    ...alikeLines(schedule.lines).map((lines) => lineSections(lines, readings)),
    ...checkSections(schedule, readings),
  ]);
}
