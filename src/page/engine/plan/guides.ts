import type { Point } from '../../../geometry/path.ts';
import type { Corner } from '../../../job/job.ts';
import type { GuideLine } from '../../../marks/schedule.ts';
import { distance, ENDS } from '../../../site/walls.ts';
import { besideWall, stepOf } from '../../../site/walls-outline.ts';
import type { RectangleSeen, RoomSeen } from './seen.ts';

/** A guide line where it lies on the plan. Places in mm, in the coordinates of the work. */
export interface StandingLine {
  name: string;
  /** The point that its marks are measured from. */
  datum: Point;
  end: Point;
  marks: { number: number; at: Point; reads: number; for: string }[];
}

/** Where a line begins and which way it runs: a step of 1 mm. */
type Ray = readonly [datum: Point, way: Point];

const UP: Point = [0, -1];
const RIGHT: Point = [1, 0];
const LEFT: Point = [-1, 0];
const DOWN: Point = [0, 1];

function towards(from: Point, to: Point): Ray {
  const long = distance(from, to);
  return [from, [(to[0] - from[0]) / long, (to[1] - from[1]) / long]];
}

const trueOf = ({ marks }: GuideLine, what: string): number => marks.find((mark) => mark.for === what)?.true ?? 0;

/** Between which corners `near-wall` and the like run. */
function alongWall({ name }: GuideLine, corners: Record<Corner, Point> | undefined): Ray[] {
  const [, wall] = /^(near|far|left|right)-wall$/.exec(name) ?? [];
  if (!wall || !corners) return [];
  const [from, to] = ENDS[wall as 'near'];
  return [towards(corners[from], corners[to])];
}

/** Canvas lies round the work as wide on one side as on the other. */
function onCloth(line: GuideLine, lines: readonly GuideLine[]): Ray[] {
  const [, kind, way] = /^(cut|hem)-(across|along)$/.exec(line.name) ?? [];
  if (!kind) return [];
  const half = (way: string) => (lines.find(({ name }) => name === `${kind}-${way}`)?.marks.at(-1)?.true ?? 0) / 2;
  const datum: Point = [-half('across'), half('along')];
  return [[datum, way === 'across' ? RIGHT : UP]];
}

/** The panel is painted on every step; the plan shows the first. */
function onFirstStep(line: GuideLine, lines: readonly GuideLine[], bottom: number): Ray[] {
  const step = /^(?:riser|tread)-\d+/.exec(line.name)?.[0];
  if (!step || !lines[0]!.name.startsWith(`${step}-`)) return [];
  if (line.name.endsWith('-across')) {
    const low = lines.find(({ name }) => name === `${step}-up` || name === `${step}-back`);
    return [[[-trueOf(line, 'the centre line'), bottom + (low ? belowOf(low) : 0)], RIGHT]];
  }
  return [[[0, bottom + belowOf(line)], UP]];
}

const belowOf = ({ marks }: GuideLine): number => marks.find((mark) => /^(lower|front) edge/.test(mark.for))?.true ?? 0;

/** Everything that is pulled from the axis sideways. */
function besideAxis({ name }: GuideLine, { drawing }: RectangleSeen): Ray[] {
  const side = name.endsWith('-left') ? LEFT : RIGHT;
  const { field, border, innerBorder, lettering = [] } = drawing;
  if (/^across-(left|right)$/.test(name)) return [field.bottom, 0, field.top].map((y): Ray => [[0, y], side]);
  const [, inner, end] = /^(inner-)?border-(near|far)-(?:left|right)$/.exec(name) ?? [];
  if (end) {
    const { outer } = inner ? innerBorder! : border;
    return [[[0, end === 'near' ? outer.bottom : outer.top], side]];
  }
  const [, place] = /^(?:(near|far)-)?lettering-(?:left|right)$/.exec(name) ?? [];
  const line = name.includes('lettering') ? lettering.find((one) => one.place === (place ?? 'centre')) : undefined;
  return line ? [[[0, line.base], side]] : [];
}

/** Where a line of a rectangle of repeats begins; several times where it is pulled more than once. */
function raysIn(line: GuideLine, seen: RectangleSeen): Ray[] {
  const { job, layout, drawing, site, schedule, view } = seen;
  const { work, border, innerBorder } = drawing;
  const { gaps } = layout;
  const near = work.bottom + gaps.near;
  const { floor } = site;
  switch (line.name) {
    case 'axis':
      return [[[0, near], UP]];
    case 'left-edge':
    case 'border-left':
      return [[[border.outer.left, near], UP]];
    case 'right-edge':
    case 'border-right':
      return [[[border.outer.right, near], UP]];
    case 'inner-border-left':
      return innerBorder ? [[[innerBorder.outer.left, near], UP]] : [];
    case 'inner-border-right':
      return innerBorder ? [[[innerBorder.outer.right, near], UP]] : [];
    case 'near-opening':
      return [[[-(job.site.openings?.near ?? 0) / 2, near], RIGHT]];
    case 'far-opening':
      return [[[-(job.site.openings?.far ?? 0) / 2, work.top - gaps.far], RIGHT]];
    case 'room':
      return [work.bottom, work.top].map((y): Ray => [[work.left - gaps.left, y], RIGHT]);
    case 'axis-in-room':
      return view ? [[view.axis.near, UP]] : [];
  }
  if (floor) {
    const [, end] = /^(?:along|across)-(near|far|left|right)$/.exec(line.name) ?? [];
    const ways: Record<string, Point> = { near: DOWN, far: UP, left: LEFT, right: RIGHT };
    return end ? [[[0, 0], ways[end]!]] : alongWall(line, floor.room);
  }
  return [
    ...alongWall(line, view?.corners),
    ...onCloth(line, schedule.lines),
    ...onFirstStep(line, schedule.lines, work.bottom),
    ...besideAxis(line, seen),
  ];
}

/** How far from the ends of a wall the lines off it are squared, as a share of its length. */
const NEAR_ENDS = 0.12;

/** Where a line of a border round a room begins. */
function raysRound({ name }: GuideLine, { outline }: RoomSeen): Ray[] {
  const [, off, number, back] = /^(off-)?wall-(\d+)(-back)?$/.exec(name) ?? [];
  const wall = outline.walls[Number(number) - 1];
  if (!wall) return [];
  if (off)
    return [NEAR_ENDS, 1 - NEAR_ENDS].map(
      (share): Ray => [besideWall(wall, share * wall.length, 0), stepOf(wall.heading + 1)],
    );
  return [[wall.start, stepOf(back ? wall.heading + 2 : wall.heading)]];
}

/** Every guide line that lies on the plan, where it lies. A line that is pulled at several places comes as often. */
export function guidesOf(seen: RectangleSeen | RoomSeen): StandingLine[] {
  return seen.schedule.lines.flatMap((line) =>
    ('outline' in seen ? raysRound(line, seen) : raysIn(line, seen)).map(([datum, [dx, dy]]): StandingLine => {
      const at = (mm: number): Point => [datum[0] + mm * dx, datum[1] + mm * dy];
      return {
        name: line.name,
        datum,
        end: at(Math.max(0, ...line.marks.map((mark) => mark.true))),
        marks: line.marks.map((mark) => ({ number: mark.number, at: at(mark.true), reads: mark.reads, for: mark.for })),
      };
    }),
  );
}
