import { bad, fail, type Issue, type Result } from '../../issue.ts';
import type { Job } from '../../job/job.ts';
import type { FloorRoom } from '../../site/floor-room.ts';
import { writeLength } from '../../units/index.ts';
import type { Fit } from '../layout.ts';
import { onTape } from '../steps.ts';
import type { FloorAxis, FloorProblem } from './problem.ts';
import { layingsOf, pitchesIn } from './search.ts';

const WALLS = { across: 'left and right', along: 'near and far' };

/** The pitch on the tape nearest to what was allowed that leaves half a repeat or more at both walls, mm. */
function nearestPitch(axis: FloorAxis, { tape }: FloorProblem): number | undefined {
  const { from, to } = axis.pitch;
  const reach = Math.max(...axis.walls.map((wall) => wall.most));
  const off = (pitch: number): number => Math.max(from - pitch, 0, pitch - to);
  return onTape({ from: tape.step, to: 2 * reach }, tape.step)
    .sort((a, b) => off(a) - off(b) || a - b)
    .find((pitch) => layingsOf({ ...axis, halves: { from: 1, to: 20_000 } }, pitch, tape).length > 0);
}

/** Pitches of the two directions that no stretch allowed brings together. */
const apartIssue = ({ field: { stretch } }: Job, way: 'across' | 'along'): Issue => ({
  code: 'fit/none',
  path: ['field', 'pitch', way],
  says: `the pitches and repeats allowed across and along do not go together at a stretch of ${stretch.from} to ${stretch.to}: there is none left ${way}`,
  hint: 'pitch or repeats in one direction only; the other follows from the shape of the motif',
});

/** Why nothing lands, and what would. */
export function noFloor(job: Job, { centred }: FloorRoom, problem: FloorProblem): Result<Fit> {
  const length = (mm: number) => writeLength(mm, job.units, job.step);
  const empty = (['across', 'along'] as const).find((way) => pitchesIn(problem[way].pitch, problem.tape).length === 0);
  if (empty) return bad(apartIssue(job, empty));
  const issues = (['across', 'along'] as const).flatMap((way): Issue[] => {
    const axis = problem[way];
    // Where the stretch is fixed the pitch along follows from the one across, so only that one is looked at alone.
    const pitches = pitchesIn(axis.pitch, problem.tape);
    if (pitches.some((pitch) => layingsOf(axis, pitch, problem.tape).length > 0)) return [];
    const { from, to } = axis.pitch;
    const range = to - from < 1e-9 ? `repeats of ${length(from)}` : `no repeat from ${length(from)} to ${length(to)}`;
    const does = to - from < 1e-9 ? 'leave less than half' : 'leaves half';
    const taper = Math.max(...axis.walls.map((wall) => wall.most - wall.least));
    const crooked = taper > job.step ? `; the wall strays by ${length(taper)} over its length` : '';
    const uneven = centred[way] ? '' : '; the axis does not lie midway between them';
    const near = nearestPitch(axis, problem);
    const repeats = job.field.repeats[way] ? ', and leave `repeats` out' : '';
    return [
      {
        code: 'fit/none',
        path: ['field', 'pitch', way],
        says: `${range} ${does} a repeat or more at the narrowest place of the ${WALLS[way]} walls${crooked}${uneven}`,
        hint: near === undefined ? 'axis: { parallel to: left }' : `pitch: { ${way}: ${length(near)} }${repeats}`,
      },
    ];
  });
  if (issues.length > 0) return bad(...issues);
  const { from, to } = job.field.stretch;
  return fail(
    'fit/none',
    ['field', 'stretch'],
    `each direction has repeats that leave half or more at its walls, but no two of them go together at a stretch of ${from} to ${to}${job.medallion ? ', with room for the medallion clear of the walls and of what is in the room' : ''}`,
    job.medallion
      ? 'a medallion in the room of fewer repeats, or a wider stretch'
      : `stretch: ${Math.max(0.5, from - 0.05).toFixed(2)} to ${(to + 0.05).toFixed(2)}`,
  );
}
