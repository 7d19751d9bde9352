import { type Claim, equal, type Proof, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { type Block, plainWords } from '../read/blocks.ts';
import { lineNamed } from '../read/line-named.ts';
import type { MarkRow } from '../read/marks.ts';
import { saidOf, shortUse } from '../read/said.ts';

const FILE = 'job-sheet.html';
const HEAD = 'No.|Tape|For';
const CHECKS = 'Tape|Between|If it is off';

export const proof: Proof = {
  claims:
    'every mark of every line with its number, reading and use; every check with its distance; each line from its datum',
  files: ['job-sheet.html', 'layout.json', 'marks.csv'],
  method: 'tables of the page compared with marks.csv row by row',
  tolerance: 'none',
};

/** The tables of the job sheet have every mark of every line and every check as marks.csv lists them. */
export default function jobSheetMarks(set: FileSet): Claim[] {
  const claim = 'the job sheet has every mark of every line, with its number and what it is for';
  const read = saidOf(set);
  if (!read.ok) return [unproven(FILE, claim, read.says)];
  const marks = set.marks();
  if (!marks.ok) return [unproven(FILE, claim, marks.says)];
  const { blocks } = read.value;
  const listed = new Map<string, MarkRow[]>();
  for (const row of marks.value) if (row.line !== 'span') listed.set(row.line, [...(listed.get(row.line) ?? []), row]);
  const checks = listed.get('check') ?? [];
  listed.delete('check');
  const shown = tablesOf(blocks);
  const wrong = [...listed].find(([line, rows]) => !sameRows(shown.get(line), rows));
  const other = [...shown.keys()].find((line) => !listed.has(line));
  const data = [...listed].find(([line, rows]) => !shown.get(line)?.from.includes(plainWords(rows[0]!.datum)));
  const told = rowsAfter(blocks, CHECKS).map(([tape, between = '']) => `${tape} ${lower(between)}`);
  const due = checks.map((row) => `${plainWords(row.tape)} ${lower(plainWords(row.for))}`);
  const odd = due.findIndex((words, at) => told[at] !== words);
  return [
    equal(FILE, claim, wrong ? `not ${wrong[0]}` : 'it has', 'it has'),
    equal(FILE, 'the job sheet has no other lines of marks', other ?? 'none', 'none'),
    equal(FILE, 'every line of marks is measured from its datum', data ? `not ${data[0]}` : 'it is', 'it is'),
    equal(
      FILE,
      'the job sheet has every check of the square with its distance',
      odd >= 0 ? `not ${due[odd]!.slice(0, 60)}` : told.length === due.length ? 'it has' : 'it has more',
      'it has',
    ),
  ];
}

interface Shown {
  /** What stands between the heading and the table. */
  from: string;
  rows: string[][];
}

const lower = (words: string): string => words.charAt(0).toLowerCase() + words.slice(1);

const isHead = ({ cells }: Block, head: string): boolean => cells.filter((cell) => cell !== 'Done').join('|') === head;

/** The rows under the first head of a kind; a cell for a tick is left out. */
function rowsAfter(blocks: readonly Block[], head: string): string[][] {
  const at = blocks.findIndex((block) => isHead(block, head));
  const rows: string[][] = [];
  for (let i = at + 1; at >= 0 && blocks[i]?.tag === 'tr'; i++) rows.push(blocks[i]!.cells.slice(1));
  return rows;
}

/** Every table of marks by each of the lines that its heading names. */
function tablesOf(blocks: readonly Block[]): Map<string, Shown> {
  const shown = new Map<string, Shown>();
  blocks.forEach((block, at) => {
    if (block.tag !== 'h3') return;
    const head = blocks.slice(at + 1, at + 4).findIndex((next) => next.tag === 'tr' && isHead(next, HEAD));
    if (head < 0) return;
    const from = blocks
      .slice(at + 1, at + 1 + head)
      .map(({ cells }) => cells.join(' '))
      .join(' ');
    const table = { from: lower(from), rows: rowsAfter(blocks.slice(at), HEAD) };
    for (const name of block.cells[0]!.split(/, | and /)) shown.set(lineNamed(lower(name)), table);
  });
  return shown;
}

const sameRows = (shown: Shown | undefined, due: readonly MarkRow[]): boolean =>
  shown?.rows.length === due.length &&
  due.every((row, at) => shown.rows[at]!.join('|') === [row.number, plainWords(row.tape), shortUse(row.for)].join('|'));
