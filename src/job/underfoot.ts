import { defined } from './defined.ts';
import type { Job } from './job.ts';
import type { Wishes } from './shape/shape.ts';

/** What the job knows of them; nothing where it knows nothing. */
export function underfootOf(wishes: Wishes): Pick<Job, 'underfoot'> {
  const underfoot: NonNullable<Job['underfoot']> = defined({
    is: wishes['floor is'] ?? (wishes.surface === 'floor-cloth' ? ('canvas' as const) : undefined),
    built: wishes['house built'],
    paint: wishes['paint is'],
  });
  return Object.keys(underfoot).length > 0 ? { underfoot } : {};
}
