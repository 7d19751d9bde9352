import type { FloorEntry, WallName } from '../read/floor.ts';
import type { LayoutFile } from '../read/layout.ts';
import { met, onTheWay, WALL_ENDS } from './floor-room.ts';
import { type Due, fromMiddle, joints, kindsFrom, type Place } from './places.ts';

const NEXT_TO_NOTHING = 1e-6;

const RAYS: Record<string, WallName> = {
  'along-near': 'near',
  'along-far': 'far',
  'across-left': 'left',
  'across-right': 'right',
};

/** What a guide line of a floor has to mark. Undefined for a line that floors do not have. */
export function dueOnFloor(line: string, file: LayoutFile, floor: FloorEntry, each: number): Due | undefined {
  const [, side] = /^(near|far|left|right)-wall$/.exec(line) ?? [];
  if (side) return dueWall(floor, side as WallName);
  const wall = RAYS[line];
  return wall && dueTo(file, floor, wall, each);
}

/** Along a wall from its first corner: the centre line, and the other corner. */
function dueWall({ corners }: FloorEntry, wall: WallName): Due {
  const { along, length } = met(corners, wall);
  const line = wall === 'near' || wall === 'far' ? 'along' : 'across';
  const places = [
    { at: along, says: `the centre line ${line}` },
    { at: length, says: `the ${WALL_ENDS[wall][1].replace('-', ' ')} corner` },
  ];
  return { places, joints: [] };
}

/** From the crossing out to a wall. */
function dueTo(file: LayoutFile, floor: FloorEntry, wall: WallName, each: number): Due {
  const way = wall === 'left' || wall === 'right' ? 'across' : 'along';
  const back = wall === 'left' || wall === 'near';
  const { field, pitch, phase } = file.layout;
  const [end, edge] = [met(floor.corners, wall).out, met(floor.pattern, wall).out];
  const standing = onTheWay(floor, wall);
  const under = (at: number) =>
    standing.find(({ from, to }) => at > from - NEXT_TO_NOTHING && at < to + NEXT_TO_NOTHING);
  const within = (at: number) => at > NEXT_TO_NOTHING && at < edge - NEXT_TO_NOTHING;
  const meeting = fromMiddle(joints(-field[way] / 2, field[way], pitch[way], phase[way], each), back).filter(({ at }) =>
    within(at),
  );
  const places: Place[] = kindsFrom(file, way)
    .map(({ at, says }) => ({ at: (back ? -1 : 1) * (at - field[way] / 2), says }))
    .filter(({ at }) => within(at));
  for (const { at } of meeting) {
    const over = under(at);
    if (over) places.push({ at, says: `beside the ${over.name}` });
  }
  if (file.medallion)
    places.push({ at: (file.medallion.repeats[way] * pitch[way]) / 2, says: 'edge of the room of the medallion' });
  if (end - edge > NEXT_TO_NOTHING && !under(edge)) places.push({ at: edge, says: 'edge of the pattern' });
  if (!under(end)) places.push({ at: end, says: `the ${wall} wall` });
  for (const { name, from, to } of standing) {
    if (from > NEXT_TO_NOTHING) places.push({ at: from, says: `the ${name} begins` });
    if (end - to > NEXT_TO_NOTHING) places.push({ at: to, says: `the ${name} ends` });
  }
  return { places, joints: meeting };
}
