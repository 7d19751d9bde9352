import type { Job } from '../job/job.ts';
import type { Paint } from './plan.ts';
import type { Tin } from './tins.ts';

/** The tins a paint of a job can be bought in, as the job tells them; nothing where it tells none. Sizes in ml. */
export function offeredTins(
  { name, kind, uses }: Pick<Paint, 'name' | 'kind' | 'uses'>,
  paint: Job['paint'],
): Tin[] | undefined {
  if (kind !== 'colour') return paint?.[kind]?.tins;
  const isGround = uses.some(({ on }) => on === 'ground');
  return (isGround ? paint?.ground?.tins : undefined) ?? paint?.colours[name]?.tins ?? paint?.tins;
}
