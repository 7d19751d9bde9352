import { type Claim, DRAWN, equal, type Proof, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { across, along } from '../measure/frame.ts';
import { plainWords, readBlocks } from '../read/blocks.ts';
import { lineNamed } from '../read/line-named.ts';
import type { MarkRow } from '../read/marks.ts';
import { readPath } from '../read/path.ts';
import { LENGTH, shortUse } from '../read/said.ts';
import { readSvg, type Svg } from '../read/svg.ts';

const FILE = 'marks.svg';
/** Width of the band that a line is drawn as, mm of the page. */
const BAND = 5;

export const proof: Proof = {
  claims:
    'marks.svg has every reading in its turn, with what it is for, draws it to the scale that it tells, and says of each line what the job sheet says',
  files: ['job-sheet.html', 'marks.csv', 'marks.svg'],
  method:
    'words beside the outlines compared with marks.csv and the job sheet; heights of the bands between marks added up',
  tolerance: 'none for words; 0.05 mm on the page',
};

/** The drawing of the marks shows every reading of marks.csv, line by line. */
export default function marksDrawing(set: FileSet): Claim[] {
  const svg = set.read(FILE, readSvg);
  if (!svg.ok) return [unproven(FILE, 'the drawing of the marks can be read', svg.says)];
  const marks = set.marks();
  if (!marks.ok) return [unproven(FILE, 'the drawing shows every mark', marks.says)];
  const { labels, bands } = piecesOf(svg.value);
  const lacking = marks.value.find((row) => row.line !== 'check' && !labels.some((label) => label.includes(row.tape)));
  const { words: drawn, heights } = linesOf(labels, bands, new Set(marks.value.map(({ line }) => line)));
  const lines = [...new Set(marks.value.map(({ line }) => line))].filter((line) => line !== 'check' && line !== 'span');
  const wrong = lines.find(
    (line) =>
      !inTurn(
        drawn.get(line) ?? [],
        marks.value.filter((row) => row.line === line),
      ),
  );
  return [
    equal(FILE, 'the drawing shows every mark', lacking ? `not ${lacking.tape} of ${lacking.line}` : 'all', 'all'),
    ...notes(set, labels, lines, drawn),
    equal(
      FILE,
      'every line of the drawing has its readings in turn, each with what it is for, and no others',
      wrong ? `not ${wrong}` : 'all',
      'all',
    ),
    toScale(lines, marks.value, drawn, heights),
  ];
}

/** The labels of the drawing in their order, and the heights of the bands that are drawn after each of them. */
function piecesOf({ paths }: Svg): { labels: string[]; bands: Map<number, number[]> } {
  const labels: string[] = [];
  const bands = new Map<number, number[]>();
  for (const { attributes } of paths) {
    const { 'data-label': label, stroke, d } = attributes;
    if (label !== undefined) labels.push(label);
    else if (stroke === 'none') {
      const drawn = readPath(d ?? '');
      const frame = drawn.ok && drawn.value.outlines.length === 1 ? drawn.value.outlines[0]!.frame : undefined;
      if (!frame || Math.abs(across(frame) - BAND) > DRAWN) continue;
      bands.set(labels.length - 1, [...(bands.get(labels.length - 1) ?? []), along(frame)]);
    }
  }
  return { labels, bands };
}

/** Every mark stands as far up its line as the scale beside it says. */
function toScale(
  lines: readonly string[],
  rows: readonly MarkRow[],
  drawn: ReadonlyMap<string, string[]>,
  heights: ReadonlyMap<string, number[]>,
): Claim {
  const wrong = lines.find((line) => {
    const scales = [...(drawn.get(line) ?? []).join(' ').matchAll(/Scale 1:(\d+(?:\.\d+)?)\./g)].map(([, n]) =>
      Number(n),
    );
    const [scale = Number.NaN] = scales;
    if (!scales.every((one) => one === scale)) return true;
    let at = 0;
    const bounds = [0, ...(heights.get(line) ?? []).map((height) => (at += height))];
    const own = rows.filter((row) => row.line === line);
    return !own.every((row) => bounds.some((bound) => Math.abs(bound - row.true / scale) <= DRAWN));
  });
  return equal(FILE, 'every mark is drawn to the scale that is told', wrong ? `not on ${wrong}` : 'it is', 'it is');
}

/** The heading of what belongs to no line. */
const CHECKS = 'Square checks';
/** What the drawing says of every line and of the tape, it says as the job sheet does. */
function notes(
  set: FileSet,
  labels: readonly string[],
  lines: readonly string[],
  drawn: ReadonlyMap<string, string[]>,
): Claim[] {
  const claim = 'the drawing says of every line what the job sheet says of it';
  const page = set.read('job-sheet.html', readBlocks);
  if (!page.ok) return [unproven(FILE, claim, page.says)];
  const said = page.value
    .map(({ cells }) => cells.join(' '))
    .join(' ')
    .toLowerCase();
  const told = (words: string): boolean => said.includes(words.toLowerCase());
  const wrong = lines.find((line) => {
    const own = drawn.get(line) ?? [];
    const first = own.findIndex((label) => LENGTH_ALONE.test(label));
    return !told(
      plainWords(
        own
          .slice(0, Math.max(0, first))
          .join(' ')
          .replace(/ ?Scale 1:[\d.]+$/, ''),
      ),
    );
  });
  const tape = labels.map(plainWords).find((label) => /^A tape in good order/.test(label) && !told(label));
  return [equal(FILE, claim, wrong ? `not of ${wrong}` : (tape?.slice(0, 80) ?? 'it does'), 'it does')];
}

/** A heading goes over no more pieces than this. */
const PIECES = 8;

/** What is written under the heading of every line; a heading names one line or several that are alike, over one piece or more. */
function linesOf(
  labels: readonly string[],
  bands: ReadonlyMap<number, number[]>,
  known: ReadonlySet<string>,
): { words: Map<string, string[]>; heights: Map<string, number[]> } {
  const [found, heights] = [new Map<string, string[]>(), new Map<string, number[]>()];
  const pieces = labels.map(plainWords);
  let names: string[] = [];
  for (let at = 0; at < pieces.length; at++) {
    const [heading, over] = headingAt(pieces, at, known);
    if (heading.length > 0) {
      names = heading;
      at += over - 1;
    } else if (pieces[at] === CHECKS) names = [];
    else for (const name of names) found.set(name, [...(found.get(name) ?? []), pieces[at]!]);
    const after = bands.get(at);
    if (after) for (const name of names) heights.set(name, [...(heights.get(name) ?? []), ...after]);
  }
  return { words: found, heights };
}

/** The lines that are named from here on, and over how many pieces. */
function headingAt(pieces: readonly string[], at: number, known: ReadonlySet<string>): [string[], number] {
  // A heading begins large; what a mark is for does not, though it may have the same words.
  if (!/^[A-Z]/.test(pieces[at]!)) return [[], 0];
  for (let over = 1; over <= PIECES; over++) {
    const words = pieces
      .slice(at, at + over)
      .join(' ')
      .replace(/, continued$/, '')
      .replace(/^[A-Z]/, (letter) => letter.toLowerCase())
      .split(/, | and /)
      .map(lineNamed);
    if (words.every((word) => known.has(word) && word !== 'check')) return [words, over];
  }
  return [[], 0];
}

const LENGTH_ALONE = new RegExp(`^${LENGTH}$`);

/** Readings follow each other as they are listed, each followed by what it is for. */
function inTurn(labels: readonly string[], rows: readonly MarkRow[]): boolean {
  const readings = labels.flatMap((label, at) => (LENGTH_ALONE.test(label) ? [at] : []));
  const drawn = readings.map((at, i) => {
    // What a mark is for may go over more than one piece, and words of the next line may follow the last.
    const words = labels.slice(at + 1, readings[i + 1] ?? at + 1 + PIECES).join(' ');
    return `${labels[at]}|${words} `;
  });
  const due = rows.map((row) => `${plainWords(row.tape)}|${shortUse(row.for)} `);
  return drawn.length === due.length && due.every((words, at) => drawn[at]!.startsWith(words));
}
