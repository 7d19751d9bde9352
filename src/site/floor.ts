import type { Point } from '../geometry/path.ts';
import { fail, good, type Result } from '../issue.ts';
import type { Corner, Job, MeasuredRoom } from '../job/job.ts';
import { crossingOf, type FloorRoom, insetRoom, reachesOf } from './floor-room.ts';
import { placeRoom } from './placing.ts';
import { sayCentreLines, sayFloorTapers } from './say-floor.ts';
import { sayObstacles } from './say-obstacles.ts';
import { sayAxis } from './say-placing.ts';
import { saySurvey } from './say-survey.ts';
import type { Site } from './site.ts';
import { CORNERS, type Room } from './walls.ts';

const mapped = (room: Room, move: (point: Point) => Point): Room =>
  Object.fromEntries(CORNERS.map((corner) => [corner, move(room[corner])])) as Record<Corner, Point>;

/** Centre lines nearer to the middle than this, mm, lie in it. */
const MIDWAY = 1e-6;

/** The strip that a job leaves at the walls. */
const stripOf = ({ reserve }: Job) => ({ across: reserve.across.from, along: reserve.along.from });

/**
 * A floor from wall to wall, seen from where its centre lines cross.
 * Issues: those of `placeRoom`, and `site/strip` (the plain strip leaves nothing to paint).
 */
export function floorSite(job: Job): Result<Site> {
  const { room, measured } = job.site;
  if (measured) return measuredFloor(job, measured);
  const [right, bottom] = [(room?.across ?? 0) / 2, (room?.along ?? 0) / 2];
  const corners: Room = {
    'near-left': [-right, bottom],
    'near-right': [right, bottom],
    'far-right': [right, -bottom],
    'far-left': [-right, -bottom],
  };
  return settled(job, {
    room: corners,
    painted: insetRoom(corners, stripOf(job)),
    strip: stripOf(job),
    openings: [],
    obstacles: [],
    centred: { across: true, along: true },
  });
}

/** The same in a room of four walls, in the frame of its axis. */
function measuredFloor(job: Job, measured: MeasuredRoom): Result<Site> {
  const placed = placeRoom(measured, job);
  if (!placed.ok) return placed;
  const placing = placed.value;
  const { axis, into } = placing;
  const patterned = insetRoom(placing.room, stripOf(job));
  const crossing = crossingOf(patterned, axis.through && into(axis.through)[0]);
  const move = ([x, y]: Point): Point => [x - crossing[0], y - crossing[1]];
  const painted = mapped(patterned, move);
  const { left, right } = reachesOf(painted);
  const notes = [
    ...saySurvey(placing.survey, job),
    ...sayObstacles(placing, job),
    ...sayAxis({ ...placing, middle: crossing[0] }, job),
  ];
  return settled(
    job,
    {
      room: mapped(placing.room, move),
      painted,
      strip: stripOf(job),
      openings: placing.openings.map(({ wall, casing }) => ({
        wall,
        casing: [move(into(casing[0])), move(into(casing[1]))],
      })),
      obstacles: placing.obstacles.map(({ name, outline }) => ({
        name,
        outline: outline.map((point) => move(into(point))),
      })),
      centred: { across: Math.abs(left.centre - right.centre) < MIDWAY, along: true },
    },
    notes,
  );
}

function settled(job: Job, floor: FloorRoom, before: string[] = []): Result<Site> {
  const reaches = reachesOf(floor.painted);
  if (Object.values(reaches).some(({ least }) => !(least > 0)))
    return fail(
      'site/strip',
      ['reserve'],
      'the centre lines do not lie inside what the plain strip at the walls leaves of the room',
      job.reserve.across.from > 0 || job.reserve.along.from > 0
        ? 'a narrower strip, or none'
        : 'axis: { parallel to: left }',
    );
  return good({
    surface: 'floor',
    across: { space: reaches.left.centre + reaches.right.centre },
    along: { space: reaches.near.centre + reaches.far.centre },
    notes: [...before, ...sayCentreLines(floor, job), ...sayFloorTapers(floor, job)],
    floor,
  });
}
