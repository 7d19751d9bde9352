import type { Box, Point, Ring } from '../../geometry/path.ts';

export const line = (from: Point, to: Point): Ring => ({ start: from, sides: [{ kind: 'line', to }] });

const polygon = ([start, ...rest]: [Point, ...Point[]]): Ring => ({
  start,
  sides: rest.map((to) => ({ kind: 'line', to })),
});

export const rectangle = ({ left, top, right, bottom }: Box): Ring =>
  polygon([
    [left, top],
    [right, top],
    [right, bottom],
    [left, bottom],
  ]);

/** Handle of a quarter circle drawn as one cubic, as a share of the radius: off by 0.03 % of it at most. */
const HANDLE = (4 / 3) * (Math.SQRT2 - 1);

/** A rectangle with round corners; with a radius of half its sides, a circle. Clockwise on the page. */
export function rounded({ left, top, right, bottom }: Box, radius: number): Ring {
  const near = radius * (1 - HANDLE);
  const corner = (out: Point, into: Point, to: Point) => ({ kind: 'curve', out, into, to }) as const;
  const straight = (to: Point) => ({ kind: 'line', to }) as const;
  return {
    start: [left + radius, top],
    sides: [
      straight([right - radius, top]),
      corner([right - near, top], [right, top + near], [right, top + radius]),
      straight([right, bottom - radius]),
      corner([right, bottom - near], [right - near, bottom], [right - radius, bottom]),
      straight([left + radius, bottom]),
      corner([left + near, bottom], [left, bottom - near], [left, bottom - radius]),
      straight([left, top + radius]),
      corner([left, top + near], [left + near, top], [left + radius, top]),
    ],
  };
}

export const circle = ([x, y]: Point, radius: number): Ring =>
  rounded({ left: x - radius, top: y - radius, right: x + radius, bottom: y + radius }, radius);
