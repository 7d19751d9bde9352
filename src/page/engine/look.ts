import type { Drawing } from '../../compose/drawing.ts';
import { asDrawn } from '../../compose/finish.ts';
import { composeWork } from '../../compose/work.ts';
import type { Layout } from '../../fit/layout.ts';
import { good, type Result } from '../../issue.ts';
import type { Job } from '../../job/job.ts';
import { faceFinder } from '../../lettering/faces.ts';
import { scheduleMarks } from '../../marks/marks.ts';
import type { Schedule } from '../../marks/schedule.ts';
import type { AnyFitted, Assets, Fitted } from '../../pipeline.ts';
import type { RoomLayout } from '../../room-border/layout.ts';
import type { FittedRoom } from '../../room-pipeline.ts';
import { viewOf } from '../../site/placed.ts';
import type { Placing } from '../../site/placing.ts';
import type { Site } from '../../site/site.ts';
import { ASKED, fitOnce } from './fitted.ts';
import { linesOf, linesOfRoom, type PlanLines } from './plan/lines.ts';

/** The site without what cannot be told from one thread to another. */
export interface SeenSite extends Omit<Site, 'placing'> {
  placing?: Omit<Placing, 'into' | 'outOf'>;
}

/** What the plan shows while one types: the work as it is painted, bridges left out, and every mark. Lengths in mm. */
export interface Look {
  job: Job;
  site: SeenSite;
  /** Best first; `chosen` is the place of the one that is drawn. */
  layouts: { says: string; layout?: Layout; room?: RoomLayout }[];
  chosen: number;
  searched: number;
  drawing: Drawing;
  schedule: Schedule;
  /** What the plan shows over the painted work. */
  lines: PlanLines;
}

function seenSite({ placing, ...site }: Site): SeenSite {
  if (!placing) return site;
  const { into: _, outOf: __, ...seen } = placing;
  return { ...site, placing: seen };
}

async function ofRectangle(fitted: Fitted, chosen: number, assets?: Assets): Promise<Result<Look>> {
  const { job, site, motifs, fit } = fitted;
  const layout = fit.layouts[chosen]!;
  const drawn = await composeWork(layout, job, motifs, faceFinder(assets), asDrawn);
  if (!drawn.ok) return drawn;
  const { floor } = site;
  const laid = floor && (await import('../../compose/floor.ts'));
  const drawing = drawn.value;
  if (floor && laid) drawing.marked = laid.markedOn(floor, layout, motifs.field);
  const view = viewOf(site, job, layout);
  const { scheduleFloor } = await import('../../marks/floor/schedule.ts');
  const schedule = floor
    ? scheduleFloor(layout, job, floor, motifs.field)
    : scheduleMarks(layout, job, motifs, drawing.lettering, view);
  const layouts = fit.layouts.map((one) => ({ says: one.says, layout: one }));
  const lines = linesOf({ job, layout, drawing, site, schedule, view });
  return good({ job, site: seenSite(site), layouts, chosen, searched: fit.searched, drawing, schedule, lines });
}

async function ofRoom(fitted: FittedRoom, chosen: number): Promise<Result<Look>> {
  const { job, site, outline, motifs, fit } = fitted;
  const { composeRoom } = await import('../../room-border/compose.ts');
  const { scheduleRoom } = await import('../../room-border/marks.ts');
  const layout = fit.layouts[chosen]!;
  const drawing = await composeRoom(outline, layout, job, motifs, asDrawn);
  const schedule = scheduleRoom(outline, layout, job, motifs);
  const layouts = fit.layouts.map((room) => ({ says: room.says, room }));
  const lines = linesOfRoom({ job, layout, outline, drawing, schedule });
  return good({ job, site: seenSite(site), layouts, chosen, searched: fit.searched, drawing, schedule, lines });
}

/** Fits a job and draws the layout that is chosen, counted from 0; the last of them where there are fewer. */
export async function lookAt(text: string, chosen: number, assets?: Assets): Promise<Result<Look>> {
  const fitted = await fitOnce(text, ASKED, assets);
  if (!fitted.ok) return fitted;
  const any: AnyFitted = fitted.value;
  const at = Math.min(chosen, any.value.fit.layouts.length - 1);
  return any.kind === 'rectangle' ? ofRectangle(any.value, at, assets) : ofRoom(any.value, at);
}
