import { boxCentre } from '../geometry/measure.ts';
import type { Box, Point } from '../geometry/path.ts';
import { shifted } from '../geometry/transform.ts';
import type { Corner } from './corner.ts';
import { isPainted, type Laid } from './cover.ts';
import { type Cut, type CutKey, keepsClear, movedCut } from './key.ts';
import { type Kind, spotKey } from './patch.ts';
import type { Key } from './sheet.ts';

/** What choosing neighbour keys needs to know of a block. Coordinates from the beginning of its cell 0, 0. */
export interface Neighbourhood {
  kinds: Kind[];
  cornersOf: (kind: number) => Corner[];
  pitch: Point;
  nx: number;
  ny: number;
  /** `spotKey` of every window of the sheet. */
  own: Set<number>;
  laid: Laid[];
  windows: Cut[];
  windowsBox: Box;
  bridge: number;
  rim: number;
  margin: number;
}

const SIDES = ['left', 'right', 'top', 'bottom'] as const;

/** A corner of a piece beside the sheet's windows that a key could show. */
interface Candidate extends CutKey {
  side: (typeof SIDES)[number];
  /** By how much it makes the sheet larger, mm. */
  growth: number;
  /** Placements at which that piece is painted. */
  painted: number;
  /** How far from the middle of its side, mm. */
  aside: number;
}

/** How far a box stands out of the windows' box on each side; negative inside. */
const standsOut = (box: Box, windows: Box) => ({
  left: windows.left - box.left,
  right: box.right - windows.right,
  top: windows.top - box.top,
  bottom: box.bottom - windows.bottom,
});

/** Cells round the block: its outermost ones and the next beyond, where the pattern repeats. */
function* cellsRound(nx: number, ny: number): Generator<[i: number, j: number]> {
  for (let j = -1; j <= ny; j++) {
    for (let i = -1; i <= nx; i++) {
      if (i > 0 && i < nx - 1 && j > 0 && j < ny - 1) continue;
      yield [i, j];
    }
  }
}

function candidates(near: Neighbourhood): Candidate[] {
  const { kinds, pitch, nx, ny, own, laid, windows, windowsBox, bridge, rim, margin } = near;
  const middle = boxCentre(windowsBox);
  const found: Candidate[] = [];
  for (const [i, j] of cellsRound(nx, ny)) {
    for (const [kind, { x, y }] of kinds.entries()) {
      if (own.has(spotKey(kind, i, j))) continue;
      const painted = laid.filter((block) => isPainted(block, kind, i, j)).length;
      if (painted === 0) continue;
      const [dx, dy] = [x + i * pitch[0], y + j * pitch[1]];
      for (const corner of near.cornersOf(kind)) {
        const cut = movedCut(corner, dx, dy);
        const out = standsOut(cut.box, windowsBox);
        if (!keepsClear(cut, windows, bridge)) continue;
        const side = SIDES.reduce((most, next) => (out[next] > out[most] + 1e-6 ? next : most));
        const growth = SIDES.reduce((sum, next) => sum + Math.max(0, out[next] + margin - rim), 0);
        const point: Point = [corner.point[0] + dx, corner.point[1] + dy];
        const aside = side === 'left' || side === 'right' ? point[1] - middle[1] : point[0] - middle[0];
        const key: Key = { kind: 'neighbour', piece: shifted(corner.piece, dx, dy), point };
        found.push({ key, cut, side, growth, painted, aside: Math.abs(aside) });
      }
    }
  }
  return found;
}

const rounded = (mm: number): number => Math.round(mm * 100);

/**
 * One key a side that shows a corner of a neighbouring piece, where there is such a piece at any placement: the one that makes
 * the sheet least larger, then the one painted at most placements, then the one nearest the middle of its side.
 * @param mayGrow whether a sheet that must reach so far still fits
 */
export function neighbourKeys(near: Neighbourhood, mayGrow: (cuts: Cut[]) => boolean): CutKey[] {
  const all = candidates(near).sort(
    (a, b) => rounded(a.growth) - rounded(b.growth) || b.painted - a.painted || rounded(a.aside) - rounded(b.aside),
  );
  const chosen: Candidate[] = [];
  // The side whose key is cheapest has it first.
  const sides = SIDES.map((side) => all.filter((candidate) => candidate.side === side))
    .filter((here) => here.length > 0)
    .sort((a, b) => rounded(a[0]!.growth) - rounded(b[0]!.growth));
  for (const here of sides) {
    const next = here.find(
      ({ cut }) =>
        mayGrow([...chosen.map((one) => one.cut), cut]) &&
        keepsClear(
          cut,
          chosen.map((one) => one.cut),
          near.bridge,
        ),
    );
    if (next) chosen.push(next);
  }
  return chosen;
}
