/**
 * Sizes of type, in points, chosen for a page that lies on the floor. A letter is read with ease when its height is about 1/150 of the
 * distance (common practice, no source): 1.6 m from eye to floor asks for 10 mm, which only numbers that stand alone can have, and
 * marks-large.html gives them that. Here readings of the tape are 16 pt bold and steps 12 pt, so that one finds the place standing and
 * reads it with a bend of the back; nothing is smaller than 9 pt.
 */
export const SIZES = {
  title: 26,
  kind: 11.5,
  run: 9.5,
  second: 19,
  third: 13.5,
  large: 12,
  body: 10.5,
  soft: 10,
  step: 12,
  list: 10.5,
  reading: 16,
  cell: 10.5,
  head: 9,
  number: 15.5,
  name: 9,
  caption: 9.5,
} as const;

/** From one line of words to the next, as a share of their size. */
export const LEADING = 1.32;

const MM_PER_POINT = 25.4 / 72;

/** A size of type in mm. */
export const mmOf = (points: number): number => points * MM_PER_POINT;
