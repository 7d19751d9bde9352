import { writeLength } from '../../../units/index.ts';
import type { Look } from '../../engine/look.ts';
import { titleOf } from './kind.tsx';

/** The room in one line, as it is read once its part is folded. */
export function saysRoom(look: Look | undefined, surface: string): string {
  const kind = titleOf(surface);
  if (!look || look.job.surface !== surface) return kind;
  const { job, drawing } = look;
  const length = (mm: number) => writeLength(mm, job.units, job.step);
  const { left, right, top, bottom } = drawing.work;
  if (job.site.run !== undefined) return `${kind}, ${length(job.site.run)} from threshold to threshold`;
  if (job.surface === 'stairs') return `${kind}, ${job.site.steps?.length ?? 0} steps`;
  if (job.surface === 'room-border') return `${kind}, ${job.site.walls?.length ?? 0} walls`;
  if (job.surface === 'floor' && job.site.room)
    return `${kind}, ${length(job.site.room.across)} × ${length(job.site.room.along)}`;
  return `${kind}, ${length(right - left)} × ${length(bottom - top)}`;
}
