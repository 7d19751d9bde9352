import type { Box } from '../geometry/path.ts';

/** An edge nearer than this to a piece touches it, mm. */
const TOUCH = 1e-5;

const EDGES = [
  ['left', 'left'],
  ['right', 'right'],
  ['near', 'bottom'],
  ['far', 'top'],
] as const;

/** The edges of the field that a piece touches, such as `left near`; empty away from them. */
export const edgesOf = (box: Box, field: Box): string =>
  EDGES.filter(([, side]) => Math.abs(box[side] - field[side]) <= TOUCH)
    .map(([name]) => name)
    .join(' ');

/** The side or corner of a room that a piece lies at, such as `right` or `left far`; empty away from it. */
function sideOf(box: Box, room: Box): string {
  const beside = (low: number, high: number, from: number, to: number, names: readonly [string, string]): string => {
    if (Math.abs(high - from) <= TOUCH) return names[0];
    return Math.abs(low - to) <= TOUCH ? names[1] : '';
  };
  const overlaps =
    box.left < room.right - TOUCH &&
    box.right > room.left + TOUCH &&
    box.top < room.bottom - TOUCH &&
    box.bottom > room.top + TOUCH;
  if (overlaps) {
    // A corner of the room was taken out of it.
    const across = box.left + box.right < room.left + room.right ? 'left' : 'right';
    const along = box.top + box.bottom < room.top + room.bottom ? 'far' : 'near';
    return `${across} ${along}`;
  }
  const across = beside(box.left, box.right, room.left, room.right, ['left', 'right']);
  const along = beside(box.top, box.bottom, room.top, room.bottom, ['far', 'near']);
  const level = box.top < room.bottom - TOUCH && box.bottom > room.top + TOUCH;
  const upright = box.left < room.right - TOUCH && box.right > room.left + TOUCH;
  return (level && across) || (upright && along) || '';
}

/** Where a piece lies at one of some rooms in which something else stands; empty away from all. */
export function roomSideOf(box: Box, rooms: Box[]): string {
  for (const room of rooms) {
    const side = sideOf(box, room);
    if (side) return side;
  }
  return '';
}
