import type { Job } from '../../job/job.ts';
import { sayDays, sayPaint } from '../../paint/says.ts';
import type { PaintPlan } from '../../paint/whole.ts';
import { writeDuration } from '../../units/duration.ts';
import { DAYS_HEAD, dayRows, PAINT_HEAD, paintRows } from '../../write/paint.ts';

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
