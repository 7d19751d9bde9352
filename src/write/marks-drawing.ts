import type { Layout } from '../fit/layout.ts';
import type { Job } from '../job/job.ts';
import { alikeLines } from '../marks/alike.ts';
import { lineWords } from '../marks/line-words.ts';
import type { GuideLine, Schedule } from '../marks/schedule.ts';
import { sayTape } from '../marks/tape.ts';
import { writeTape } from '../units/index.ts';
import { listed, upper } from '../words.ts';
import { drawChecks } from './check-figure.ts';
import { INK, paperFor, SOFT } from './ink.ts';
import { loadLettering } from './label.ts';
import { formatMm } from './number.ts';
import { drawPole, polesOf, standPole } from './pole.ts';
import { Sketch } from './sketch.ts';
import { element, escapeText } from './svg.ts';
import { wrap } from './wrap.ts';

/** Sheets of A3 laid lengthwise one below the other (ISO 216: 420 × 297 mm), each with four columns. */
const PAGE = { width: 420, height: 297, margin: 13, columns: 4, gutter: 9, head: 18 };
const COLUMN = (PAGE.width - 2 * PAGE.margin - (PAGE.columns - 1) * PAGE.gutter) / PAGE.columns;
const ROOM = PAGE.height - 2 * PAGE.margin - PAGE.head;
const SIZE = 3.9;
const LARGE = 1.2 * SIZE;
const SMALL = 0.84 * SIZE;

/** Columns that fill one after the other, from the top down, sheet after sheet. */
class Columns {
  private column = 0;
  private used = 0;

  /** A place for something so tall: its left and its top, mm of the page. */
  place(height: number): { x: number; y: number } {
    if (this.used > 0 && this.used + height > ROOM) {
      this.column++;
      this.used = 0;
    }
    const sheet = Math.floor(this.column / PAGE.columns);
    const x = PAGE.margin + (this.column % PAGE.columns) * (COLUMN + PAGE.gutter);
    const y = sheet * PAGE.height + PAGE.margin + PAGE.head + this.used;
    this.used += height;
    return { x, y };
  }

  get sheets(): number {
    return Math.floor(this.column / PAGE.columns) + 1;
  }
}

/**
 * Every guide line as a measuring pole, to a stated scale and broken where it is long, with all its readings; then the
 * distances that prove the corners square. SVG text, lengths in mm of the page.
 */
export const writeMarksDrawing = (schedule: Schedule, layout: Layout, job: Job): Promise<string> =>
  drawMarks(schedule, job, (sketch, left, top, room, tape) =>
    drawChecks(sketch, { schedule, layout, job, tape }, left, top, room),
  );

/** Draws the square checks into a column and says where they end; mm of the page. */
type CheckFigure = (sketch: Sketch, left: number, top: number, room: number, tape: (mm: number) => string) => number;

