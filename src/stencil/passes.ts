import type { Box } from '../geometry/path.ts';
import { quarterTurn, shiftedBox } from '../geometry/transform.ts';
import type { Placement } from './sheet.ts';

/** Sheets that only touch along their edges lie apart, mm. */
const TOUCH = 1e-6;

function turnedBox({ left, top, right, bottom }: Box, turn: number): Box {
  const move = quarterTurn(turn);
  const [a, b] = [move([left, top]), move([right, bottom])];
  return {
    left: Math.min(a[0], b[0]),
    top: Math.min(a[1], b[1]),
    right: Math.max(a[0], b[0]),
    bottom: Math.max(a[1], b[1]),
  };
}

const overlap = (a: Box, b: Box): boolean =>
  a.left < b.right - TOUCH && b.left < a.right - TOUCH && a.top < b.bottom - TOUCH && b.top < a.bottom - TOUCH;

/** Sorts placements into passes, each into the first pass in which the sheet lies clear of all its other places there. */
export function sortIntoPasses(outline: Box, placements: Placement[]): Placement[][] {
  const passes: { placements: Placement[]; boxes: Box[] }[] = [];
  for (const placement of placements) {
    const box = shiftedBox(turnedBox(outline, placement.turn), placement.x, placement.y);
    let pass = passes.find(({ boxes }) => !boxes.some((other) => overlap(box, other)));
    if (!pass) {
      pass = { placements: [], boxes: [] };
      passes.push(pass);
    }
    pass.placements.push(placement);
    pass.boxes.push(box);
  }
  return passes.map(({ placements: sorted }) => sorted);
}
