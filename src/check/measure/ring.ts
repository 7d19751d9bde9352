import type { BorderWay, LayoutFile } from '../read/layout.ts';
import type { Frame } from '../read/outline.ts';
import type { Painted, Plan } from '../read/plan.ts';
import { across, along, frameOf } from './frame.ts';
import { moveOutline, placing } from './move.ts';

export const SIDES = ['near', 'far', 'left', 'right'] as const;
export type Side = (typeof SIDES)[number];

/** Quarter turns clockwise that bring the far side to where a side lies. */
const TURNS: Record<Side, number> = { far: 0, right: 1, near: 2, left: 3 };

/** A border as it lies round a rectangle. Lengths in mm. */
export interface Ring extends BorderWay {
  /** Begins the names of its elements, and what people call it. */
  order: 'border' | 'inner';
  name: 'border' | 'inner border';
  outer: Frame;
  width: number;
  /** Repeats that the layout has on the near and far sides, and on the other two. */
  repeats: { across: number; along: number };
  sides: Record<Side, Painted[]>;
  corners: Painted[];
  /** The rooms of lettering in it. */
  rooms: Partial<Record<Side, Frame>>;
}

/** A side turned to the far one: its pieces between -length/2 and length/2, its outer edge at `top`. */
export interface Facing {
  side: Side;
  pieces: Painted[];
  length: number;
  top: number;
  count: number;
  /** Room of lettering in it. */
  room?: Frame | undefined;
}

const shrunk = (frame: Frame, dx: number, dy: number): Frame => ({
  left: frame.left + dx,
  right: frame.right - dx,
  top: frame.top + dy,
  bottom: frame.bottom - dy,
});

const WAY: BorderWay = { turn: 'block', run: 'reverse' };

/** The border and the inner border, as far as the layout has them. */
export function ringsOf({ painted, ground }: Plan, { layout, border, inner, lettering = [] }: LayoutFile): Ring[] {
  const work = frameOf(ground.map((outline) => outline.frame));
  const of = (element: string) => painted.filter((piece) => piece.element === element);
  const sides = (order: string) =>
    Object.fromEntries(SIDES.map((side) => [side, of(`${order}-${side}`)])) as Record<Side, Painted[]>;
  const rings: Ring[] = [];
  if (layout.border > 0) {
    rings.push({
      ...(border ?? WAY),
      order: 'border',
      name: 'border',
      outer: work,
      width: layout.border,
      repeats: layout.borderRepeats,
      sides: sides('border'),
      corners: of('corner'),
      rooms: Object.fromEntries(lettering.map(({ place, room }) => [place, room])),
    });
  }
  if (layout.inner) {
    const { width, offset, repeats } = layout.inner;
    rings.push({
      ...(inner ?? WAY),
      order: 'inner',
      name: 'inner border',
      outer: shrunk(work, layout.border + offset.across, layout.border + offset.along),
      width,
      repeats,
      sides: sides('inner'),
      corners: of('inner-corner'),
      rooms: {},
    });
  }
  return rings;
}

export const isOnRing = ({ element }: Painted): boolean =>
  /^(border|inner)-/.test(element) || element === 'corner' || element === 'inner-corner';

export function facing(ring: Ring, side: Side): Facing {
  const isShort = side === 'near' || side === 'far';
  const size = isShort ? across(ring.outer) : along(ring.outer);
  const corners = isShort && ring.turn === 'butt' ? 0 : 2 * ring.width;
  const depth = isShort ? along(ring.outer) : across(ring.outer);
  return {
    side,
    pieces: faced(ring.sides[side], side),
    length: size - corners,
    top: -depth / 2,
    count: ring.repeats[isShort ? 'across' : 'along'],
    room: ring.rooms[side] && facedFrame(ring.rooms[side], side),
  };
}

/** A frame in the near or the far border, turned like its pieces. */
const facedFrame = ({ left, right, top, bottom }: Frame, side: Side): Frame =>
  side === 'near' ? { left: -right, right: -left, top: -bottom, bottom: -top } : { left, right, top, bottom };

/** Pieces turned about the centre of the work so that a side comes to lie where the far one does. */
export function faced(pieces: readonly Painted[], side: Side): Painted[] {
  const move = placing(4 - TURNS[side], 0, 0);
  return pieces.map((piece) => ({ ...piece, outline: moveOutline(piece.outline, move) }));
}
