import type { Surface } from '../../../job/job.ts';
import type { Stage, Work } from './stage.ts';
import { wait } from './waits.ts';

/** How far a kneeling person reaches with a roller in hand, mm: about 24 in (common practice, no source). */
const REACH = 610;

/** `in one strip`, `in 3 strips side by side`: none wider than one reaches. */
const strips = (across: number): string => {
  const count = Math.max(1, Math.ceil(across / REACH - 1e-9));
  return count === 1 ? 'over its whole width at once' : `in ${count} strips side by side, each no wider than you reach`;
};

const wayOut = ({ job, size }: Work): string => {
  if (job.surface === 'floor-cloth')
    return `Work ${strips(Math.min(size.across, size.along))}, from one edge to the edge across from it.`;
  if (job.surface === 'room-border')
    return 'Work from the corner farthest from the door, both ways round, and end at the door.';
  if (job.surface === 'stairs')
    return 'Risers first, from the top down; then every second tread, and the rest when those bear feet.';
  return `Work ${strips(size.across)}, from the far end to the end where you go out.`;
};

const DOWN = 'and press the tape’s edge down.';

function masking(surface: Surface): string[] {
  if (surface === 'floor-cloth') return [];
  if (surface === 'stairs') return [`Mask walls and rails beside the steps, ${DOWN}`];
  if (surface === 'floor') return [`Mask skirting boards, thresholds and what else stands in the floor, ${DOWN}`];
  return [`Mark the outer edge of the work, mask it with tape, ${DOWN}`];
}

/** The colour under everything, edge to edge, with no seam in it. */
export function baseCoat(work: Work): Stage {
  const { job, gaps } = work;
  const { ground } = job.colours;
  return {
    title: 'Base coat',
    steps: [
      ...masking(job.surface),
      ...(gaps ? ['The plain gaps at the two ends stay outside the tape.'] : []),
      `Roll on ${ground} in two thin coats, ${wait('recoat', job.underfoot?.paint)} between them.`,
      `${wayOut(work)} Keep a wet edge: roll each stretch into the one before while that is wet, and stop only at an edge of the work, never in the middle of it.`,
      `${job.surface === 'floor-cloth' ? '' : 'Draw the tape off while the last coat is still soft. '}Let the ground harden before any other tape or chalk touches it.`,
    ],
  };
}

/** Sealing what has been painted. */
export function clearCoats(work: Work): Stage {
  const { job } = work;
  const grip =
    job.surface === 'floor-cloth' || job.surface === 'stairs'
      ? 'a grip additive stirred into the last one'
      : 'a grip additive in the last one if you want it';
  return {
    title: 'Clear coats',
    steps: [
      'Wait until the label allows a coat on top, and longer in the cold and the damp. Vacuum, and wipe with a tack cloth.',
      `Two or three thin clear coats, ${grip}. Stir and never shake; each dries as long as its label says.`,
      `${wayOut(work)} Keep a wet edge here too, and do not go back over what has begun to set.`,
    ],
  };
}
