/*
 * For a surface without one rectangular layout, such as a border that runs round a room: leave `layout` out and give `says` (the line
 * that explains the work), `plan` (its figure), `numbers`, and where they are needed `marking` (steps of marking) and `lay` (the blocks
 * that tell where a sheet is laid, after its heading). `drawing` needs only its work box and its regions, `ground` is what the ground
 * covers where that is less than the work box, mm². `surface` holds the blocks of `surfaceBlocks`, after the plan.
 *
 *   const sheet = await makeJobSheet({ job, site, says, plan, numbers, drawing, motifs, sheets, films, schedule, surface });
 *   files.set('job-sheet.html', jobSheetHtml(sheet));
 *   files.set('job-sheet.pdf', await jobSheetPdf(sheet));
 */
import type { Motifs } from '../compose/compose.ts';
import type { Drawing } from '../compose/drawing.ts';
import type { Layout } from '../fit/layout.ts';
import { boxHeight, boxWidth } from '../geometry/measure.ts';
import type { Job } from '../job/job.ts';
import { SURFACE_WORDS } from '../job/surface-words.ts';
import type { Schedule } from '../marks/schedule.ts';
import type { Site } from '../site/site.ts';
import type { BridgeCost } from '../stencil/bridges/cost.ts';
import { sayBridges } from '../stencil/bridges/says.ts';
import type { Film } from '../stencil/films.ts';
import type { Sheet } from '../stencil/sheet.ts';
import { tapedParts } from '../stencil/taped.ts';
import { type Block, type Figure, words } from './job-sheet/block.ts';
import { cautions } from './job-sheet/cautions.ts';
import { driftBox } from './job-sheet/drift-box.ts';
import { figures } from './job-sheet/figures.ts';
import type { JobSheet } from './job-sheet/form.ts';
import { letteringSteps } from './job-sheet/lettering.ts';
import { checkTable, markTables } from './job-sheet/mark-tables.ts';
import { colourTable, materials } from './job-sheet/materials.ts';
import type { Work } from './job-sheet/order/stage.ts';
import { orderOfWork } from './job-sheet/order.ts';
import { isTall, planFigure } from './job-sheet/plan-figure.ts';
import { printing } from './job-sheet/printing.ts';
import { plainReadings } from './job-sheet/reading.ts';
import { sheetPages } from './job-sheet/sheets.ts';
import { loadLettering } from './label.ts';

export { jobSheetHtml } from './job-sheet/html.ts';
export { jobSheetPdf } from './job-sheet/pdf.ts';

export interface JobSheetInput {
  job: Job;
  site: Pick<Site, 'notes'>;
  motifs: Motifs;
  drawing: Drawing;
  sheets: Sheet[];
  /** What the sheets are cut from. */
  films: Film[];
  schedule: Schedule;
  bridges?: BridgeCost;
  /** What the surface adds, after the plan. */
  surface?: Block[];
  /** What paint to buy, and the days it takes. */
  paint?: Block[];
  /** What will not be seen well of the colours. */
  looks?: string[];
  layout?: Layout;
  /** Without a layout: the line that explains the work, its plan and its numbers. */
  says?: string;
  plan?: Figure;
  numbers?: Block;
  marking?: string[];
  lay?: (sheet: Sheet) => Block[];
  ground?: number;
}

/** Marks that stand once for several lines are made on each of them. */
const marksOf = ({ lines }: Schedule): Work['marks'] => ({
  lines: lines.length,
  marks: lines.reduce((sum, line) => sum + line.marks.length, 0),
});

/**
 * Everything that is needed on the floor, in order: plan, materials, cautions, order of work, marks, checks, drift and how every sheet
 * is laid.
 */
export async function makeJobSheet(input: JobSheetInput): Promise<JobSheet> {
  const { job, site, layout, motifs, drawing, sheets, films, schedule, bridges = {}, surface = [] } = input;
  const readings = plainReadings(job);
  const lettering = await loadLettering();
  const { work } = drawing;
  const plan = input.plan ?? (layout && (await planFigure(drawing, layout, job, motifs)));
  const numbers = input.numbers ?? (layout && figures(layout, job, motifs.field, readings));
  const says = input.says ?? layout?.says;
  const tall = layout ? isTall(layout) : boxHeight(work) > boxWidth(work);
  const lists: Block[] = [
    ...site.notes.map((note) => words(note)),
    ...sayBridges(bridges, job.stencil).map((note) => words(note)),
    ...colourTable(drawing, job, input.ground),
    ...(input.looks ?? []).map((note) => words(note)),
    ...materials(drawing, job, sheets, films, readings),
    ...printing(job, layout, sheets),
  ];
  return {
    title: job.title,
    kind: `${SURFACE_WORDS[job.surface].heading}, job sheet`,
    paper: job.print.paper,
    tall,
    blocks: [
      ...(says === undefined ? [] : [words(says, 'large')]),
      ...(numbers ? [numbers] : []),
      ...(plan ? [{ kind: 'beside', figure: plan, side: 'left', blocks: lists } as const] : lists),
      ...surface,
      ...(input.paint ?? []),
      cautions(job, sheets.length > 0),
      ...orderOfWork({
        job,
        sheets,
        films: films.length,
        taped: tapedParts(job, motifs),
        marks: marksOf(schedule),
        size: layout?.overall ?? { across: boxWidth(work), along: boxHeight(work) },
        gaps: layout !== undefined && layout.gaps.near > 0 && job.surface === 'runner',
        marking: input.marking,
        lettering: layout ? letteringSteps(drawing.lettering, layout, job, sheets, readings) : [],
      }),
      ...markTables(schedule, job, readings),
      ...checkTable(schedule, readings),
      ...driftBox(schedule, job, lettering),
      ...sheetPages(sheets, job, readings, lettering, { layout, lay: input.lay }),
    ],
  };
}
