import type { Drawing } from '../../compose/drawing.ts';
import type { Layout } from '../../fit/layout.ts';
import type { Box } from '../../geometry/path.ts';
import type { Job } from '../../job/job.ts';
import type { Sheet } from '../../stencil/sheet.ts';
import { type Layer, planLayers, sheetLayers } from './drawings.ts';
import { drawFirstPage } from './first-page.ts';
import { SMALL_WORDS } from './looks.ts';
import { drawMap } from './map.ts';
import { drawPage } from './page.ts';
import { MAPS, type Pages, type Spread } from './pages.ts';
import { MARGIN, type Size } from './paper.ts';
import type { Surface } from './surface.ts';
import { type Tile, tilesOf } from './tiling.ts';

/** What the printed pages are made from. */
export interface Printed {
  job: Job;
  layout: Pick<Layout, 'work'>;
  drawing: Drawing;
  sheets: Sheet[];
}

/** A page still to be drawn. */
export interface PagePlan {
  size: Size;
  /** The drawing and the part of it that the page shows; the first page and the maps show none. */
  shows?: { number: number; spread: Spread; tile: Tile };
  draw(surface: Surface): void;
}

/** The lines of every printed drawing, in the order of the spreads. */
export const layersOf = ({ spreads }: Pages, { drawing, sheets }: Printed): Layer[][] =>
  spreads.map(({ file }) => {
    const sheet = sheets.find((one) => one.file === file);
    return sheet ? sheetLayers(sheet) : planLayers(drawing);
  });

/** Every page in order: how to print, the maps, then drawing by drawing. */
export function pagePlans(pages: Pages, { job }: Printed): PagePlan[] {
  const { spreads, paper, factor, count } = pages;
  const { title } = job;
  const { overlap } = job.print;
  const first: PagePlan = { size: paper, draw: (surface) => drawFirstPage(surface, job, pages) };
  const tiles = spreads.flatMap((spread, number) =>
    tilesOf(spread.tiling).map(
      (tile): PagePlan => ({
        size: spread.tiling.page,
        shows: { number, spread, tile },
        draw: (surface) => drawPage(surface, { number, spread, tile, title, count, overlap, factor }),
      }),
    ),
  );
  return [first, ...mapPlans(pages, overlap), ...tiles];
}

const GUTTER = 7;
const FOOT = 6;

/** Sheets six to a page, the plan on a page of its own. */
function mapPlans({ spreads, paper, count }: Pages, overlap: number): PagePlan[] {
  const area: Box = {
    left: MARGIN + 2,
    top: MARGIN + 2,
    right: paper.across - MARGIN - 2,
    bottom: paper.along - MARGIN - FOOT,
  };
  const numbered = spreads.map((spread, number) => ({ spread, number }));
  const isPlan = ({ spread }: { spread: Spread }) => spread.file === 'plan.svg';
  const sheets = numbered.filter((one) => !isPlan(one));
  const each = MAPS.across * MAPS.along;
  const groups = [
    ...Array.from({ length: Math.ceil(sheets.length / each) }, (_, at) => sheets.slice(at * each, (at + 1) * each)),
    ...numbered.filter(isPlan).map((plan) => [plan]),
  ];
  return groups.map((group, at) => ({
    size: paper,
    draw(surface) {
      const [columns, rows] = group.length === 1 ? [1, 1] : [MAPS.across, MAPS.along];
      const wide = (area.right - area.left - (columns - 1) * GUTTER) / columns;
      const high = (area.bottom - area.top - (rows - 1) * GUTTER) / rows;
      group.forEach(({ spread, number }, n) => {
        const left = area.left + (n % columns) * (wide + GUTTER);
        const top = area.top + Math.floor(n / columns) * (high + GUTTER);
        drawMap(surface, number, spread, { left, top, right: left + wide, bottom: top + high }, overlap);
      });
      const foot = { x: MARGIN + 2, y: paper.along - MARGIN - 1, size: 3, anchor: 'start' } as const;
      surface.label(`Which page goes where; page ${2 + at} of ${count}`, foot, SMALL_WORDS);
    },
  }));
}
