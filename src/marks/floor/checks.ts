import { type FloorCuts, lastLines } from '../../fit/floor/cuts.ts';
import type { Point } from '../../geometry/path.ts';
import type { Job, Wall } from '../../job/job.ts';
import type { FloorRoom } from '../../site/floor-room.ts';
import { distance, ENDS } from '../../site/walls.ts';
import { MM_PER_INCH, writeLength, writeTape } from '../../units/index.ts';
import type { SquareCheck } from '../schedule.ts';
import { leanFor, rightTriangle, squareCheck, strayFor } from '../square.ts';
import { clearRun, rayTo } from './rays.ts';

const QUARTERS: readonly [Wall, Wall][] = [
  ['right', 'far'],
  ['left', 'far'],
  ['right', 'near'],
  ['left', 'near'],
];

/** The distances that prove the centre lines square to each other and the lines between repeats true, each with what to do when it is off. */
export function floorChecks(job: Job, floor: FloorRoom, cuts: FloorCuts): SquareCheck[] {
  const { step, units } = job;
  const length = (mm: number) => writeLength(mm, units, step);
  const tape = (mm: number) => writeTape(mm, units, step);
  const plain = squareCheck(step);
  const check = (says: string, mm: number, otherwise: string, between: [Point, Point][]): SquareCheck => ({
    between,
    ...plain(says, mm, otherwise),
  });
  const notable = 2 * step;
  const rate = (mm: number) => `${length(Math.max(step, mm))} for every ${length(notable)}`;
  const whole = job.system === 'inch' ? MM_PER_INCH : 10;
  const arm = (wall: Wall) => clearRun(rayTo(floor, wall));
  const triangles = QUARTERS.map(([side, end]) => ({ side, end, legs: rightTriangle(arm(side), arm(end), whole) }));
  const { side, end, legs } = triangles.reduce((best, one) => (one.legs.slant > best.legs.slant + 1e-6 ? one : best));
  const checks: SquareCheck[] = [];
  if (legs.slant > 0)
    checks.push(
      check(
        `3-4-5 at the crossing of the centre lines: ${tape(legs.across)} towards the ${side} wall, ${tape(legs.along)} towards the ${end} wall, this much between the two points`,
        legs.slant,
        `Too long: turn the centre line across about the crossing, so that its point comes nearer to the ${end} wall, ${rate(strayFor(notable, legs, legs.across))}; too short: the other way, as much. Then pull the marks again.`,
        [
          [
            [side === 'left' ? -legs.across : legs.across, 0],
            [0, end === 'far' ? -legs.along : legs.along],
          ],
        ],
      ),
    );
  for (const [from, to] of [ENDS['near-left to far-right'], ENDS['near-right to far-left']]) {
    const words = (corner: string) => corner.replace('-', ' ');
    checks.push(
      check(
        `Room, ${words(from)} corner to ${words(to)} corner`,
        distance(floor.room[from], floor.room[to]),
        job.site.measured
          ? `Off by more than ${length(notable)}: a wall or a diagonal was misread. Measure the room again and make this job anew; its cuts would be wrong.`
          : `Off by more than ${length(notable)}: the room is not square. Measure its four walls and both diagonals, and make this job anew with them.`,
        [[floor.room[from], floor.room[to]]],
      ),
    );
  }
  const last = lastLines(floor, cuts);
  const grid = { across: last.left + last.right, along: last.near + last.far };
  if (grid.across > 1 && grid.along > 1)
    checks.push(
      check(
        'Outermost lines between repeats, corner to corner, both diagonals',
        Math.sqrt(grid.across * grid.across + grid.along * grid.along),
        `Up to ${length(step)} between the two is only the reading. When near left to far right is the longer, the far corners lie too far to the right: ${rate(leanFor(notable, grid.across, grid.along))} between the two. Snap the lines again before any paint goes on.`,
        [
          [
            [-last.left, last.near],
            [last.right, -last.far],
          ],
          [
            [last.right, last.near],
            [-last.left, -last.far],
          ],
        ],
      ),
    );
  return checks;
}
