import type { Box, Point } from '../geometry/path.ts';
import { bad, fail, good, type Result } from '../issue.ts';
import type { Corner, MeasuredRoom, Wall } from '../job/job.ts';
import { type Axis, layAxis, longestWall } from './axis.ts';
import { pathOf, type Survey, surveyRoom, type Tape } from './corners.ts';
import { frameOf } from './frame.ts';
import { largestClear } from './largest.ts';
import { type PlacedObstacle, placeObstacles } from './obstacles.ts';
import { type PlacedOpening, placeOpenings } from './openings.ts';
import { sayDisagreement } from './say-survey.ts';
import { CORNERS, outlineOf, type Room } from './walls.ts';

/** A room as measured, seen along the axis of the work. Lengths in mm, y down, the near end at the bottom. */
export interface Placing {
  survey: Survey;
  openings: PlacedOpening[];
  obstacles: PlacedObstacle[];
  axis: Axis;
  /** Takes a point of the room into the frame of the work, in which the axis runs straight up. */
  into(point: Point): Point;
  outOf(point: Point): Point;
  /** The room and the outlines of the obstacles in that frame. */
  room: Room;
  blocked: Point[][];
  /** Where the axis lies in that frame, and the largest true rectangle on it. */
  middle: number;
  largest: Box;
  /** Runner between thresholds: how far its square ends may reach, y in that frame. */
  ends?: Ends;
}

/** The lines, square to the axis, at which work between two thresholds begins and ends at the most. */
export interface Ends {
  near: number;
  far: number;
}

/** A reading that misses by more than this many times what careful readings may is not reconciled. */
const TOO_FAR = 4;

/**
 * Where the walls, openings, obstacles and the axis lie, and the largest true rectangle that is left.
 * Issues: those of the survey, openings, obstacles and axis; `site/disagree` (the readings contradict each other),
 * `site/no-room` (nothing is left on that axis).
 * @param centred the wall whose opening an axis goes through that is fixed in direction only
 * @param on the wall that the work is centred on: the axis is parallel with it, or square to it, where nothing else is asked for
 */
export function placeRoom(measured: MeasuredRoom, tape: Tape, centred?: Wall, on?: Wall): Result<Placing> {
  const surveyed = surveyRoom(measured, tape);
  if (!surveyed.ok) return surveyed;
  const survey = surveyed.value;
  const [worst] = survey.disagreements;
  if (worst && Math.abs(worst.given - worst.wouldBe) > TOO_FAR * worst.allowed) {
    const [says, hint] = sayDisagreement(survey, tape);
    return fail('site/disagree', pathOf(worst.reading), says!, hint!);
  }
  const openings = placeOpenings(survey.room, measured.openings, tape);
  const obstacles = placeObstacles(survey.room, measured.obstacles);
  if (!openings.ok || !obstacles.ok)
    return bad(...(openings.ok ? [] : openings.issues), ...(obstacles.ok ? [] : obstacles.issues));
  const axis = layAxis(
    survey.room,
    openings.value,
    measured.axis ?? { way: 'parallel', wall: on ?? longestWall(survey.room) },
  );
  if (!axis.ok) return axis;
  const { into, outOf } = frameOf(axis.value.turn);
  const room = Object.fromEntries(CORNERS.map((corner) => [corner, into(survey.room[corner])])) as Record<
    Corner,
    Point
  >;
  const blocked = obstacles.value.map(({ outline }) => outline.map(into));
  const onto = axis.value.through ?? openings.value.find(({ wall }) => wall === centred)?.centre;
  const through = onto && into(onto)[0];
  const largest = largestClear(outlineOf(room), blocked, through);
  if (!largest)
    return fail('site/no-room', ['site', 'axis'], 'no rectangle fits on this axis', 'axis: { parallel to: left }');
  const middle = through ?? (largest.left + largest.right) / 2;
  return good({
    survey,
    openings: openings.value,
    obstacles: obstacles.value,
    axis: axis.value,
    into,
    outOf,
    room,
    blocked,
    middle,
    largest,
  });
}

/** A rectangle of this size, mm, centred on the largest one. */
export function centredOn({ largest, middle }: Placing, across: number, along: number): Box {
  const level = (largest.top + largest.bottom) / 2;
  return { left: middle - across / 2, right: middle + across / 2, top: level - along / 2, bottom: level + along / 2 };
}
