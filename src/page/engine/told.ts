import type { Job } from '../../job/job.ts';
import { alikeLines } from '../../marks/alike.ts';
import type { GuideLine, SquareCheck } from '../../marks/schedule.ts';
import { sayBounds } from '../../marks/spans.ts';
import { sayTape } from '../../marks/tape.ts';
import { sayDays, sayPaint } from '../../paint/says.ts';
import type { PaintPlan } from '../../paint/whole.ts';
import { writeDuration } from '../../units/duration.ts';
import { writeTape } from '../../units/index.ts';
import { cautions } from '../../write/job-sheet/cautions.ts';
import { DAYS_HEAD, dayRows, PAINT_HEAD, paintRows } from '../../write/paint.ts';
import { shortly } from '../../write/shortly.ts';
import type { Look } from './look.ts';

/** Guide lines that carry the same marks, as they are read off a tape. */
export interface ToldLine {
  names: string[];
  /** Where the tape is held, for each of the names. */
  data: string[];
  /** What the line is, where it is one. */
  says: string;
  marks: { number: number; tape: string; for: string }[];
  /** The parts of a long line: `from mark 5 to mark 9: 48"`. */
  parts: string[];
}

/** What is told of a plan beside its drawing. */
export interface Told {
  lines: ToldLine[];
  checks: { says: string; tape: string; otherwise: string }[];
  /** How far the tape itself can be trusted. */
  tape: string;
  care: { what: string; words: string }[];
  careEnds: string;
}

const toldLine = (alike: GuideLine[], tape: (mm: number) => string): ToldLine => {
  const [first] = alike;
  return {
    names: alike.map(({ name }) => name),
    data: alike.map(({ datum }) => datum),
    says: alike.length === 1 ? first!.says : '',
    marks: first!.marks.map((mark) => ({ number: mark.number, tape: tape(mark.reads), for: shortly(mark.for) })),
    parts: (first!.spans ?? []).map((span) => `${sayBounds(span)}: ${tape(span.total)}`),
  };
};

/** Marks, square checks and cautions of a plan, in the words of the job sheet. */
export function toldOf({ job, schedule, drawing }: Pick<Look, 'job' | 'schedule' | 'drawing'>): Told {
  const tape = (mm: number): string => writeTape(mm, job.units, schedule.step);
  const care = cautions(job, drawing.regions.length > 0);
  return {
    lines: alikeLines(schedule.lines).map((alike) => toldLine(alike, tape)),
    checks: schedule.checks.map(({ says, reads, otherwise }: SquareCheck) => ({ says, tape: tape(reads), otherwise })),
    tape: sayTape(schedule.tape, job.units, schedule.step),
    care: care.kind === 'care' ? care.items : [],
    careEnds: (care.kind === 'care' && care.last) || '',
  };
}

/** A sheet, and how often it is laid. Lengths in mm. */
export interface ToldSheet {
  file: string;
  colour: string;
  says: string;
  windows: number;
  laid: number;
  passes: number;
}

/** What is told of the files of a job. */
export interface ToldFiles {
  sheets: ToldSheet[];
  paint: {
    head: string[];
    rows: string[][];
    /** The colour of each row, as six hexadecimal digits. */
    swatches: string[];
    says: string[];
    daysHead: string[];
    days: string[][];
    waits: string;
    daysEnd: string;
  };
}

interface Layout {
  sheets: { file: string; colour: string; says: string; windows: number; passes: unknown[][] }[];
  paint: PaintPlan;
}

/** What the page shows of the files, read from layout.json among them. */
export function toldOfFiles(job: Job, files: ReadonlyMap<string, string | Uint8Array>): ToldFiles {
  const layout = JSON.parse(String(files.get('layout.json'))) as Layout;
  const { paint, sheets } = layout;
  const { days, paints } = paint;
  return {
    sheets: sheets.map(({ file, colour, says, windows, passes }) => ({
      file,
      colour,
      says,
      windows,
      laid: passes.flat().length,
      passes: passes.length,
    })),
    paint: {
      head: PAINT_HEAD,
      rows: paintRows(paint, job),
      swatches: paints.flatMap((one) => one.uses.map(() => job.palette[one.name] ?? '#ffffff')),
      says: sayPaint(paint, job),
      daysHead: DAYS_HEAD,
      days: dayRows(paint),
      waits: `With ${writeDuration(days.recoat)} between coats and ${writeDuration(days.placement)} for each time a sheet is laid; wait between sheets that touch as long as the paint is wet.`,
      daysEnd: sayDays(paint),
    },
  };
}
