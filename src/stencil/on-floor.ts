import type { Clip } from '../compose/room-clip.ts';
import { movePiece, quarterTurn } from '../geometry/transform.ts';
import type { Placement, Sheet } from './sheet.ts';

/** Paint of less area than this, mm², is none. */
const LEAST = 0.01;

/** Whether any open window of a sheet, laid there, paints something on the floor. */
function paints({ turn, x, y, open }: Placement, { windows }: Sheet, clip: Clip): boolean {
  const move = quarterTurn(turn);
  return open.some((index) => {
    const laid = movePiece(windows[index]!, (point) => {
      const [u, v] = move(point);
      return [u + x, v + y];
    });
    return clip.area(laid) > LEAST;
  });
}

/**
 * The sheets as they are laid on a floor from wall to wall: placements that would paint nothing but what lies beyond the walls, or under what stands in the
 * room, are left out; so are sheets that are laid nowhere then.
 */
export const sheetsOnFloor = (sheets: Sheet[], clip: Clip): Sheet[] =>
  sheets
    .map((sheet) => ({
      ...sheet,
      passes: sheet.passes
        .map((pass) => pass.filter((placement) => paints(placement, sheet, clip)))
        .filter((pass) => pass.length > 0),
    }))
    .filter(({ passes }) => passes.length > 0);
