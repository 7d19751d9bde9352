import { defined } from '../defined.ts';
import type { Job } from '../job.ts';
import type { Coating } from '../paint.ts';
import type { Wishes } from '../shape/shape.ts';

/** Touching up. Common practice, no source. */
const RESERVE = 0.1;

/** What the job says of its paint; nothing where it says nothing. */
export function paintOf({ paint }: Wishes): Pick<Job, 'paint'> {
  if (!paint) return {};
  const { reserve = RESERVE, onHand = {}, colours = {}, time = {}, ...rest } = paint;
  const { 'clear coats': clear, ...hand } = onHand;
  return {
    paint: {
      ...rest,
      reserve,
      onHand: { ...hand, ...(clear === undefined ? {} : { clear }) },
      colours: colours as Record<string, Coating>,
      time: defined(time),
    },
  };
}
