import { type Claim, DRAWN, type Proof, stated, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { meetingOf } from '../measure/meeting.ts';
import { largestOverlap } from '../measure/overlap.ts';
import { isGap } from '../measure/pattern.ts';

const FILE = 'plan.svg';
const CLAIM = 'no two pieces of the plan overlap';
/** Share of a repeat's area that two pieces may have in common. */
const SHARE = 1e-6;

export const proof: Proof = {
  claims: 'no paint over paint, but as much as colours are said to reach under each other',
  files: ['layout.json', 'plan.svg'],
  method: 'areas of pairs of pieces by clipping',
  tolerance: '0.0015 mm times their length',
};

/** No piece is painted over another, whatever their parts; but where colours are said to reach under each other, one does, and no farther. */
export default async function overlap(set: FileSet): Promise<Claim[]> {
  const [plan, layout] = [set.plan(), set.layout()];
  if (!plan.ok) return [unproven(FILE, CLAIM, plan.says)];
  if (!layout.ok) return [unproven(FILE, CLAIM, layout.says)];
  const { pitch } = layout.value.layout;
  const allowed = SHARE * pitch.across * pitch.along;
  const meeting = meetingOf(layout.value);
  const isLap = layout.value.job.meeting?.way === 'overlap';
  const { area, says } = await largestOverlap(
    plan.value.painted.filter((piece) => !isGap(piece)),
    (one, other) => {
      const laps = isLap ? meeting(one, other) : undefined;
      return laps && { ...laps, by: laps.by + DRAWN };
    },
  );
  const measured = area > allowed ? `${area.toFixed(3)} mm²: ${says}` : `${area.toFixed(6)} mm²`;
  return [stated(FILE, CLAIM, area <= allowed, measured, `${allowed.toFixed(6)} mm²`)];
}
