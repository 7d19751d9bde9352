import type { Layout } from '../../fit/layout.ts';
import type { Placement } from '../../stencil/sheet.ts';

/** Placements of one pass that are alike but for where they lie: every one of `xs` with every one of `ys`, mm of the work. */
export interface Laid {
  turn: Placement['turn'];
  open: number[];
  xs: number[];
  ys: number[];
}

const key = (value: number): number => Math.round(value * 1e4);
const sorted = (values: Iterable<number>): number[] => [...values].sort((a, b) => a - b);

/** The placements of a pass, gathered so that a whole grid of them is said once. Near ones come first. */
export function gatherPlacements(pass: Placement[]): Laid[] {
  const alike = new Map<string, Placement[]>();
  for (const place of pass) {
    const name = `${place.turn}:${place.open.join()}`;
    alike.set(name, [...(alike.get(name) ?? []), place]);
  }
  return [...alike.values()].flatMap((places) => {
    const columns = new Map<number, { x: number; ys: number[] }>();
    for (const { x, y } of places) {
      const column = columns.get(key(x)) ?? { x, ys: [] };
      column.ys.push(y);
      columns.set(key(x), column);
    }
    const grids = new Map<string, Laid>();
    for (const { x, ys } of columns.values()) {
      const rows = sorted(ys).reverse();
      const name = rows.map(key).join();
      const grid = grids.get(name);
      if (grid) grid.xs.push(x);
      else grids.set(name, { turn: places[0]!.turn, open: places[0]!.open, xs: [x], ys: rows });
    }
    return [...grids.values()].map((grid) => ({ ...grid, xs: sorted(grid.xs) }));
  });
}

/** From y of the work to the distance from the near limit, mm. */
export const alongOf = (y: number, { gaps, work }: Layout): number => gaps.near + work.along / 2 - y;

/** Window numbers as on the sheet, from 1, runs drawn together: `1 to 3, 5`. */
export function windowNumbers(open: number[]): string {
  const runs: [number, number][] = [];
  for (const number of sorted(open.map((index) => index + 1))) {
    const last = runs.at(-1);
    if (last && last[1] === number - 1) last[1] = number;
    else runs.push([number, number]);
  }
  return runs
    .map(([from, to]) => (from === to ? `${from}` : to === from + 1 ? `${from}, ${to}` : `${from} to ${to}`))
    .join(', ');
}
