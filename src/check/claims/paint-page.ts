import { writeArea } from '../../units/area.ts';
import { writeDuration } from '../../units/duration.ts';
import type { System } from '../../units/unit.ts';
import { nameVolume, writeVolume } from '../../units/volume.ts';
import { type Claim, equal, type Proof, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { readPage } from '../read/page.ts';
import { type PaintEntry, type PaintOf, readPaintEntry } from '../read/paint.ts';

const FILE = 'job-sheet.html';

export const proof: Proof = {
  claims: 'rows of every paint and every day, in turn, and no others',
  files: ['job-sheet.html', 'layout.json'],
  method: 'words of the page',
  tolerance: 'none',
};

/** The job sheet has the rows of every paint and of every day as layout.json has them. */
export default function paintPage(set: FileSet): Claim[] {
  const layout = set.layout();
  const entry = set.read('layout.json', readPaintEntry);
  if (!layout.ok || !entry.ok || entry.value === undefined) return [];
  const CLAIM = 'the job sheet has every paint and every day as they are told';
  const [text, page] = [set.text(FILE), set.read(FILE, readPage)];
  if (!page.ok) return [unproven(FILE, CLAIM, page.says)];
  const system: System = ['in', 'ft'].includes(layout.value.job.units) ? 'inch' : 'metric';
  const html = text.ok ? text.value : '';
  const words = plain(page.value);
  const [paints, days] = [words.indexOf(' Paint On Area Coats '), words.indexOf(' Day What Hands-on Sheets laid ')];
  if (paints < 0 || days < paints) return [equal(FILE, CLAIM, 'it has no such tables', 'it has them')];
  const table = words.slice(paints, days);
  const end = words.indexOf(ends(entry.value), days);
  const missing =
    inTurn(
      table,
      entry.value.paints.flatMap((one) => rows(one, system)),
    ) ??
    inTurn(table, atHand(entry.value)) ??
    inTurn(words.slice(days), dayRows(entry.value)) ??
    (end < 0 ? ends(entry.value).trim() : undefined);
  const { paints: all, days: told } = entry.value;
  const counted = [rowsUnder(html, '>Paint to buy'), rowsUnder(html, '>Day by day')].join(' and ');
  return [
    equal(FILE, CLAIM, missing === undefined ? 'all' : `not ${missing}`, 'all'),
    equal(
      FILE,
      'the job sheet has no other paint and no other day',
      counted,
      `${all.reduce((sum, { uses }) => sum + uses.length, 0)} and ${told.stints.length}`,
    ),
  ];
}

const plain = (text: string): string => ` ${text.replace(/[\s\u00a0\u202f]+/g, ' ')} `;

/** The first that is not found after the one before it. */
function inTurn(words: string, wanted: readonly string[]): string | undefined {
  let at = 0;
  for (const one of wanted) {
    const found = words.indexOf(` ${one} `, at);
    if (found < 0) return one;
    at = found + one.length;
  }
  return undefined;
}

/** Of every row what comes before the cover of a coat, and the volumes that come after it. */
function rows(one: PaintOf, system: System): string[] {
  const { name, kind, uses, needed } = one;
  return uses.flatMap(({ on, area, coats }, at) => [
    `${at === 0 ? `${name} ` : ''}${kind === 'clear' ? 'everything' : on} ${writeArea(area, system)} ${coats}`,
    ...(at === 0 ? [`${writeVolume(needed, system)} ${toBuy(one, system)}`] : []),
  ]);
}

function toBuy({ buy, tins }: PaintOf, system: System): string {
  if (buy <= 0) return 'nothing';
  if (!tins) return writeVolume(buy, system);
  return tins.map(({ size, count }) => `${count > 1 ? `${count} × ` : ''}${nameVolume(size)}`).join(' + ');
}

const atHand = ({ paints }: PaintEntry): string[] =>
  paints.flatMap(({ name, onHand }) => (onHand > 0 ? [`Your ${nameVolume(onHand)} of ${name}`] : []));

/** Rows under the head of the table that follows a heading, as the page is written. */
function rowsUnder(page: string, heading: string): number {
  const from = page.indexOf(heading);
  const table = from < 0 ? '' : page.slice(from, page.indexOf('</table>', from));
  return Math.max(0, table.split('<tr>').length - 2);
}

const dayRows = ({ days: { stints } }: PaintEntry): string[] =>
  stints.map(({ day, what, hours, sheets }, at) =>
    [stints[at - 1]?.day === day ? [] : day, what, writeDuration(hours), sheets ?? []].flat().join(' '),
  );

const ends = ({ days: { walk, furniture, rugs } }: PaintEntry): string =>
  ` Light feet on day ${walk}, furniture on day ${furniture}, rugs and full hardness by day ${rugs};`;
