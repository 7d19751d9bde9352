import { writeArea } from '../../units/area.ts';
import { parseLength, systemOf, tapeTolerance } from '../../units/index.ts';
import type { System } from '../../units/unit.ts';
import { type Claim, equal, type Proof, unproven } from '../claim.ts';
import type { FileSet, Sheet } from '../file-set.ts';
import { floorOf } from '../measure/on-floor.ts';
import { coveredArea } from '../measure/paint-area.ts';
import type { SheetEntry } from '../read/layout.ts';
import type { MarkRow } from '../read/marks.ts';
import { type PaintEntry, readPaintEntry } from '../read/paint.ts';
import { readPrint } from '../read/print.ts';
import { LENGTH, rowsUnder, type Said, saidOf } from '../read/said.ts';

const FILE = 'job-sheet.html';
/** A tolerance of a tape is told to so many mm: half a 64th of an inch. */
const FINE = 0.2;

/** A kind of sentence: whether one that was found is so, and whether the sheet must have one. */
interface Rule {
  name: string;
  words: RegExp;
  due: boolean;
  holds(found: RegExpExecArray): boolean;
}

export const proof: Proof = {
  claims:
    'counts of sheets, films, placements, passes, marks, lines, pages, rolls of tape, brushes; hours and percent; what a coat of each colour covers',
  files: ['job-sheet.html', 'layout.json', 'marks.csv', 'plan.svg', 'stencil-*.svg'],
  method: 'sentences parsed; counts from layout.json and marks.csv, areas from the outlines of the plan',
  tolerance: 'none for counts; 0.05 % for areas; half a step of the tape for lengths',
};

/** What the job sheet counts is as many as there are: sheets, films, placements, passes, marks, pages, rolls and hours. */
export default async function jobSheetCounts(set: FileSet): Promise<Claim[]> {
  const claim = 'the job sheet counts what there is';
  const read = saidOf(set);
  if (!read.ok) return [unproven(FILE, claim, read.says)];
  const marks = set.marks();
  if (!marks.ok) return [unproven(FILE, claim, marks.says)];
  const [paint, print] = [set.read('layout.json', readPaintEntry), set.read('layout.json', readPrint)];
  const rules = [
    ...sheetRules(read.value, set.sheets()),
    ...markRules(marks.value, read.value),
    ...(paint.ok && paint.value ? goodsRules(read.value, paint.value) : []),
    pageRule(print.ok ? print.value?.pages : undefined),
  ];
  return rules
    .filter(({ due, words }) => due || read.value.lines.some((line) => words.test(line)))
    .map(({ name, words, holds }) => {
      const found = read.value.lines.map((line) => words.exec(line)).filter((one) => one !== null);
      const wrong = found.find((one) => !holds(one));
      const measured = found.length === 0 ? 'not told' : wrong ? wrong[0].slice(0, 80) : 'as they are';
      return equal(FILE, `the job sheet counts ${name} as they are`, measured, 'as they are');
    })
    .concat(await coverage(set, read.value));
}

const placementsOf = (sheets: readonly SheetEntry[]): number =>
  sheets.reduce((sum, { passes }) => sum + passes.flat().length, 0);
const passesOf = (sheets: readonly SheetEntry[]): number => sheets.reduce((sum, { passes }) => sum + passes.length, 0);
const are = (told: readonly (string | undefined)[], due: readonly number[]): boolean =>
  told.every((one, at) => Number(one) === due[at]);

function sheetRules({ layout, is }: Said, drawn: readonly Sheet[]): Rule[] {
  const { sheets, films = [] } = layout;
  const any = sheets.length > 0;
  const colours = new Set(sheets.map(({ colour }) => colour)).size;
  const frames = drawn.flatMap((one) => (one.drawn.ok ? [one.drawn.value.svg.view] : []));
  const widest = Math.max(0, ...frames.map(({ width }) => width));
  const longest = Math.max(0, ...frames.map(({ height }) => height));
  const film = (found: RegExpExecArray): boolean =>
    are([found[1]], [films.length]) && is(found[2]!, films[0]?.across ?? -1) && is(found[3]!, films[0]?.along ?? -1);
  return [
    {
      name: 'films, the sheets on them and the largest of these',
      words: new RegExp(
        `^Stencil film or oiled card: (\\d+) pieces? of (${LENGTH}) × (${LENGTH}), for (\\d+) sheets?, the largest (${LENGTH}) × (${LENGTH})$`,
      ),
      due: films.length > 0,
      holds: (found) =>
        film(found) && are([found[4]], [sheets.length]) && is(found[5]!, widest) && is(found[6]!, longest),
    },
    {
      name: 'films to buy',
      words: new RegExp(`^Film or card: (\\d+) pieces? of (${LENGTH}) × (${LENGTH})\\.$`),
      due: false,
      holds: film,
    },
    {
      name: 'sheets to cut',
      words: /^Cut the (\d+) sheets?(?: from (\d+) pieces? of film)?\./,
      due: any,
      holds: (found) => are(found.slice(1), [sheets.length, films.length]),
    },
    {
      name: 'placements',
      words: /^There (?:are|is) (\d+) placements? in (\d+) colours?\./,
      due: any,
      holds: (found) => are(found.slice(1), [placementsOf(sheets), colours]),
    },
    {
      name: 'brushes',
      words: /^(\d+) stencil brush(?:es)? or/,
      due: any,
      holds: (found) => are([found[1]], [colours]),
    },
    {
      name: 'sheets, placements and passes of a colour',
      words: /^(?:(?:First|Then|Last) )?(.+): (\d+) sheets?, (\d+) placements? in (\d+) pass(?:es)?\./,
      due: any,
      holds: (found) => {
        const own = sheets.filter(({ colour }) => colour.toLowerCase() === found[1]!.toLowerCase());
        const runs = runsOf(sheets, found[1]!);
        return [own, ...runs].some((some) => are(found.slice(2), [some.length, placementsOf(some), passesOf(some)]));
      },
    },
  ];
}

