import type { Box, Point } from '../geometry/path.ts';
import type { Corner, RugPlace, Wall } from '../job/job.ts';
import { placeFrom } from './obstacles.ts';
import { centredOn, type Placing } from './placing.ts';
import { ENDS, type Room } from './walls.ts';

/** Where a rug lies that is told by a wall or by a table. */
type Told = Exclude<RugPlace, { way: 'centred' }>;

/** The outline of the table in the frame of the work. */
export const tableIn = ({ survey, into }: Placing, table: { corner: Corner; outline: readonly Place[] }): Point[] =>
  table.outline.map((place) => into(placeFrom(survey.room, table.corner, place)));

type Place = { across: number; along: number };

const middleOf = (values: number[]): number => (Math.min(...values) + Math.max(...values)) / 2;

/** How far into the room a wall reaches beside a stretch of it: the x of a side wall, the y of the near or far one. */
function reachOf(room: Room, wall: Wall, from: number, to: number): number {
  const on = wall === 'left' || wall === 'right' ? 1 : 0;
  const [a, b] = ENDS[wall].map((corner) => room[corner]) as [Point, Point];
  const at = (value: number): number => {
    const share = (value - a[on]) / (b[on] - a[on]);
    return a[1 - on]! + share * (b[1 - on]! - a[1 - on]!);
  };
  const both = [at(from), at(to)];
  return wall === 'left' || wall === 'far' ? Math.max(...both) : Math.min(...both);
}

/** A rectangle of this size, mm, where the job wants it, in the frame of the work. */
export function lieOf(placing: Placing, place: RugPlace | undefined, across: number, along: number): Box {
  if (place === undefined || place.way === 'centred') return centredOn(placing, across, along);
  const [x, y] = centreOf(placing, place, across, along);
  return { left: x - across / 2, right: x + across / 2, top: y - along / 2, bottom: y + along / 2 };
}

function centreOf(placing: Placing, place: Told, across: number, along: number): Point {
  const { room } = placing;
  if (place.way === 'table') {
    const outline = tableIn(placing, place);
    return [middleOf(outline.map(([x]) => x)), middleOf(outline.map(([, y]) => y))];
  }
  const { wall, off } = place;
  const ends = ENDS[wall].map((corner) => room[corner]) as [Point, Point];
  const middle: Point = [(ends[0][0] + ends[1][0]) / 2, (ends[0][1] + ends[1][1]) / 2];
  if (wall === 'left' || wall === 'right') {
    const [, y] = middle;
    const edge = reachOf(room, wall, y - along / 2, y + along / 2);
    return [wall === 'left' ? edge + off + across / 2 : edge - off - across / 2, y];
  }
  const [x] = middle;
  const edge = reachOf(room, wall, x - across / 2, x + across / 2);
  return [x, wall === 'far' ? edge + off + along / 2 : edge - off - along / 2];
}
