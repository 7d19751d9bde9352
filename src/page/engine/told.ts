import { alikeLines } from '../../marks/alike.ts';
import type { GuideLine, SquareCheck } from '../../marks/schedule.ts';
import { sayBounds } from '../../marks/spans.ts';
import { sayTape } from '../../marks/tape.ts';
import { writeTape } from '../../units/index.ts';
import { cautions } from '../../write/job-sheet/cautions.ts';
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
