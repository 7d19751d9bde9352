import { parseLength, type Unit } from '../../units/index.ts';
import { type Claim, equal, type Proof, stated, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { compareMarks, MARK_WRITTEN } from '../measure/marked.ts';
import type { MarkRow } from '../read/marks.ts';

const FILE = 'marks.csv';
/** The guide lines that every work has. */
const ALWAYS = ['axis', 'left-edge', 'right-edge', 'across-left', 'across-right'];
/** Those of a floor from wall to wall: its centre lines on the walls, and from their crossing to each wall. */
const ON_FLOOR = [
  ...['near-wall', 'far-wall', 'left-wall', 'right-wall'],
  ...['along-near', 'along-far', 'across-left', 'across-right'],
];

export const proof: Proof = {
  claims:
    'every mark reads within half a step of true, is numbered onward from one datum and stands for a line of the layout; spans close',
  files: ['layout.json', 'marks.csv'],
  method: 'readings parsed; places from layout.json',
  tolerance: 'half a step of the tape; 0.0015 mm as written',
};

/** Every mark reads right on the tape and stands for a line that is truly there. */
export default function marks(set: FileSet): Claim[] {
  const [rows, layout] = [set.marks(), set.layout()];
  if (!rows.ok) return [unproven(FILE, 'marks read within half a tape step of true', rows.says)];
  if (!layout.ok) return [unproven(FILE, 'marks read within half a tape step of true', layout.says)];
  const { job } = layout.value;
  const lines = new Map<string, MarkRow[]>();
  for (const row of rows.value) lines.set(row.line, [...(lines.get(row.line) ?? []), row]);
  const lacking = (layout.value.floor ? ON_FLOOR : ALWAYS).filter((line) => !lines.has(line));
  for (const order of ['border', 'inner-border']) {
    // A border masked with tape has no marks of its own.
    const marked = [...lines.keys()].some((line) => line.startsWith(`${order}-`));
    if (marked) lacking.push(...SIDES.map((side) => `${order}-${side}`).filter((line) => !lines.has(line)));
  }
  for (const { place } of layout.value.lettering ?? []) {
    const name = place === 'centre' ? 'lettering' : `${place}-lettering`;
    lacking.push(...['left', 'right'].map((side) => `${name}-${side}`).filter((line) => !lines.has(line)));
  }
  const claims = [equal(FILE, 'every guide line is marked', lacking.join(', ') || 'all', 'all')];
  for (const [line, found] of lines) {
    claims.push(readings(line, found, job.units, job.step));
    if (line === 'check' || line === 'span') continue;
    claims.push(order(line, found));
    const marked = compareMarks(line, found, layout.value);
    if (marked === undefined) continue;
    const measured = marked.off > MARK_WRITTEN ? `${marked.worst} is off by ${say(marked.off)}` : marked.off;
    claims.push(
      stated(
        FILE,
        `marks of ${line} stand where the layout has their lines`,
        marked.off <= MARK_WRITTEN,
        measured,
        MARK_WRITTEN,
      ),
    );
    claims.push(equal(FILE, `no mark of ${line} is missing`, marked.missing.slice(0, 5).join('; ') || 'none', 'none'));
  }
  claims.push(closing(lines));
  return claims;
}

const SIDES = ['left', 'right', 'near-left', 'near-right', 'far-left', 'far-right'];

const say = (mm: number): string => (Number.isFinite(mm) ? `${mm.toFixed(3)} mm` : 'more than can be said');

/** Each reading is rounded on its own from the one datum, so that none is off by more than half a step and no error adds up. */
function readings(line: string, rows: MarkRow[], unit: Unit, step: number): Claim {
  const claim =
    line === 'check' || line === 'span'
      ? `${line} distances read within half a tape step of true`
      : `marks of ${line} read within half a tape step of true`;
  let off = 0;
  let worst = '';
  for (const row of rows) {
    const tape = parseLength(row.tape, unit === 'ft' ? 'in' : unit);
    const far = tape.ok ? Math.abs(tape.mm - row.true) : Infinity;
    const onStep = tape.ok && Math.abs(tape.mm / step - Math.round(tape.mm / step)) * step <= MARK_WRITTEN;
    if (far > off || Number.isNaN(far) || !onStep) {
      off = tape.ok && onStep && !Number.isNaN(far) ? far : Infinity;
      worst = `mark ${row.number} reads ${row.tape}, true is ${Number.isNaN(row.true) ? 'no number' : `${row.true} mm`}`;
    }
    if (off === Infinity) break;
  }
  const holds = off <= step / 2 + MARK_WRITTEN;
  return stated(FILE, claim, holds, holds ? off : worst, step / 2);
}

function order(line: string, rows: MarkRow[]): Claim {
  const wrong = rows.find((row, at) => {
    const before = rows[at - 1];
    return row.number !== String(at + 1) || row.datum !== rows[0]!.datum || !(row.true > (before?.true ?? -Infinity));
  });
  const claim = `marks of ${line} are numbered onward from one datum`;
  return equal(FILE, claim, wrong ? `mark ${wrong.number} is out of order` : 'they are', 'they are');
}

/** A line longer than this is given in spans, mm: 8 ft or 2.5 m, whichever is more. */
const LONG = 2500;

/** The spans of every long line go from the datum to its last mark without a gap, each the difference of the readings at its ends. */
function closing(lines: ReadonlyMap<string, MarkRow[]>): Claim {
  const claim = 'the spans of every long line close on its marks';
  const given = new Map<string, MarkRow[]>();
  for (const row of lines.get('span') ?? []) {
    const line = / of (.+)$/.exec(row.datum)?.[1] ?? '';
    given.set(line, [...(given.get(line) ?? []), row]);
  }
  for (const name of given.keys()) {
    if (!lines.has(name)) return equal(FILE, claim, `a span of ${shortened(name)} has no such line`, 'all close');
  }
  for (const [name, marks] of lines) {
    if (name === 'span' || name === 'check') continue;
    const spans = given.get(name) ?? [];
    if (spans.length === 0 && !(marks.at(-1)!.true > LONG)) continue;
    const open = openSpan(marks, spans);
    if (open !== undefined) return equal(FILE, claim, `${open} of ${name}`, 'all close');
  }
  return equal(FILE, claim, 'all close', 'all close');
}

function openSpan(marks: readonly MarkRow[], spans: readonly MarkRow[]): string | undefined {
  const read = (row: MarkRow | undefined) => {
    const tape = parseLength(row?.tape ?? '', 'in');
    return tape.ok ? tape.mm : Number.NaN;
  };
  let before = '';
  let at = 0;
  for (const span of spans) {
    const from = /^mark (\d+) of /.exec(span.datum)?.[1] ?? '';
    const to = marks.find((row) => row.number === /^to mark (\d+)$/.exec(span.for)?.[1]);
    const reached = read(to);
    if (from !== before || !(Math.abs(reached - at - read(span)) <= MARK_WRITTEN))
      return `not span ${shortened(span.number)}`;
    at = reached;
    before = to!.number;
  }
  return before === marks.at(-1)!.number ? undefined : 'not the last mark';
}

const shortened = (text: string): string => text.slice(0, 40);
