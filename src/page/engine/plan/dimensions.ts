import type { Box, Point } from '../../../geometry/path.ts';
import { ENDS, WALLS } from '../../../site/walls.ts';
import { besideWall } from '../../../site/walls-outline.ts';
import { writeTape } from '../../../units/index.ts';
import type { RectangleSeen, RoomSeen } from './seen.ts';

/** A length that is shown beside the plan, from one point of it to another, mm. The line stands off to the left of one who goes from `from` to `to`. */
export interface Dimension {
  what: 'overall' | 'field' | 'border' | 'reserve' | 'inner border' | 'end gap' | 'pitch' | 'wall';
  from: Point;
  to: Point;
  /** How many lines stand nearer to the plan. */
  tier: number;
  /** Longest first; the first that fits is shown. */
  texts: string[];
}

/** Lengths nearer to each other than this are one, mm. */
const SAME = 1e-6;

/** Where a whole repeat lies in the field, the one nearest to `aim`, from the edge that the phase counts from. */
function oneRepeat(length: number, pitch: number, phase: number, aim: number): [from: number, to: number] | undefined {
  const first = phase > SAME ? (1 - phase) * pitch : 0;
  const many = Math.floor((length - first) / pitch + SAME);
  if (many < 1) return undefined;
  const at = Math.min(many - 1, Math.max(0, Math.round((aim - first) / pitch - 0.5)));
  return [first + at * pitch, first + (at + 1) * pitch];
}

/** The lengths that fix a rectangle of repeats: over everything, the field, one repeat, and what lies between edge and field. */
export function dimensionsOf({ drawing, layout, job, site }: RectangleSeen, ends: Box): Dimension[] {
  const tape = (mm: number) => writeTape(mm, job.units, job.step);
  const { work, border, innerBorder, field } = drawing;
  const { pitch, phase } = layout;
  const found: Dimension[] = [];
  const add = (what: Dimension['what'], from: Point, to: Point, tier: number, length?: string): void => {
    const mm = Math.hypot(to[0] - from[0], to[1] - from[1]);
    if (mm <= SAME) return;
    const text = length ?? tape(mm);
    found.push({
      what,
      from,
      to,
      tier,
      texts: what === 'overall' || what === 'wall' ? [text] : [`${what} ${text}`, text],
    });
  };
  const one = {
    across: oneRepeat(layout.field.across, pitch.across, phase.across, layout.field.across / 2),
    along: oneRepeat(layout.field.along, pitch.along, phase.along, layout.field.along / 2),
  };
  const { floor } = site;
  if (floor) {
    for (const wall of WALLS) {
      const [a, b] = ENDS[wall].map((corner) => floor.room[corner]) as [Point, Point];
      // Walls run from near to far and from left to right; the room lies to the right of the left and the far one.
      if (wall === 'left' || wall === 'far') add('wall', a, b, 0);
      else add('wall', b, a, 0);
    }
    const { left, top } = {
      left: Math.min(work.left, floor.room['far-left'][0]),
      top: Math.min(work.top, floor.room['far-left'][1]),
    };
    if (one.across) add('pitch', [field.left + one.across[0], top], [field.left + one.across[1], top], 1);
    if (one.along) add('pitch', [left, field.bottom - one.along[0]], [left, field.bottom - one.along[1]], 1);
    return found;
  }
  const hasEdge = work.right - field.right > SAME;
  const hasGap = ends.bottom - field.bottom > SAME;
  if (hasEdge) add('field', [field.left, ends.top], [field.right, ends.top], 0);
  add('overall', [work.left, ends.top], [work.right, ends.top], hasEdge ? 1 : 0);
  if (hasGap) add('field', [work.left, field.bottom], [work.left, field.top], 0);
  add('overall', [work.left, ends.bottom], [work.left, ends.top], hasGap ? 1 : 0);
  // Down the right side from the far end, each beside the next.
  const right = (what: Dimension['what'], from: number, to: number) =>
    add(what, [work.right, from], [work.right, to], 0);
  right('end gap', ends.top, work.top);
  right('border', work.top, border.inner.top);
  right('reserve', border.inner.top, innerBorder?.outer.top ?? field.top);
  if (innerBorder) {
    right('inner border', innerBorder.outer.top, innerBorder.inner.top);
    right('reserve', innerBorder.inner.top, field.top);
  }
  if (one.along) right('pitch', field.bottom - one.along[1], field.bottom - one.along[0]);
  if (one.across) add('pitch', [field.left + one.across[1], ends.bottom], [field.left + one.across[0], ends.bottom], 0);
  return found;
}

/** Every wall, and the width of the border. */
export function roomDimensions({ outline, layout, job }: RoomSeen): Dimension[] {
  const tape = (mm: number) => writeTape(mm, job.units, job.step);
  const walls = outline.walls.map(
    (wall): Dimension => ({
      what: 'wall',
      from: wall.start,
      to: besideWall(wall, wall.length, 0),
      tier: 0,
      texts: [tape(wall.length)],
    }),
  );
  const [first] = outline.walls;
  const middle = first!.length / 2;
  const { strip } = layout.runs[0]!;
  const border: Dimension = {
    what: 'border',
    from: besideWall(first!, middle, strip),
    to: besideWall(first!, middle, strip + layout.width),
    tier: 0,
    texts: [`border ${tape(layout.width)}`, tape(layout.width)],
  };
  return [...walls, border];
}
