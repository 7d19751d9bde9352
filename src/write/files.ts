import { withCuts } from '../stencil/cut-order/sheet-cuts.ts';
import { filmsFor } from '../stencil/films.ts';
import { filmFile, writeFilm } from './film.ts';
import type { Finished } from './finished.ts';
import { floorSheet } from './floor/sheet.ts';
import { surfaceBlocks } from './job-sheet/surface-blocks.ts';
import { jobSheetHtml, jobSheetPdf, makeJobSheet } from './job-sheet.ts';
import { writeLayout } from './layout.ts';
import { writeMarks, writeMarksDrawing } from './marks.ts';
import { writeMarksLarge } from './marks-large.ts';
import { paintBlocks, paintEntry, paintOfWork, writePaintTable } from './paint.ts';
import { writePlan } from './plan.ts';
import { renderPng } from './png.ts';
import { writeStencil } from './stencil.ts';
import { surfaceEntries } from './surface-entries.ts';
import { writeSurfaceFiles } from './surface-files.ts';
import { writeTemplate } from './template.ts';
import { tidySvg } from './tidy.ts';
import { writeTiles } from './tiles/tiles-pdf.ts';
import { writeTileDrawings } from './tiles/tiles-svg.ts';

/** Long side of `plan.png`, in pixels. */
const PICTURE = 1600;

/** Every file of a job, by name, in memory. */
export async function writeFiles(finished: Finished): Promise<Map<string, string | Uint8Array>> {
  const { job, site, motifs, fit, layout, drawing, repeat, schedule } = finished;
  const { cutting } = job.stencil;
  const sheets = finished.sheets.map((sheet) => withCuts(sheet, cutting.entry));
  const films = filmsFor(sheets, job.stencil.sheet);
  const plan = await writePlan(drawing, layout, job, motifs, { floor: site.floor });
  const paint = await paintOfWork({ ...finished, sheets }, films);
  const jobSheet = await makeJobSheet({
    ...finished,
    films,
    surface: await surfaceBlocks(finished),
    paint: paintBlocks(paint, job),
    ...(await floorSheet(finished)),
  });
  const files = new Map<string, string | Uint8Array>([
    [
      'layout.json',
      writeLayout(layout, fit, job, motifs, sheets, films, drawing.lettering, {
        ...surfaceEntries(job, site, layout, motifs),
        ...paintEntry(paint, job),
      }),
    ],
    ['plan.svg', plan],
    ['plan.png', await renderPng(plan, PICTURE)],
    ['marks.csv', writeMarks(schedule, job)],
    ['marks.svg', await writeMarksDrawing(schedule, layout, job)],
    ['marks-large.html', writeMarksLarge(schedule, job)],
    ['paint.csv', writePaintTable(paint, job)],
    ['template.svg', await writeTemplate(repeat, layout, job)],
    ['job-sheet.html', jobSheetHtml(jobSheet)],
    ['job-sheet.pdf', await jobSheetPdf(jobSheet)],
  ]);
  for (const sheet of sheets) files.set(sheet.file, await tidySvg(writeStencil(sheet, cutting)));
  if (cutting.files === 'one a film') {
    for (const [at, film] of films.entries())
      files.set(filmFile(at + 1), await tidySvg(writeFilm(film, sheets, cutting)));
  }
  for (const [name, content] of await writeSurfaceFiles(finished)) files.set(name, content);
  const tiles = await writeTiles(finished);
  if (tiles) files.set('tiles.pdf', tiles);
  for (const [name, text] of await writeTileDrawings(finished)) files.set(name, text);
  return files;
}
