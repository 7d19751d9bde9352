import { type Claim, DRAWN, type Proof, stated, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { type Clipping, loadClipping, type Polygons } from '../measure/clipping.ts';
import { meetingOf } from '../measure/meeting.ts';
import { everyTwo, saysTwo, type Two } from '../measure/overlap.ts';
import { isGap } from '../measure/pattern.ts';
import type { Painted } from '../read/plan.ts';

const FILE = 'plan.svg';
/** Colours touch where they are nearer than this, mm. */
const TOUCH = 0.02;
/** Colours farther apart than so many gaps are not looked at. */
const NEARBY = 3;
/** Within so many laps of where a stretch ends the lap may be narrower: it tapers into corners, and stops short of its own colour. */
const ENDS = 4;

/** The longest side of the largest of some places, mm. */
function longest(places: readonly number[][]): number {
  let most = 0;
  for (const place of places) {
    const xs = place.filter((_, at) => at % 2 === 0);
    const ys = place.filter((_, at) => at % 2 === 1);
    most = Math.max(most, Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys));
  }
  return most;
}

/** Whether the first colour reaches under the later one all along, but for the ends of the stretch; nothing where they do not touch. */
function lapsAll(first: Polygons, later: Polygons, by: number, clip: Clipping): boolean | undefined {
  const touching = clip.common(clip.grown(first, TOUCH), later, 0);
  if (touching.length === 0) return undefined;
  const lap = clip.common(first, later, 0);
  const half = by / 2 - DRAWN / 2;
  const wide = clip.grown(clip.grown(lap, -half), half + 2 * DRAWN);
  if (longest(clip.without(lap, wide)) > ENDS * by) return false;
  return longest(clip.without(touching, clip.grown(lap, 4 * TOUCH))) <= ENDS * by;
}

/** Whether two colours keep the gap; nothing where they are farther apart than `NEARBY` gaps. */
function isApart(one: Polygons, other: Polygons, gap: number, clip: Clipping): boolean | undefined {
  const meet = (width: number) => clip.shared(clip.grown(one, width / 2), clip.grown(other, width / 2), 0) > 0;
  return meet(NEARBY * gap) ? !meet(gap - DRAWN) : undefined;
}

export const proof: Proof = {
  claims: 'where colours meet one reaches under the other, or a gap stays, by as much as stated',
  files: ['layout.json', 'plan.svg'],
  method: 'outlines of both colours clipped and measured along their common edge',
  tolerance: '0.02 mm',
};

/** Where two colours meet, one reaches under the other, or they keep apart, by as much as is said. */
export default async function meeting(set: FileSet): Promise<Claim[]> {
  const [plan, layout] = [set.plan(), set.layout()];
  const claim = 'colours meet as the layout says';
  if (!layout.ok) return [unproven(FILE, claim, layout.says)];
  const said = layout.value.job.meeting;
  if (!said) return [];
  if (!plan.ok) return [unproven(FILE, claim, plan.says)];
  const clip = await loadClipping();
  const lapsOf = meetingOf(layout.value);
  const painted: Painted[] = plan.value.painted.filter((piece) => !isGap(piece));
  let [count, worst] = [0, ''];
  const reach = said.way === 'gap' ? NEARBY * said.by : TOUCH;
  const tooMany = () => {
    worst = 'more pieces beside each other than on any plan';
  };
  const holds = (two: Two): boolean => {
    const laps = lapsOf(two.one, two.other);
    if (!laps) return true;
    const [first, later] = laps.later === 'one' ? two.polygons.toReversed() : two.polygons;
    const found = (said.way === 'gap' ? isApart : lapsAll)(first!, later!, said.by, clip);
    if (found !== undefined) count += 1;
    return found ?? true;
  };
  for (const two of everyTwo(painted, reach, tooMany)) if (!holds(two) && worst === '') worst = saysTwo(two);
  const says = said.way === 'gap' ? 'two colours keep a gap' : 'the colour painted first reaches under the other';
  const measured = worst === '' ? `all, at ${count} different places` : `not ${worst}`;
  return [stated(FILE, says, worst === '', measured, `all, by ${said.by} mm`)];
}
