import type { Layout } from '../../fit/layout.ts';
import type { Box } from '../../geometry/path.ts';
import type { Job } from '../../job/job.ts';
import type { Sheet } from '../../stencil/sheet.ts';
import { correction } from './correction.ts';
import { PAPER, type Size } from './paper.ts';
import { type Tiling, tileDrawing } from './tiling.ts';

/** A drawing that is printed, and the pages it takes. */
export interface Spread {
  /** The file that shows the same drawing whole. */
  file: string;
  says: string;
  /** What is drawn, in coordinates of that file, mm. */
  box: Box;
  tiling: Tiling;
  /** Number of its first page, from 1. */
  page: number;
}

/** Everything that is printed, before a line of it is drawn. */
export interface Pages {
  paper: Size;
  factor: number;
  spreads: Spread[];
  /** Pages with maps, after the first page. */
  maps: number;
  count: number;
  /** Pages the plan would take, where it is left out for being so many. */
  planWouldTake?: number;
}

/** Beyond so many pages the plan is printed only when asked for. */
export const MANY = 40;
/** Paper round a drawing, so that its outermost line is drawn whole, mm. */
const RIM = 1;
/** Maps of sheets on one page. */
export const MAPS = { across: 2, along: 3 };

const around = (across: number, along: number, left: number, top: number): Box => ({
  left: left - RIM,
  top: top - RIM,
  right: left + across + RIM,
  bottom: top + along + RIM,
});

/** Which drawings are printed, on how many pages and in what order; nothing where the job wants none. */
export function pagesOf(job: Pick<Job, 'print'>, { work }: Pick<Layout, 'work'>, sheets: Sheet[]): Pages | undefined {
  const { print } = job;
  if (print.tiles === 'none') return undefined;
  const paper = PAPER[print.paper];
  const factor = correction(print.measured);
  const spread = (file: string, says: string, box: Box) => ({
    file,
    says,
    box,
    tiling: tileDrawing(box, paper, print.overlap, factor),
  });
  const plan = spread('plan.svg', 'the whole plan', around(work.across, work.along, -work.across / 2, -work.along / 2));
  const planTakes = plan.tiling.rows * plan.tiling.columns;
  const drawn = print.sheets
    ? sheets.map(({ file, says, outline: { left, top, right, bottom } }) =>
        spread(file, says, around(right - left, bottom - top, 0, 0)),
      )
    : [];
  const withPlan = print.plan === 'if few' ? planTakes <= MANY : print.plan;
  const maps = Math.ceil(drawn.length / (MAPS.across * MAPS.along)) + (withPlan ? 1 : 0);
  let next = 2 + maps;
  const spreads = [...drawn, ...(withPlan ? [plan] : [])].map((one): Spread => {
    const page = next;
    next += one.tiling.rows * one.tiling.columns;
    return { ...one, page };
  });
  return {
    paper,
    factor,
    spreads,
    maps,
    count: next - 1,
    ...(print.plan === 'if few' && !withPlan ? { planWouldTake: planTakes } : {}),
  };
}

/** What layout.json says about the printed pages. */
export function printedPages(job: Pick<Job, 'print'>, layout: Pick<Layout, 'work'>, sheets: Sheet[]) {
  const pages = pagesOf(job, layout, sheets);
  if (!pages) return undefined;
  const { print } = job;
  return {
    file: 'tiles.pdf',
    paper: { name: print.paper, ...pages.paper },
    overlap: print.overlap,
    factor: pages.factor,
    pages: pages.count,
    svg: print.tiles === 'pdf and svg',
    drawings: pages.spreads.map(({ file, box, tiling, page }) => ({
      file,
      box: [box.left, box.top, box.right, box.bottom],
      page,
      rows: tiling.rows,
      columns: tiling.columns,
      paper: tiling.page,
      tile: tiling.tile,
      step: tiling.step,
    })),
  };
}
