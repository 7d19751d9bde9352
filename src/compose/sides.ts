import type { Box, Point } from '../geometry/path.ts';

/** One side of a rectangle that a border runs along. Its motif is drawn for the far side; each side clockwise from there is a quarter turn more. */
export interface Side {
  name: 'near' | 'far' | 'left' | 'right';
  turns: 0 | 1 | 2 | 3;
  /** Middle of the band, mm. */
  middle: Point;
  /** The way the far side's left-to-right runs here. */
  onward: Point;
  length: number;
}

/**
 * The four bands of a border of this width inside a rectangle.
 * @param through the near and far sides run to the outer edge; otherwise all four end at the corner blocks
 */
export function sidesOf(outer: Box, width: number, through: boolean): Side[] {
  const [cx, cy] = [(outer.left + outer.right) / 2, (outer.top + outer.bottom) / 2];
  const across = outer.right - outer.left - (through ? 0 : 2 * width);
  const along = outer.bottom - outer.top - 2 * width;
  const half = width / 2;
  return [
    { name: 'near', turns: 2, middle: [cx, outer.bottom - half], onward: [-1, 0], length: across },
    { name: 'far', turns: 0, middle: [cx, outer.top + half], onward: [1, 0], length: across },
    { name: 'left', turns: 3, middle: [outer.left + half, cy], onward: [0, -1], length: along },
    { name: 'right', turns: 1, middle: [outer.right - half, cy], onward: [0, 1], length: along },
  ];
}
