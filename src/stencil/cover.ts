import type { Point } from '../geometry/path.ts';
import { type Classes, classOf } from './classes.ts';
import type { Orbit, Reach } from './orbit.ts';
import { type Spot, spotKey } from './patch.ts';
import { type Member, onFloor, type Pattern } from './share.ts';
import { bestStart, blockOf, type Cells, type Tiling } from './tiles.ts';

/** Pieces of one member that a sheet reaches in one way, as the sheet sees them. */
export interface Pass {
  member: Member;
  reach: Reach;
  spots: Spot[];
  cells: Cells;
}

/** One way of laying a block: on which member, how reached, where its cell 0, 0 comes to lie, and the spots painted there. */
export interface Laid {
  pass: Pass;
  s: number;
  t: number;
  spots: Spot[];
}

/** Everything one sheet has to paint, class by class and member by member. */
export function passesOf(pattern: Pattern, classes: Classes, orbit: Orbit): Pass[] {
  return orbit.reaches.flatMap((reach) =>
    pattern.members.flatMap((member): Pass[] => {
      const back = new Map(reach.shift.to.map(({ kind, di, dj }, from) => [kind, { from, di, dj }]));
      const spots = member.spots.flatMap(({ kind, i, j }): Spot[] => {
        const { from, di, dj } = back.get(kind)!;
        const spot = { kind: from, i: i - di - reach.s, j: j - dj - reach.t };
        return classOf(classes, spot.kind, spot.i, spot.j) === orbit.first ? [spot] : [];
      });
      if (spots.length === 0) return [];
      const cells = { left: Infinity, right: -Infinity, top: Infinity, bottom: -Infinity };
      for (const { i, j } of spots) {
        cells.left = Math.min(cells.left, i);
        cells.right = Math.max(cells.right, i);
        cells.top = Math.min(cells.top, j);
        cells.bottom = Math.max(cells.bottom, j);
      }
      return [{ member, reach, spots, cells }];
    }),
  );
}

/** How many placements it takes. */
export const countPlacements = (passes: Pass[], tiling: Tiling, classes: Classes): number =>
  passes.reduce((sum, { cells }) => sum + bestStart(tiling, classes, cells).blocks, 0);

/** All placements, class by class, each from far to near and from left to right. Those with nothing to paint are left out. */
export function layBlocks(passes: Pass[], tiling: Tiling, classes: Classes): Laid[] {
  return passes.flatMap((pass) => {
    const { s, t } = bestStart(tiling, classes, pass.cells);
    const blocks = new Map<string, Laid>();
    for (const spot of pass.spots) {
      const at = blockOf(tiling, s, t, spot.i, spot.j);
      const key = `${at.i} ${at.j}`;
      const laid = blocks.get(key) ?? { pass, s: at.i, t: at.j, spots: [] };
      laid.spots.push({ kind: spot.kind, i: spot.i - at.i, j: spot.j - at.j });
      blocks.set(key, laid);
    }
    return [...blocks.values()].sort((a, b) => a.t - b.t || a.s - b.s);
  });
}

/** Where a place of the block (mm from the beginning of its cell 0, 0) comes to lie on the floor. */
export function laidOnFloor({ pass: { member, reach }, s, t }: Laid, [x, y]: Point): Point {
  const [across, along] = member.pitch;
  const { by } = reach.shift;
  return onFloor(member, [by[0] + (s + reach.s) * across + x, by[1] + (t + reach.t) * along + y]);
}

/** Whether the piece of a kind in a cell of the block is painted where the block is laid. */
export function isPainted({ pass: { member, reach }, s, t }: Laid, kind: number, i: number, j: number): boolean {
  const to = reach.shift.to[kind]!;
  return member.known.has(spotKey(to.kind, i + s + reach.s + to.di, j + t + reach.t + to.dj));
}