/** Sheets of one colour that follow each other: a colour may come back after another. */
function runsOf(sheets: readonly SheetEntry[], colour: string): SheetEntry[][] {
  const runs: SheetEntry[][] = [];
  sheets.forEach((sheet, at) => {
    if (sheet.colour.toLowerCase() !== colour.toLowerCase()) return;
    if (at > 0 && sheets[at - 1]!.colour === sheet.colour && runs.length > 0) runs.at(-1)!.push(sheet);
    else runs.push([sheet]);
  });
  return runs;
}

function markRules(rows: readonly MarkRow[], { is, layout }: Said): Rule[] {
  const marks = rows.filter(({ line }) => line !== 'check' && line !== 'span');
  return [
    {
      name: 'marks and lines',
      words: /^There (?:are|is) (\d+) marks? on (\d+) lines?: tick each off/,
      due: true,
      holds: (found) => are(found.slice(1), [marks.length, new Set(marks.map(({ line }) => line)).size]),
    },
    {
      name: 'the length and the tolerance of the tape',
      words: new RegExp(`A (?:tape in good order|class II tape) may itself be off by (${LENGTH}) over (${LENGTH})`),
      due: false,
      holds: ([, off, over]) => {
        const told = parseLength(off!, layout.job.units);
        const longest = Math.max(...marks.map((row) => row.true));
        const due = tapeTolerance(longest, systemOf(layout.job.units));
        return is(over!, longest) && told.ok && Math.abs(told.mm - due) <= FINE;
      },
    },
  ];
}

function goodsRules({ is, layout }: Said, { tape, reserve, days }: PaintEntry): Rule[] {
  const metres = ['in', 'ft'].includes(layout.job.units) ? 914.4 : 1000;
  return [
    {
      name: 'tape',
      words: new RegExp(
        `^Tape along (${LENGTH}) of edges: (\\d+) rolls? of (${LENGTH}) tape, ([\\d.]+) (?:yards|m) each\\.$`,
      ),
      due: tape !== undefined,
      holds: ([, long, rolls, wide, each]) =>
        tape !== undefined &&
        // No less than is needed: up to the next mark of the tape.
        is(long!, Math.ceil(tape.length / layout.job.step - 1e-9) * layout.job.step) &&
        are([rolls], [tape.rolls]) &&
        is(wide!, tape.width) &&
        Math.abs(Number(each) * metres - tape.roll) <= 0.05 * metres,
    },
    {
      name: 'percent kept back',
      words: /and (\d+(?:\.\d+)?) % kept back/,
      due: reserve > 0,
      holds: ([, percent]) => Math.abs(Number(percent) - 100 * reserve) < 0.06,
    },
    {
      name: 'hours between coats and minutes for a placement',
      words: /^With (\d+(?:\.\d+)?) hours? between coats(?: and (\d+(?:\.\d+)?) min for each time a sheet is laid)?/,
      due: false,
      holds: ([, hours, minutes]) =>
        Math.abs(Number(hours) - days.recoat) < 0.06 &&
        (minutes === undefined || Math.abs(Number(minutes) - minutesOf(days.placement)) < 0.51),
    },
  ];
}

/** As layout.json has it: hours for one placement. */
const minutesOf = (hours: number): number => hours * 60;

const pageRule = (pages: number | undefined): Rule => ({
  name: 'printed pages',
  words: /tiles\.pdf has .*?(\d+) pages? of /,
  due: false,
  holds: ([, told]) => are([told], [pages ?? Number.NaN]),
});

/** The areas of the colours on the plan, as one coat of each covers. */
async function coverage(set: FileSet, { blocks, layout }: Said): Promise<Claim[]> {
  const claim = 'the job sheet tells what one coat of each colour covers';
  const plan = set.plan();
  if (!plan.ok) return [unproven(FILE, claim, plan.says)];
  const rows = rowsUnder(blocks, ['Colour', 'For', 'One coat covers']);
  if (!rows) return [equal(FILE, claim, 'it has no such table', 'it does')];
  const system: System = ['in', 'ft'].includes(layout.job.units) ? 'inch' : 'metric';
  const { floor: entry } = layout;
  const floor = layout.job.surface === 'floor' && entry ? (await floorOf(entry, entry.corners)).area : undefined;
  const painted = new Map<string, number>();
  for (const name of Object.keys(layout.palette)) {
    const colour = layout.palette[name]!.toLowerCase();
    const own = plan.value.painted.filter((piece) => piece.fill.toLowerCase() === colour);
    painted.set(name, coveredArea(own.map(({ outline }) => outline)));
  }
  const ground = floor ?? coveredArea(plan.value.ground);
  const wrong = rows.find(([name, , area]) => {
    const own = (painted.get(name ?? '') ?? Number.NaN) + (layout.colours.ground === name ? ground : 0);
    // The drawing may be off by its rounding: whichever of both reads as told.
    return ![0.9995, 1, 1.0005].some((by) => writeArea(own * by, system) === area);
  });
  return [equal(FILE, claim, wrong ? `not ${wrong.join(', ')}` : 'it does', 'it does')];
}
