import { loadLettering } from '../label.ts';
import { formatMm } from '../number.ts';
import { element, escapeText, trueSizePage } from '../svg.ts';
import { pagesOf } from './pages.ts';
import { layersOf, type Printed, pagePlans } from './pages-drawn.ts';
import { layerElements, svgSurface } from './svg-surface.ts';
import { columnName, nameOf, type Tile } from './tiling.ts';

/** `tile-slate-1-2-b.svg`: row 2, column B of `stencil-slate-1.svg`; `tile-plan-2-b.svg` of the plan. */
export const tileFile = (drawing: string, { row, column }: Pick<Tile, 'row' | 'column'>): string =>
  `tile-${drawing.replace(/^stencil-|\.svg$/g, '')}-${row + 1}-${columnName(column).toLowerCase()}.svg`;

/** Every page of every drawing as an SVG of its own, true to size; none unless the job asks for them. By name. */
export async function writeTileDrawings(printed: Printed): Promise<Map<string, string>> {
  const { job, layout, sheets } = printed;
  const files = new Map<string, string>();
  const pages = job.print.tiles === 'pdf and svg' ? pagesOf(job, layout, sheets) : undefined;
  if (!pages) return files;
  const lettering = await loadLettering();
  const drawings = layersOf(pages, printed).map(layerElements);
  for (const { size, shows, draw } of pagePlans(pages, printed)) {
    if (!shows) continue;
    const { spread, tile } = shows;
    const surface = svgSurface(lettering, drawings);
    draw(surface);
    const [width, height] = [formatMm(size.across), formatMm(size.along)];
    const title = element('title', {}, escapeText(`${spread.file}: ${nameOf(tile)}`));
    files.set(tileFile(spread.file, tile), trueSizePage(width, height, [title, surface.elements()]));
  }
  return files;
}
