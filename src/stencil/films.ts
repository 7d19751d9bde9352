import { boxHeight, boxWidth } from '../geometry/measure.ts';
import type { Job } from '../job/job.ts';
import { nest } from './nest/nest.ts';
import type { Sheet } from './sheet.ts';

/** A sheet on a film: its left top corner from that of the film, mm, and whether it lies turned a quarter clockwise. */
export interface OnFilm {
  /** Index of the sheet. */
  sheet: number;
  x: number;
  y: number;
  turned: boolean;
}

/** One piece of film or card as it is bought, and the sheets that are cut from it. */
export interface Film {
  across: number;
  along: number;
  sheets: OnFilm[];
}

/** Film left between two sheets, mm, so that each can be cut out whole. */
const BETWEEN = 3;

/** Lays the sheets of a job on as few films as can be found. */
export function filmsFor(
  sheets: readonly Pick<Sheet, 'outline'>[],
  { across, along }: Job['stencil']['sheet'],
): Film[] {
  const sizes = sheets.map(({ outline }) => ({ across: boxWidth(outline), along: boxHeight(outline) }));
  const { places, films } = nest(sizes, { across, along }, BETWEEN);
  return Array.from({ length: films }, (_, which) => ({
    across,
    along,
    sheets: places.flatMap(({ film, x, y, turned }, sheet) => (film === which ? [{ sheet, x, y, turned }] : [])),
  }));
}
