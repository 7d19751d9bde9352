import { parseLength, type Unit } from '../../units/index.ts';
import { type Claim, equal, type Proof, stated, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { MARK_WRITTEN } from '../measure/marked.ts';
import type { MarkRow } from '../read/marks.ts';
import { readPage } from '../read/page.ts';
import { type NewMark, type RefitEntry, type RefitLog, readNewMarks, readRefitLog } from '../read/refit.ts';

const LOG = 'refit.log.json';
const LINES = ['axis', 'left-edge', 'right-edge'];
/** Two numbers written to 1 µm may be off from each other by so much, mm; shares by so much of themselves. */
const BOTH = 2 * MARK_WRITTEN;
const SHARE = 1e-7;

const fileOf = (number: number, kind: 'csv' | 'html'): string => `refit-${number}.${kind}`;

export const proof: Proof = {
  claims: 'rows, changes and limits of every re-fit; its new marks land where the first do',
  files: ['refit.log.json', 'refit-*.csv', 'refit-*.html', 'marks.csv', 'layout.json'],
  method: 'the history reckoned anew; new marks against old',
  tolerance: '0.003 mm; a step of the tape for readings',
};

/** The files of re-fits: each lands where the first marks do, and the log tells them as they are. */
export default function refit(set: FileSet): Claim[] {
  const lying = set.names.flatMap((name) => /^refit-(\d{1,6})\.(?:csv|html)$/.exec(name)?.[1] ?? []).map(Number);
  if (lying.length === 0 && set.content(LOG) === undefined) return [];
  const log = set.read(LOG, readRefitLog);
  if (!log.ok) return [unproven(LOG, 'the history of re-fits can be read', log.says)];
  const [marks, layout] = [set.marks(), set.layout()];
  if (!marks.ok) return [unproven(LOG, 'the rows are those of the marks', marks.says)];
  if (!layout.ok) return [unproven(LOG, 'the rows are those of the marks', layout.says)];
  const { units, step } = layout.value.job;
  const told = log.value.refits.map(({ number }) => number);
  const untold = lying.find((number) => !told.includes(number));
  const unordered = told.find((number, at) => at > 0 && number <= told[at - 1]!);
  const due = rowEnds(marks.value);
  const isOther = due.every(
    (at, n) => n === due.length - 1 || !(Math.abs(at - (log.value.ends[n] ?? at)) <= MARK_WRITTEN),
  );
  return [
    equal(LOG, 'every re-fit that lies there is in the history', untold ?? 'all', 'all'),
    equal(LOG, 'the re-fits are told in their order', unordered ?? 'they are', 'they are'),
    isOther ? anotherFloor() : sameRows(log.value, due),
    ...log.value.refits.flatMap((entry) => [
      ...reckoned(entry, log.value),
      ...newMarks(set, entry, log.value, isOther ? undefined : marks.value, { units, step }),
    ]),
  ];
}

const JOINT = /^between .+ (\d+) and \d+$/;
const reasons = ({ for: use }: MarkRow): string[] => use.split(', ');

/** Where rows end by marks.csv: where two meet on the axis, and where the field ends. */
const rowEnds = (marks: readonly MarkRow[]): number[] =>
  marks
    .filter(({ line }) => line === 'axis')
    .filter((row) => reasons(row).some((one) => JOINT.test(one) || one === 'field ends'))
    .map((row) => row.true);

function sameRows({ ends }: RefitLog, due: readonly number[]): Claim {
  const off = due.map((at, n) => Math.abs(at - (ends[n] ?? Number.NaN)));
  const worst = due.length === ends.length ? Math.max(...off) : Number.NaN;
  return stated(LOG, 'the rows are those of the marks', worst <= MARK_WRITTEN, worst, MARK_WRITTEN);
}

/** No row but the last ends where the marks have it: the history of a floor that was laid out before, which another make leaves in the folder. */
const anotherFloor = (): Claim =>
  stated(LOG, 'the re-fits are of this layout, or of one before it', true, 'one before it', 'either');

/** The numbers of one re-fit follow from the row that was measured. */
function reckoned(entry: RefitEntry, { ends }: RefitLog): Claim[] {
  const { number, row, over, left, right, should, until, change, limit, shows } = entry;
  const off = [
    Math.abs(should - (ends[row - 1] ?? Number.NaN)),
    Math.abs(until - (ends[row + over - 1] ?? Number.NaN)),
    ...(['left', 'right'] as const).map((side) => {
      const at = side === 'left' ? left : right;
      return Math.abs(change[side] - (should - at) / (until - should)) * (until - should);
    }),
  ];
  const worst = off.some(Number.isNaN) ? Number.NaN : Math.max(...off);
  const most = Math.max(Math.abs(change.left), Math.abs(change.right));
  return [
    stated(LOG, `re-fit ${number} divides what is left evenly over its rows`, worst <= BOTH, worst, BOTH),
    equal(
      LOG,
      `re-fit ${number} says whether its change shows`,
      shows ? 'it shows' : 'it does not show',
      most > limit + SHARE ? 'it shows' : 'it does not show',
    ),
  ];
}

function newMarks(
  set: FileSet,
  entry: RefitEntry,
  log: RefitLog,
  marks: readonly MarkRow[] | undefined,
  tape: { units: Unit; step: number },
): Claim[] {
  const file = fileOf(entry.number, 'csv');
  const read = set.read(file, readNewMarks);
  if (!read.ok) return [unproven(file, 'the new marks can be read', read.says)];
  const rows = read.value;
  const strangers = rows.find(({ line }) => !LINES.includes(line));
  const claims = [equal(file, 'only lines that run along are marked anew', strangers?.line ?? 'they are', 'they are')];
  for (const line of LINES) {
    const found = rows.filter((row) => row.line === line);
    claims.push(...byRows(file, line, found, entry, log));
    if (!marks) continue;
    const old = marks.filter((row) => row.line === line);
    claims.push(...along(file, line, found, old, entry), readings(file, line, found, tape));
  }
  return [...claims, onPage(set, entry, rows)];
}

const placeOf = ({ left, right }: RefitEntry, line: string): number =>
  line === 'axis' ? (left + right) / 2 : line === 'left-edge' ? left : right;

/** Where a mark belongs after the re-fit. */
function movedTo(place: number, entry: RefitEntry, line: string): number {
  const { should, until } = entry;
  if (place >= until - BOTH) return place;
  const share = (place - should) / (until - should);
  return placeOf(entry, line) * (1 - share) + until * share;
}

/** The marks at which rows end, by the history alone: whatever layout lies beside it. */
function byRows(file: string, line: string, found: NewMark[], entry: RefitEntry, { ends }: RefitLog): Claim[] {
  const back = found.find((row, at) => at > 0 && !(row.true > found[at - 1]!.true));
  const off = found.flatMap((row) =>
    reasons(row).flatMap((one) => {
      const before = JOINT.exec(one)?.[1];
      const end =
        one === 'field ends'
          ? ends.at(-1)
          : before === undefined
            ? undefined
            : (ends[Number(before) - 1] ?? Number.NaN);
      return end === undefined ? [] : [Math.abs(row.true - movedTo(end, entry, line))];
    }),
  );
  const start = Math.abs((found[0]?.true ?? Number.NaN) - placeOf(entry, line));
  const worst = [...off, start].some(Number.isNaN) || off.length === 0 ? Number.NaN : Math.max(...off, start);
  return [
    equal(file, `the new marks of ${line} go onward`, back ? `not mark ${back.number}` : 'they do', 'they do'),
    stated(
      file,
      `the rows of ${line} begin where one was measured and end where the last always did`,
      worst <= BOTH,
      worst,
      BOTH,
    ),
  ];
}

function along(file: string, line: string, found: NewMark[], old: MarkRow[], entry: RefitEntry): Claim[] {
  const due = old.filter((row) => row.true >= entry.should - BOTH && reasons(row).some((one) => one !== 'mid-run'));
  const lacking = due.find(({ number }) => !found.some((row) => row.number === number));
  const extra = found.find(({ number }) => !due.some((row) => row.number === number));
  const of = (row: NewMark): MarkRow | undefined => old.find(({ number }) => number === row.number);
  const off = found.map((row) => Math.abs(row.true - movedTo(of(row)?.true ?? Number.NaN, entry, line)));
  const worst = off.length === 0 || off.some(Number.isNaN) ? Number.NaN : Math.max(...off);
  const end = Math.abs((found.at(-1)?.true ?? Number.NaN) - (old.at(-1)?.true ?? Number.NaN));
  const changed = found.find((row) => row.before !== of(row)?.tape);
  const datum = found.find((row) => row.datum !== old[0]?.datum);
  const renamed = found.find((row) => {
    const was = of(row);
    if (!was || Math.abs(was.true - entry.should) <= BOTH) return row.for !== `end of row ${entry.row}, as measured`;
    return (
      row.for !==
      reasons(was)
        .filter((one) => one !== 'mid-run')
        .join(', ')
    );
  });
  return [
    equal(
      file,
      `every mark of ${line} that is left is marked anew`,
      lacking ? `not ${lacking.number}` : extra ? `${extra.number} too` : 'all',
      'all',
    ),
    stated(file, `the new marks of ${line} change by as much a row as is said`, worst <= BOTH, worst, BOTH),
    stated(file, `the new marks of ${line} end where the first ones do`, end <= MARK_WRITTEN, end, MARK_WRITTEN),
    equal(
      file,
      `the new marks of ${line} keep their datum and their reasons`,
      (datum ?? renamed) ? `not mark ${(datum ?? renamed)!.number}` : 'they do',
      'they do',
    ),
    equal(
      file,
      `the new marks of ${line} say what the tape read before`,
      changed ? `not mark ${changed.number}` : 'they do',
      'they do',
    ),
  ];
}

function readings(file: string, line: string, found: NewMark[], { units, step }: { units: Unit; step: number }): Claim {
  const off = found.map((row) => {
    const tape = parseLength(row.tape, units === 'ft' ? 'in' : units);
    return tape.ok ? Math.abs(tape.mm - row.true) : Number.NaN;
  });
  const worst = off.some(Number.isNaN) ? Number.NaN : Math.max(0, ...off);
  const allowed = step / 2 + MARK_WRITTEN;
  return stated(
    file,
    `the new marks of ${line} read within half a tape step of true`,
    worst <= allowed,
    worst,
    allowed,
  );
}

/** Typographic primes and spaces as they are typed. */
const plain = (text: string): string =>
  text.replace(/[′’]/g, "'").replace(/[″”]/g, '"').replace(/[⁄∕]/g, '/').replace(/\s+/g, '');

function onPage(set: FileSet, { number }: RefitEntry, rows: NewMark[]): Claim {
  const file = fileOf(number, 'html');
  const claim = 'the page shows every new mark';
  const [text, page] = [set.text(file), set.read(file, readPage)];
  if (!text.ok || !page.ok) return unproven(file, claim, page.ok ? '' : page.says);
  const shown = [...text.value.matchAll(/<td class="no">(\d+)<\/td><td class="read">(.*?)<\/td>/gs)].map(
    ([, no, tape]) =>
      `${no} ${plain(
        tape!
          .replace(/<[^>]*>/g, '')
          .replaceAll('&quot;', '"')
          .replaceAll('&#39;', "'"),
      )}`,
  );
  const due = new Set(rows.map((row) => `${row.number} ${plain(row.tape)}`));
  const lacking = [...due].find((one) => !shown.includes(one));
  const wrong = shown.find((one) => !due.has(one));
  return equal(file, claim, lacking ? `not ${lacking}` : wrong ? `${wrong} is none` : 'all', 'all');
}
