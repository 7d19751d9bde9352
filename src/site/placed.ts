import type { Box } from '../geometry/path.ts';
import type { Job } from '../job/job.ts';
import type { Chosen } from './chosen.ts';
import { lieOf, tableIn } from './lie.ts';
import type { Placing } from './placing.ts';
import { plainView, type RoomView, viewFrom } from './room-view.ts';
import type { Site } from './site.ts';

/** The chosen work in the frame of the room's axis. */
export function workIn(placing: Placing, job: Job, { work, gaps }: Pick<Chosen, 'work' | 'gaps'>): Box {
  if (!placing.ends) return lieOf(placing, job.site.place, work.across, work.along);
  const { middle, ends } = placing;
  const bottom = ends.near - gaps.near;
  return {
    left: middle - work.across / 2,
    right: middle + work.across / 2,
    top: bottom - work.along,
    bottom,
  };
}

/** The room round the chosen work of a rug or a runner, seen from the middle of the work. Undefined where no room was measured. */
export function viewOf(
  site: Pick<Site, 'placing'>,
  job: Job,
  layout: Pick<Chosen, 'work' | 'gaps'>,
): RoomView | undefined {
  const { placing } = site;
  if (placing) {
    const { left, right, top, bottom } = workIn(placing, job, layout);
    const [cx, cy] = [(left + right) / 2, (top + bottom) / 2];
    const view = viewFrom(placing, [cx, cy]);
    const { place } = job.site;
    if (place?.way !== 'table') return view;
    const outline = tableIn(placing, place).map(([x, y]) => [x - cx, y - cy] as const);
    return { ...view, over: [{ name: 'table', outline }] };
  }
  return job.surface === 'rug' && job.site.room ? plainView(layout.work, layout.gaps) : undefined;
}