/** The same for work whose checks are drawn in another way. */
export async function drawMarks(schedule: Schedule, job: Job, figure: CheckFigure): Promise<string> {
  const sketch = new Sketch(await loadLettering(), SIZE);
  const tape = (mm: number) => writeTape(mm, job.units, job.step);
  const columns = new Columns();
  const write = (text: string, x: number, y: number, size: number, fill?: string): void =>
    sketch.label(text, [x, y], 'start', fill === undefined ? { size } : { size, fill });

  const drawLines = (lines: GuideLine[]): void => {
    const [first] = lines;
    const data = new Set(lines.map((line) => line.datum));
    const from =
      data.size === 1
        ? `From ${first!.datum}`
        : upper(lines.map((line) => `${lineWords(line.name)} from ${line.datum}`).join('; '));
    const told = lines.length > 1 ? `${from}.` : `${from}. ${first!.says}`;
    for (const [at, pole] of polesOf(first!, ROOM - 36).entries()) {
      const name = `${upper(listed(lines.map((line) => lineWords(line.name))))}${at > 0 ? ', continued' : ''}`;
      const heading = wrap(name, COLUMN, (words) => sketch.width(words, LARGE));
      const body = wrap(`${at > 0 ? '' : told} Scale 1:${pole.scale}.`, COLUMN, (words) => sketch.width(words, SMALL));
      const standing = standPole(pole);
      const text = heading.length * 5.4 + body.length * 4.4 + 1.5;
      const { x, y } = columns.place(text + standing.above + standing.below + 7);
      heading.forEach((line, row) => {
        write(line, x, y + 2.7 + row * 5.4, LARGE);
      });
      body.forEach((line, row) => {
        write(line, x, y + heading.length * 5.4 + 2.2 + row * 4.4, SMALL, SOFT);
      });
      drawPole(sketch, pole, standing, [x + 3, y + text + standing.above], COLUMN - 3, tape);
    }
    const reading = (number: number) => (number === 0 ? 'the datum' : tape(first!.marks[number - 1]!.reads));
    for (const [at, { from, to, total }] of (first!.spans ?? []).entries()) {
      const isLast = at + 1 === first!.spans!.length;
      const { x, y } = columns.place((at === 0 ? 9.4 : 4.8) + (isLast ? 6.4 : 0));
      if (at === 0) write(`${upper(lineWords(first!.name))} in parts, as a check:`, x, y + 2.2, SMALL, SOFT);
      write(`from ${reading(from)} to ${reading(to)}: ${tape(total)}`, x + 3, y + (at === 0 ? 7 : 2.4), SMALL);
    }
  };
  const drawSquare = (): void => {
    const height = figure(new Sketch(sketch.lettering, SIZE), 0, 7, COLUMN, tape);
    const { x, y } = columns.place(height + 4);
    write('Square checks', x, y + 2.7, LARGE);
    figure(sketch, x, y + 7, COLUMN, tape);
  };
  // Borders and lettering are marked when the field is known to be square.
  const gathered = alikeLines(schedule.lines);
  const isLater = ([line]: GuideLine[]) => /^(inner-)?border-|lettering-/.test(line!.name);
  gathered.filter((lines) => !isLater(lines)).forEach(drawLines);
  drawSquare();
  gathered.filter(isLater).forEach(drawLines);

  const pages = columns.sheets;
  const head = new Sketch(sketch.lettering, SIZE);
  const title = `${job.title}: marks`;
  for (let page = 0; page < pages; page++) {
    const top = page * PAGE.height + PAGE.margin;
    if (sketch.lettering.canSet(title)) head.label(title, [PAGE.margin, top + 2.5], 'start', { size: 2 * SIZE });
    const told = sayTape(schedule.tape, job.units, job.step);
    head.label(told, [PAGE.margin, top + 11], 'start', { size: 0.84 * SIZE, fill: SOFT });
    head.label(`sheet ${page + 1} of ${pages}`, [PAGE.width - PAGE.margin, top + 2.5], 'end');
    head.path(
      [
        [PAGE.margin, top + 8],
        [PAGE.width - PAGE.margin, top + 8],
      ],
      { 'stroke-width': 0.3 },
    );
  }
  const size = { width: PAGE.width, height: pages * PAGE.height };
  const desc = `Every mark of every guide line, measured from the one datum of its line and rounded on its own to ${tape(job.step)}. ${schedule.lines.length} lines, ${schedule.checks.length} square checks.`;
  return `${element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width: `${formatMm(size.width)}mm`,
      height: `${formatMm(size.height)}mm`,
      viewBox: `0 0 ${formatMm(size.width)} ${formatMm(size.height)}`,
      role: 'img',
      'aria-labelledby': 'marks-title marks-desc',
    },
    [
      '',
      element('title', { id: 'marks-title' }, escapeText(title)),
      element('desc', { id: 'marks-desc' }, escapeText(desc)),
      element('path', { d: `M0 0H${size.width}V${size.height}H0Z`, fill: paperFor([]) }),
      element('g', { id: 'marks', fill: 'none', stroke: INK, 'stroke-width': 0.2 }, `\n${head.text}\n${sketch.text}\n`),
      '',
    ].join('\n'),
  )}\n`;
}
