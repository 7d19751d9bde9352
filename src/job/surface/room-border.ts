import type { Issue } from '../../issue.ts';
import { inches, type System } from '../../units/index.ts';
import type { Job, Range, RoomBorder, RoomDoor, RoomWall, Way } from '../job.ts';
import type { Wishes } from '../shape/shape.ts';
import type { Path } from '../tree.ts';
import { borderOf } from '../wishes.ts';

const issue = (code: string, path: Path, says: string, hint: string): Issue => ({ code, path, says, hint });

/** Plain strip between wall and border where nothing is said. Common practice, no source. */
const STRIP: Record<System, Range> = { inch: { from: inches(2), to: inches(6) }, metric: { from: 50, to: 150 } };

const FEWEST = 4;
const MOST = 40;

const WALLS = `walls: [13', 11', 13', 11']`;

interface WallWish {
  length: number;
  corner?: RoomWall['corner'] | undefined;
  name?: string | undefined;
}

/** The walls with their names. */
function wallsOf({ site }: Wishes): RoomWall[] {
  return (site?.walls ?? []).map(({ length, corner, name }: WallWish, at) => ({
    name: name ?? `wall ${at + 1}`,
    length,
    corner: corner ?? 'inside',
  }));
}

/** The number, from 0, of the wall that is meant; nothing where there is none. */
function wallNamed(walls: RoomWall[], named: string): number | undefined {
  const number = /^(?:wall )?(\d+)$/i.exec(named)?.[1];
  if (number !== undefined) return walls[Number(number) - 1] && Number(number) - 1;
  const at = walls.findIndex(({ name }) => name.toLowerCase() === named.toLowerCase());
  return at < 0 ? undefined : at;
}

function doorsOf(wishes: Wishes, walls: RoomWall[]): RoomDoor[] {
  return (wishes.site?.doors ?? [])
    .flatMap(({ wall, starts, ends }): RoomDoor[] => {
      const at = wallNamed(walls, wall);
      return at === undefined ? [] : [{ wall: at, starts, ends }];
    })
    .sort((a, b) => a.wall - b.wall || a.starts - b.starts);
}

const hasOutside = (walls: RoomWall[]): boolean => walls.some(({ corner }) => corner === 'outside');

/** What a job for a room border has beside what all jobs have. */
export function roomBorderOf(wishes: Wishes, system: System): Partial<Pick<Job, 'roomBorder'>> {
  if (wishes.surface !== 'room-border') return {};
  const { pitch = 'one', 'at doors': atDoors = 'stop' } = borderOf(wishes);
  const strip = wishes.reserve && 'from' in wishes.reserve ? wishes.reserve : STRIP[system];
  const roomBorder: RoomBorder = { pitch, atDoors, strip };
  return { roomBorder };
}

export function roomSiteOf(wishes: Wishes): Pick<Job['site'], 'walls' | 'doors'> {
  if (wishes.surface !== 'room-border') return {};
  const walls = wallsOf(wishes);
  return { walls, doors: doorsOf(wishes, walls) };
}

/** A border's own corner is drawn for inside corners; where there are others too, blocks are laid at all, unless another way is asked for. */
export const roomWay = (wishes: Wishes, way: Way): Way =>
  wishes.surface === 'room-border' &&
  way.turn === 'own' &&
  borderOf(wishes).turn === undefined &&
  hasOutside(wallsOf(wishes))
    ? { ...way, turn: 'block' }
    : way;

const ELSEWHERE = {
  overall: 'leave it out: the walls decide; `border: width` and `reserve` say how far from them it reaches',
  'end gap': 'leave it out; `reserve` is the plain strip along the walls',
  field: 'leave it out: only the border is painted',
  'inner border': 'leave it out',
  medallion: 'leave it out',
  lettering: 'leave it out',
} as const;

/** What a border round a room needs, and what has no meaning for it. */
export function checkRoomBorder(wishes: Wishes, system: System): Issue[] {
  const { site } = wishes;
  const notHere = (path: Path, instead: string): Issue =>
    issue('job/not-here', path, `${path.join('.')} has no meaning for a border round a room`, instead);
  const issues: Issue[] = [];
  for (const key of ['run', 'run at sides', 'openings', 'room', 'obstacles', 'axis'] as const) {
    const instead = key === 'openings' ? 'doors: [{ wall: 4, starts: 20", ends: 52" }]' : `${WALLS}, or leave it out`;
    if (site?.[key] !== undefined) issues.push(notHere(['site', key], instead));
  }
  for (const key of ['overall', 'end gap', 'field', 'inner border', 'medallion', 'lettering'] as const)
    if (wishes[key] !== undefined) issues.push(notHere([key], ELSEWHERE[key]));
  if (wishes.reserve && !('from' in wishes.reserve))
    issues.push(
      issue(
        'job/not-here',
        ['reserve'],
        'along the walls of a room one reserve holds for all of them; here stand across and along',
        system === 'inch' ? 'reserve: 2" to 6"' : 'reserve: 50 to 150 mm',
      ),
    );
  return [...issues, ...checkWalls(wishes), ...checkDoors(wishes), ...checkWay(wishes)];
}

