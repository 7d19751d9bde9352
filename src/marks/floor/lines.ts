import type { Layout } from '../../fit/layout.ts';
import type { Job, Wall } from '../../job/job.ts';
import type { Motif } from '../../motif/motif.ts';
import type { FloorRoom } from '../../site/floor-room.ts';
import { distance, ENDS, nameCorner, wallLength } from '../../site/walls.ts';
import { alternates } from '../alternate.ts';
import { joints } from '../joints.ts';
import { marksAt, type Place } from '../place.ts';
import type { GuideLine } from '../schedule.ts';
import { halfRoom } from '../strip.ts';
import { type Ray, rayTo } from './rays.ts';

type Way = 'across' | 'along';

const WAY: Record<Wall, Way> = { left: 'across', right: 'across', near: 'along', far: 'along' };
/** Repeats are counted from the left edge, or from the near one, of all that are laid. */
const SIGN: Record<Wall, 1 | -1> = { left: -1, right: 1, near: -1, far: 1 };

/** Where repeats meet on the way to a wall, as far as the pattern goes. */
function jointPlaces(layout: Layout, job: Job, wall: Wall, until: number, field?: Motif): Place[] {
  const way = WAY[wall];
  const kind = alternates(job, way);
  const many = field?.counts?.many ?? 'repeats';
  const half = layout.field[way] / 2;
  return joints(layout.field[way], layout.pitch[way], layout.phase[way], field?.counts?.[way]).flatMap((joint) => {
    const at = SIGN[wall] * (joint.at - half);
    if (at < 1e-6 || at > until - 1e-6) return [];
    const begins = joint.begins === undefined ? '' : kind(joint.begins);
    return [{ at, for: `between ${many} ${joint.before} and ${joint.before + 1}${begins}` }];
  });
}

/**
 * Everything that is marked from the crossing to a wall, and where something stands on the line. A line between repeats that it covers is marked beside it, on the
 * squared-off lines; a wall behind it cannot be reached.
 */
function placesTo(ray: Ray, layout: Layout, job: Job, field?: Motif): Place[] {
  const { wall, pattern, end, obstacles } = ray;
  const room = halfRoom(layout, job.medallion, WAY[wall]);
  const on = (at: number) => obstacles.find(({ from, to }) => at > from - 1e-6 && at < to + 1e-6);
  const places: Place[] = jointPlaces(layout, job, wall, pattern, field).map((place) => {
    const over = on(place.at);
    return over ? { ...place, for: `${place.for}, beside the ${over.name}` } : place;
  });
  if (room !== undefined) places.push({ at: room, for: 'edge of the room of the medallion' });
  if (end - pattern > 1e-6 && !on(pattern)) places.push({ at: pattern, for: 'edge of the pattern' });
  if (!on(end)) places.push({ at: end, for: `the ${wall} wall` });
  for (const { name, from, to } of obstacles) {
    if (from > 1e-6) places.push({ at: from, for: `the ${name} begins` });
    if (end - to > 1e-6) places.push({ at: to, for: `the ${name} ends` });
  }
  return places;
}

/** Whether two repeats meet on a centre line, or it runs through the middle of one. */
function lineRuns(layout: Layout, way: Way, field?: Motif): string {
  const half = layout.field[way] / 2;
  const met = joints(layout.field[way], layout.pitch[way], layout.phase[way], field?.counts?.[way]).find(
    (joint) => Math.abs(joint.at - half) < 1e-6,
  );
  const { each, many } = field?.counts ?? { each: 'repeat', many: 'repeats' };
  return met ? `runs between ${many} ${met.before} and ${met.before + 1}` : `runs through the middle of a ${each}`;
}

/** Along each wall from a corner, to find where a centre line meets it. */
function wallLines({ room }: FloorRoom, { step }: Job): GuideLine[] {
  return (['near', 'far', 'left', 'right'] as const).map((wall): GuideLine => {
    const [from, to] = ENDS[wall];
    const [a, b] = [room[from], room[to]];
    // The centre line is x = 0 for the near and far walls, y = 0 for the others.
    const axis = WAY[wall] === 'along' ? 0 : 1;
    const share = a[axis] / (a[axis] - b[axis]);
    const met = distance(a, b) * share;
    const line = axis === 0 ? 'along' : 'across';
    return {
      name: `${wall}-wall`,
      says: `Along the ${wall} wall, to find where the centre line ${line} meets it.`,
      datum: nameCorner(from),
      runs: axis === 0 ? 'right' : 'along',
      marks: marksAt(
        [
          { at: met, for: `the centre line ${line}` },
          { at: wallLength(room, wall), for: nameCorner(to) },
        ],
        step,
      ),
    };
  });
}

/** The two centre lines, found from the walls; then, from where they cross, every line between repeats out to each wall. */
export function floorLines(layout: Layout, job: Job, floor: FloorRoom, field?: Motif): GuideLine[] {
  const other: Record<Way, string> = { across: 'along', along: 'across' };
  const line = (name: string, wall: Wall, runs: GuideLine['runs']): GuideLine => {
    const way = WAY[wall];
    const ends = way === 'across' ? 'near and the far' : 'left and the right';
    return {
      name,
      says:
        `On the centre line ${way}, towards the ${wall} wall; then the lines between repeats once more on squared-off lines near the ${ends} wall, so that each can be snapped through two marks. ` +
        `The centre line ${other[way]} itself ${lineRuns(layout, way, field)}.`,
      datum: 'the crossing of the centre lines',
      runs,
      marks: marksAt(placesTo(rayTo(floor, wall), layout, job, field), job.step),
    };
  };
  return [
    ...wallLines(floor, job),
    line('along-near', 'near', 'near'),
    line('along-far', 'far', 'along'),
    line('across-left', 'left', 'left'),
    line('across-right', 'right', 'right'),
  ];
}
