import type { Point } from '../geometry/path.ts';
import { quarterTurn } from '../geometry/transform.ts';
import type { Area } from './area.ts';
import { movedPart, type Part, sameParts } from './part.ts';
import {
  type Axis,
  cellsBetween,
  type Kind,
  mirroredPatch,
  type Patch,
  SAME_PLACE,
  type Spot,
  spotKey,
  turnedBack,
} from './patch.ts';
import type { ShapeBook } from './shape.ts';

/** An area as the pattern it shares a sheet with sees it: turned back, its cells and kinds those of the pattern. */
export interface Member {
  area: Area;
  /** Quarter turns that lay the sheet on this area. */
  turn: 0 | 1 | 2 | 3;
  /** Where cell 0, 0 begins, and the pitches, in the floor turned back. */
  origin: Point;
  pitch: Point;
  spots: Spot[];
  /** `spotKey` of every spot. */
  known: Set<number>;
}

/** Areas painted through the same sheets: one pattern of kinds in cells, and where it lies. */
export interface Pattern {
  x: Axis;
  y: Axis;
  kinds: Kind[];
  members: Member[];
  /** Which part of shapes that are split it paints, from the beginning of its cell 0, 0. */
  part?: Part;
  /** An earlier pattern that this one is the mirror image of. */
  mirrorOf?: Pattern;
}

const TURNS = [0, 2, 1, 3] as const;

const sameAxis = (a: Axis, b: Axis, cells: number): boolean =>
  a.repeats === b.repeats && (!a.repeats || Math.abs(a.pitch - b.pitch) * cells <= SAME_PLACE);

const reach = (patch: Patch): number =>
  1 + patch.spots.reduce((most, { i, j }) => Math.max(most, Math.abs(i), Math.abs(j)), 0);

/** Where a kind of one patch is found among another's kinds: which, and how many cells over. */
function renumber(kinds: Kind[], from: Kind, shift: Point, x: Axis, y: Axis) {
  for (const [kind, known] of kinds.entries()) {
    if (known.shape !== from.shape) continue;
    const cells = cellsBetween(x, y, [known.x, known.y], [from.x + shift[0], from.y + shift[1]]);
    if (cells) return { kind, ...cells };
  }
  return undefined;
}

const tidyShift = (shift: number): number => (Math.abs(shift) < SAME_PLACE ? 0 : shift);

/** A patch, turned back, in the cells and kinds of a pattern; nothing when it is another pattern. */
function inPattern(
  pattern: Pick<Pattern, 'x' | 'y' | 'kinds'>,
  patch: Patch,
): Pick<Member, 'origin' | 'spots'> | undefined {
  const cells = reach(patch);
  if (!sameAxis(pattern.x, patch.x, cells) || !sameAxis(pattern.y, patch.y, cells)) return undefined;
  const first = patch.kinds[0]!;
  for (const known of pattern.kinds) {
    if (known.shape !== first.shape) continue;
    const shift: Point = [tidyShift(known.x - first.x), tidyShift(known.y - first.y)];
    const to = patch.kinds.map((kind) => renumber(pattern.kinds, kind, shift, pattern.x, pattern.y));
    if (to.some((found) => found === undefined)) continue;
    const spots = patch.spots.map(({ kind, i, j }): Spot => {
      const found = to[kind]!;
      return { kind: found.kind, i: i + found.di, j: j + found.dj };
    });
    return { origin: [patch.x.start - shift[0], patch.y.start - shift[1]], spots };
  }
  return undefined;
}

/** The part an area is, as a pattern sees it that lies there turned, its cell 0, 0 beginning at `origin`. */
const partIn = ({ part }: Area, turn: number, [x, y]: Point): Part | undefined =>
  part && movedPart(part, -turn, [-x, -y]);

const isCut = ({ family }: Area): boolean => family.endsWith('edge');

/** Sorts areas into patterns, whole repeats first; areas that are equal after quarter turns share one, the largest leading. */
export function shareSheets(areas: Area[], book: ShapeBook): Pattern[] {
  const patterns: Pattern[] = [];
  const order = areas
    .map((area, at) => ({ area, at }))
    .sort(
      (a, b) =>
        Number(isCut(a.area)) - Number(isCut(b.area)) ||
        b.area.patch.kinds.length - a.area.patch.kinds.length ||
        a.at - b.at,
    );
  for (const { area } of order) {
    const member = (turn: Member['turn'], patch: Patch, found: Pick<Member, 'origin' | 'spots'>): Member => ({
      area,
      turn,
      pitch: [patch.x.pitch, patch.y.pitch],
      known: new Set(found.spots.map(({ kind, i, j }) => spotKey(kind, i, j))),
      ...found,
    });
    const joined = patterns.some((pattern) =>
      TURNS.some((turn) => {
        if (pattern.members[0]!.area.family !== area.family) return false;
        const patch = turnedBack(area.patch, turn, book);
        const found = inPattern(pattern, patch);
        if (found && !sameParts(pattern.part, partIn(area, turn, found.origin), pattern.x, pattern.y)) return false;
        if (found) pattern.members.push(member(turn, patch, found));
        return found !== undefined;
      }),
    );
    if (joined) continue;
    const { x, y, kinds, spots } = area.patch;
    const akin = patterns.filter((pattern) => pattern.members[0]!.area.family === area.family);
    const mirror = akin.length > 0 ? mirroredPatch(area.patch, book) : undefined;
    const mirrorOf =
      mirror &&
      akin.find((pattern) => TURNS.some((turn) => inPattern(pattern, turnedBack(mirror, turn, book)) !== undefined));
    patterns.push({
      ...(mirrorOf ? { mirrorOf } : {}),
      x,
      y,
      kinds,
      ...(area.part ? { part: partIn(area, 0, [x.start, y.start])! } : {}),
      members: [member(0, area.patch, { origin: [x.start, y.start], spots })],
    });
  }
  return patterns;
}

/** A place of the pattern, mm from the beginning of its cell 0, 0, on the floor. */
export function onFloor({ turn, origin }: Member, [x, y]: Point): Point {
  return quarterTurn(turn)([origin[0] + x, origin[1] + y]);
}
