import type { Drawing } from '../../compose/drawing.ts';
import type { Motifs } from '../../fit/problem.ts';
import type { Job } from '../../job/job.ts';
import type { Schedule } from '../../marks/schedule.ts';
import type { Drawn } from '../../motif/motif.ts';
import type { RoomFit, RoomLayout } from '../../room-border/layout.ts';
import type { Site } from '../../site/site.ts';
import type { RoomOutline } from '../../site/walls-outline.ts';
import type { BridgeCost } from '../../stencil/bridges/cost.ts';
import { withCuts } from '../../stencil/cut-order/sheet-cuts.ts';
import { filmsFor } from '../../stencil/films.ts';
import type { Sheet } from '../../stencil/sheet.ts';
import { filmFile, writeFilm } from '../film.ts';
import { jobSheetHtml, jobSheetPdf, makeJobSheet } from '../job-sheet.ts';
import { writeMarks } from '../marks.ts';
import { drawMarks } from '../marks-drawing.ts';
import { writeMarksLarge } from '../marks-large.ts';
import { paintBlocks, paintEntry, writePaintTable } from '../paint.ts';
import { renderPng } from '../png.ts';
import { writeStencil } from '../stencil.ts';
import { writeTemplate } from '../template.ts';
import { tidySvg } from '../tidy.ts';
import { writeTiles } from '../tiles/tiles-pdf.ts';
import { writeTileDrawings } from '../tiles/tiles-svg.ts';
import { roomFigure, roomLay, roomMarking, roomNumbers, roomTables } from './blocks.ts';
import { drawRoomChecks } from './checks.ts';
import { floorArea } from './ground.ts';
import { writeRoomLayout } from './layout.ts';
import { paintOfRoom } from './paint.ts';
import { writeRoomPlan } from './plan.ts';
import { boxSize } from './size.ts';

/** Everything the stages have found for a border round a room, ready to be written. */
export interface FinishedRoom {
  job: Job;
  site: Site;
  outline: RoomOutline;
  motifs: Partial<Motifs>;
  fit: RoomFit;
  layout: RoomLayout;
  drawing: Drawing;
  /** One repeat of the border as it is cut; nothing where it is masked with tape. */
  repeat: Drawn[];
  bridges: BridgeCost;
  /** What will not be seen well of the colours. */
  looks?: string[];
  sheets: Sheet[];
  schedule: Schedule;
}

/** Long side of `plan.png`, in pixels. */
const PICTURE = 1600;

/** Every file of a room border, by name, in memory. */
export async function writeRoomFiles(finished: FinishedRoom): Promise<Map<string, string | Uint8Array>> {
  const { job, site, outline, motifs, fit, layout, drawing, repeat, bridges, schedule } = finished;
  const { cutting } = job.stencil;
  const sheets = finished.sheets.map((sheet) => withCuts(sheet, cutting.entry));
  const films = filmsFor(sheets, job.stencil.sheet);
  const drawn = { outline, layout, drawing, job };
  const plan = await writeRoomPlan(drawn);
  const ground = floorArea(outline);
  const paint = paintOfRoom({ ...finished, sheets }, films);
  const jobSheet = await makeJobSheet({
    job,
    site,
    // Only what is taped is read of the motifs where there is no rectangle.
    motifs: motifs as Motifs,
    drawing,
    sheets,
    films,
    schedule,
    bridges,
    ...(finished.looks ? { looks: finished.looks } : {}),
    says: layout.says,
    plan: await roomFigure(drawn),
    numbers: roomNumbers(drawn),
    surface: roomTables(drawn),
    marking: roomMarking(drawn),
    lay: roomLay(drawn, job),
    ground,
    paint: paintBlocks(paint, job),
  });
  const files = new Map<string, string | Uint8Array>([
    ['layout.json', writeRoomLayout(outline, layout, fit, job, motifs, sheets, films, paintEntry(paint, job))],
    ['plan.svg', plan],
    ['plan.png', await renderPng(plan, PICTURE)],
    ['marks.csv', writeMarks(schedule, job)],
    [
      'marks.svg',
      await drawMarks(schedule, job, (sketch, left, top, room, tape) =>
        drawRoomChecks(sketch, outline, schedule, { left, top, room }, tape),
      ),
    ],
    ['marks-large.html', writeMarksLarge(schedule, job)],
    ['paint.csv', writePaintTable(paint, job)],
    ['job-sheet.html', jobSheetHtml(jobSheet)],
    ['job-sheet.pdf', await jobSheetPdf(jobSheet)],
  ]);
  const pitch = layout.runs.find(({ repeats }) => repeats > 0)?.pitch;
  if (repeat.length > 0 && pitch !== undefined)
    files.set('template.svg', await writeTemplate(repeat, { pitch: { across: pitch, along: layout.width } }, job));
  for (const sheet of sheets) files.set(sheet.file, await tidySvg(writeStencil(sheet, cutting)));
  if (cutting.files === 'one a film') {
    for (const [at, film] of films.entries())
      files.set(filmFile(at + 1), await tidySvg(writeFilm(film, sheets, cutting)));
  }
  const printed = { job, layout: { work: boxSize(outline) }, drawing, sheets };
  const tiles = await writeTiles(printed);
  if (tiles) files.set('tiles.pdf', tiles);
  for (const [name, text] of await writeTileDrawings(printed)) files.set(name, text);
  return files;
}
