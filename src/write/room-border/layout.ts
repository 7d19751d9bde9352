import type { Motifs } from '../../fit/problem.ts';
import type { Job } from '../../job/job.ts';
import type { RoomFit, RoomLayout } from '../../room-border/layout.ts';
import type { RoomOutline } from '../../site/walls-outline.ts';
import type { Film } from '../../stencil/films.ts';
import type { Sheet } from '../../stencil/sheet.ts';
import { tapedParts } from '../../stencil/taped.ts';
import { filmEntries, jobEntry, named, sheetEntries, writeLists } from '../layout.ts';
import { printedPages } from '../tiles/pages.ts';
import { boxSize } from './size.ts';

/** The walls with the border along them: places along a wall from its beginning, about the middle of the room on the plan, mm. */
function bordered(outline: RoomOutline, layout: RoomLayout, job: Job) {
  const { rank, width, pitch, stretch, uneven, cost, says, corners, runs } = layout;
  const { box, walls } = outline;
  return {
    rank,
    width,
    pitch,
    stretch,
    uneven,
    cost,
    says,
    turn: job.border.turn,
    run: job.border.run,
    atDoors: job.roomBorder!.atDoors,
    box: { left: box.left, top: box.top, right: box.right, bottom: box.bottom },
    walls: walls.map(({ name, length, measured, corner, heading, start }, at) => {
      const { wall: _, ...run } = runs[at]!;
      return { name, length, measured, corner, heading, start: [...start], ...run };
    }),
    doors: job.site.doors ?? [],
    corners,
  };
}

/** Everything the written files of a room border were made from. JSON text. */
export function writeRoomLayout(
  outline: RoomOutline,
  layout: RoomLayout,
  { searched, proof }: Pick<RoomFit, 'searched' | 'proof'>,
  job: Job,
  motifs: Partial<Motifs>,
  sheets: Sheet[],
  films: Film[],
  /** What else there is to say, by key. */
  more: Record<string, unknown> = {},
): string {
  const print = printedPages(job, { work: boxSize(outline) }, sheets);
  return writeLists({
    evenfield: 1,
    job: jobEntry(job),
    searched,
    proof,
    roomBorder: bordered(outline, layout, job),
    motifs: {
      border: named(job.border),
      ...(motifs.corner ? { corner: named(job.border.corner) } : {}),
    },
    palette: job.palette,
    colours: job.colours,
    taped: tapedParts(job, motifs),
    films: filmEntries(films, sheets, job),
    sheets: sheetEntries(sheets, job),
    ...(print ? { print } : {}),
    ...more,
  });
}
