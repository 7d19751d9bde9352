import type { Drawing, Region } from './compose/drawing.ts';
import type { Finish } from './compose/finish.ts';
import type { Motifs } from './fit/problem.ts';
import { good, type Issue, type Result } from './issue.ts';
import type { Job } from './job/job.ts';
import type { PaintPlan } from './paint/whole.ts';
import type { RoomFit, RoomLayout } from './room-border/layout.ts';
import type { Site } from './site/site.ts';
import type { RoomOutline } from './site/walls-outline.ts';
import type { Tell } from './stage.ts';

/** A border round a room, fitted. */
export interface FittedRoom {
  job: Job;
  site: Site;
  outline: RoomOutline;
  motifs: Partial<Motifs>;
  fit: RoomFit;
}

export async function fitRoom(job: Job, most: number, why = true): Promise<Result<FittedRoom>> {
  const { findMotif } = await import('./motif/library.ts');
  const { buildSite } = await import('./site/build.ts');
  const { fitRoomBorder } = await import('./room-border/fit.ts');
  const built = buildSite(job);
  if (!built.ok) return built;
  const outline = built.value.outline!;
  const { border } = job;
  const motifs = {
    border: findMotif(border.motif)!,
    ...(border.turn === 'block' ? { corner: findMotif(border.corner.motif)! } : {}),
  };
  const fit = fitRoomBorder(job, outline, motifs, most, why);
  if (!fit.ok) return fit;
  return good({ job, site: built.value, outline, motifs, fit: fit.value });
}

/** The border as it is painted, with bridges where its shapes need them, and what those cost. */
export async function drawRoom({ job, outline, motifs }: FittedRoom, layout: RoomLayout) {
  const { composeRoom, roomRepeat } = await import('./room-border/compose.ts');
  const { loadBridging } = await import('./stencil/bridges/bridging.ts');
  const { inPaintOrder } = await import('./stencil/meeting/meeting.ts');
  const { costOfBridges } = await import('./stencil/bridges/cost.ts');
  const { whole: met, bridged, gaps } = await loadBridging(job.stencil, job.colours);
  const draw = async (finish: Finish) => {
    const drawn = await composeRoom(outline, layout, job, motifs, finish);
    if (job.stencil.meeting.way === 'overlap') drawn.regions.sort(inPaintOrder(job.colours));
    return drawn;
  };
  const drawing = await draw(bridged);
  const bridges = costOfBridges(await draw(met), drawing);
  const repeat = roomRepeat(layout, job, motifs, bridged);
  if (job.stencil.gaps === 'open') return { drawing, repeat, bridges };
  const fills = (await draw(gaps)).regions.map((region): Region => ({ ...region, fills: true }));
  return { drawing: { ...drawing, regions: [...drawing.regions, ...fills] }, repeat, bridges };
}

/** The border as it is painted and what it takes, without its files; or what is wrong with its sheets. */
export async function planRoom(
  fitted: FittedRoom,
  layout: RoomLayout,
): Promise<Result<{ drawing: Drawing; plan: PaintPlan }>> {
  const { cutRoom } = await import('./room-border/cut.ts');
  const { filmsFor } = await import('./stencil/films.ts');
  const { paintOfRoom } = await import('./write/room-border/paint.ts');
  const { job, outline, motifs } = fitted;
  const { drawing } = await drawRoom(fitted, layout);
  const cut = await cutRoom(drawing, job, { outline, layout, job, motifs });
  if (!cut.ok) return cut;
  const films = filmsFor(cut.value, job.stencil.sheet);
  return good({ drawing, plan: paintOfRoom({ ...fitted, drawing, sheets: cut.value }, films) });
}

/** Every file of a room border, and what was found; or what is wrong with its sheets. */
export async function makeRoom(
  fitted: FittedRoom,
  layout: RoomLayout,
  tell: Tell,
): Promise<{ ok: true; files: Map<string, string | Uint8Array>; says: string[] } | { ok: false; issues: Issue[] }> {
  const { cutRoom } = await import('./room-border/cut.ts');
  const { scheduleRoom } = await import('./room-border/marks.ts');
  const { sayBridges } = await import('./stencil/bridges/says.ts');
  const { sayColours } = await import('./colour/says.ts');
  const { writeRoomFiles } = await import('./write/room-border/files.ts');
  const { job, site, outline, motifs } = fitted;
  tell('drawing the work');
  const drawn = await drawRoom(fitted, layout);
  tell('cutting the stencils');
  const cut = await cutRoom(drawn.drawing, job, { outline, layout, job, motifs });
  if (!cut.ok) return cut;
  tell('writing the plan, marks and sheets');
  const schedule = scheduleRoom(outline, layout, job, motifs);
  const looks = sayColours(drawn.drawing, job);
  const files = await writeRoomFiles({ ...fitted, looks, layout, ...drawn, sheets: cut.value, schedule });
  return {
    ok: true,
    files,
    says: [...site.notes, layout.says, ...looks, ...sayBridges(drawn.bridges, job.stencil)],
  };
}