function checkWalls(wishes: Wishes): Issue[] {
  const walls = wallsOf(wishes);
  const path = ['site', 'walls'];
  if (wishes.site?.walls === undefined)
    return [
      issue(
        'job/missing',
        path,
        'a border round a room needs its walls, in turn, from the near left corner up the left wall and on clockwise',
        WALLS,
      ),
    ];
  if (walls.length < FEWEST || walls.length > MOST || walls.length % 2 === 1)
    return [
      issue(
        'job/walls',
        path,
        `a room of right angles has an even number of walls, ${FEWEST} to ${MOST}; here ${walls.length === 1 ? 'is' : 'are'} ${walls.length}`,
        'every wall in turn, the short ones at the sides of a chimney breast too',
      ),
    ];
  const names = new Set<string>();
  for (const [at, { name }] of walls.entries()) {
    if (names.has(name.toLowerCase()))
      return [issue('job/walls', [...path, at, 'name'], `two walls are called ${name}`, 'a name of its own for each')];
    names.add(name.toLowerCase());
  }
  const outside = walls.filter(({ corner }) => corner === 'outside').length;
  const inside = walls.length - outside;
  if (inside - outside !== 4) {
    const due = (walls.length - 4) / 2;
    return [
      issue(
        'job/walls',
        path,
        `with ${walls.length} walls a room has ${(walls.length + 4) / 2} inside corners and ${due} outside; here are ${inside} and ${outside}`,
        due === 0
          ? 'leave `corner` out'
          : '`corner: outside` at the end of each wall after which you turn left, and only there',
      ),
    ];
  }
  if (walls.at(-1)!.corner === 'outside')
    return [
      issue(
        'job/walls',
        [...path, walls.length - 1, 'corner'],
        'the last wall ends in the near left corner, where the walk began; that is an inside corner',
        'begin at an inside corner with the wall that leads away from it at your left hand',
      ),
    ];
  return [];
}

function checkDoors(wishes: Wishes): Issue[] {
  const walls = wallsOf(wishes);
  const doors = wishes.site?.doors ?? [];
  return doors.flatMap(({ wall, starts, ends }, number): Issue[] => {
    const path = ['site', 'doors', number];
    const at = wallNamed(walls, wall);
    if (at === undefined)
      return [
        issue(
          'job/door',
          [...path, 'wall'],
          `there is no wall ${wall}; there are ${walls.length}${walls.length > 0 ? `, the first called ${walls[0]!.name}` : ''}`,
          walls.length > 0 ? `a number from 1 to ${walls.length}, or a name` : WALLS,
        ),
      ];
    if (ends <= starts)
      return [
        issue('job/door', [...path, 'ends'], 'the door ends before it starts', 'both from the beginning of the wall'),
      ];
    if (ends > walls[at]!.length)
      return [
        issue(
          'job/door',
          [...path, 'ends'],
          `the door ends beyond the end of ${walls[at]!.name}`,
          'both edges of the casing from the beginning of the wall, as one walks clockwise',
        ),
      ];
    const over = doors.findIndex(
      (other, at) =>
        at < number &&
        wallNamed(walls, other.wall) === wallNamed(walls, wall) &&
        other.starts < ends &&
        starts < other.ends,
    );
    if (over >= 0)
      return [
        issue(
          'job/door',
          path,
          `doors ${over + 1} and ${number + 1} lie over each other in ${walls[at]!.name}`,
          'every door by its own two edges, or both as one',
        ),
      ];
    return [];
  });
}

function checkWay(wishes: Wishes): Issue[] {
  const border = borderOf(wishes);
  if (border.motif?.name === 'none')
    return [issue('job/not-here', ['border'], 'a room border without a border paints nothing', 'border: sawtooth')];
  if (border.turn === 'butt')
    return [
      issue('job/turn', ['border', 'turn'], 'along walls no side runs through to the edge of the work', 'turn: block'),
    ];
  if (border.turn === 'own' && hasOutside(wallsOf(wishes)))
    return [
      issue(
        'job/turn',
        ['border', 'turn'],
        'a border’s own corner is drawn for inside corners, and this room has outside ones',
        'turn: block',
      ),
    ];
  return [];
}

/** What other surfaces cannot take of a room border. */
export function notRoomBorder(wishes: Wishes, inText: string): Issue[] {
  const border = borderOf(wishes);
  const found: Path[] = [
    ...(['walls', 'doors'] as const)
      .filter((key) => wishes.site?.[key] !== undefined)
      .map((key): Path => ['site', key]),
    ...(['pitch', 'at doors'] as const).filter((key) => border[key] !== undefined).map((key): Path => ['border', key]),
  ];
  return found.map((path) =>
    issue(
      'job/not-here',
      path,
      `${path.join('.')} has no meaning for ${inText}`,
      'surface: room-border, or leave it out',
    ),
  );
}

/** All but a room border paint a field. */
export const needsField = (wishes: Wishes): Issue[] =>
  wishes.field !== undefined || wishes.surface === 'room-border'
    ? []
    : [issue('job/missing', ['field'], 'field is missing', 'field: { motif: diamond, repeats: { across: 5 } }')];
