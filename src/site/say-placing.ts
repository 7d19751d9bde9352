import type { Box, Point } from '../geometry/path.ts';
import type { Corner, Job, Wall } from '../job/job.ts';
import { writeLength } from '../units/index.ts';
import { listed } from '../words.ts';
import { stripsBeside, toCasings } from './clearance.ts';
import type { Tape } from './corners.ts';
import { sayLeans } from './leans.ts';
import type { Placing } from './placing.ts';
import { sayObstacles } from './say-obstacles.ts';
import { saySurvey } from './say-survey.ts';
import { bestReserve, sayTapers, tapers } from './taper.ts';
import { CORNERS, distance, ENDS, nameCorner, nameOf, type Room, WALLS } from './walls.ts';

/** Where an upright line meets the near or far wall. */
export function axisAt(room: Room, wall: 'near' | 'far', x: number): Point {
  const [[x0, y0], [x1, y1]] = ENDS[wall].map((corner) => room[corner]) as [Point, Point];
  return [x, y0 + ((x - x0) * (y1 - y0)) / (x1 - x0)];
}

/** How the axis is set out: where it meets the two walls, and where the middle of the work lies on it. */
export function sayAxis({ room, middle, axis }: Placing, { units, step }: Tape): string[] {
  const write = (mm: number): string => writeLength(mm, units, step);
  const [near, far] = [axisAt(room, 'near', middle), axisAt(room, 'far', middle)];
  const fromLeft = (wall: 'near' | 'far', point: Point) => write(distance(room[ENDS[wall][0]], point));
  return [
    `The axis ${axis.says}. It meets the near wall ${fromLeft('near', near)} from ${nameCorner('near-left')}, and the far wall ${fromLeft('far', far)} from ${nameCorner('far-left')}.`,
  ];
}

function sayLargest({ largest, obstacles }: Placing, { units, step }: Tape): string {
  const write = (mm: number): string => writeLength(mm, units, step);
  // Sizes are said rounded down: a rectangle a hair larger does not fit.
  const down = (mm: number): string => write(Math.floor(mm / step + 1e-6) * step);
  const clear = obstacles.length > 0 ? `, clear of the ${listed(obstacles.map(({ name }) => name))},` : '';
  return `The largest true rectangle on this axis${clear} is ${down(largest.right - largest.left)} across and ${down(largest.bottom - largest.top)} along.`;
}

/** The clearance of a rectangle at each of its corners, its warnings where a taper shows, and the reserve that hides it. */
export function sayClearances(placing: Placing, work: Box, tape: Tape, walls: readonly Wall[] = WALLS): string[] {
  const write = (mm: number): string => writeLength(mm, tape.units, tape.step);
  const strips = stripsBeside(work, placing.room).filter(({ wall }) => walls.includes(wall));
  const at = (corner: Corner): string => {
    const both = strips.flatMap(({ wall, from, to }) =>
      [from, to].filter((end) => end.corner === corner).map(({ width }) => `${write(width)} from ${nameOf(wall)}`),
    );
    return `${nameCorner(corner)} ${listed(both)}`;
  };
  const size = `${write(work.right - work.left)} by ${write(work.bottom - work.top)}`;
  const casings = toCasings(work, placing.openings, placing.into).filter(({ wall }) => walls.includes(wall));
  const nearest = [...new Set(casings.map(({ wall }) => wall))].map((wall) => {
    const both = casings.filter((casing) => casing.wall === wall);
    return `the casings of the ${wall} opening are ${listed(both.map(({ edge, least }) => `${write(least)} (${edge})`))} from the work`;
  });
  const shows = strips.some((strip) => tapers(strip, tape.step));
  const reserve = bestReserve(strips, tape.step);
  return [
    `At ${size} the corners of the work lie clear of the walls: ${listed(CORNERS.map(at))}.`,
    ...(nearest.length > 0
      ? [`${nearest.map((text, n) => (n === 0 ? text.replace('the', 'The') : text)).join('; ')}.`]
      : []),
    ...sayTapers(strips, tape, undefined, walls !== WALLS),
    ...(shows && walls === WALLS
      ? [`A plain strip of ${write(reserve)} or more all round hides how crooked the room is.`]
      : []),
  ];
}

/** Where the middle of a rug lies on its axis. */
function sayMiddle({ room, middle, largest }: Placing, { units, step }: Tape): string {
  const level = (largest.top + largest.bottom) / 2;
  const away = writeLength(axisAt(room, 'near', middle)[1] - level, units, step);
  return `The middle of the work lies on the axis, ${away} from the near wall.`;
}

/** Everything there is to say of a room before the size of the work is known. Work that is not centred in the room has its axis where its size puts it. */
export function sayPlacing(placing: Placing, tape: Tape, place?: Job['site']['place']): string[] {
  const isCentred = place === undefined || place.way === 'centred';
  return [
    ...saySurvey(placing.survey, tape),
    ...sayObstacles(placing, tape),
    ...(isCentred ? [...sayAxis(placing, tape), sayMiddle(placing, tape)] : []),
    ...sayLeans(placing.room, tape),
    ...(isCentred ? [sayLargest(placing, tape)] : []),
  ];
}
