import { DRAWN } from '../claim.ts';
import type { Frame } from '../read/outline.ts';
import type { Painted } from '../read/plan.ts';
import { loadClipping } from './clipping.ts';
import { flat } from './flat.ts';
import { overlaps } from './window.ts';

/** How many pieces reach into a room by more than a drawing may be off. */
export async function piecesIn(pieces: readonly Painted[], room: Frame): Promise<number> {
  const { inFrame } = await loadClipping();
  const pared = {
    left: room.left + DRAWN,
    right: room.right - DRAWN,
    top: room.top + DRAWN,
    bottom: room.bottom - DRAWN,
  };
  return pieces.filter(({ outline }) => overlaps(outline.frame, pared) && inFrame([flat(outline)], pared).length > 0)
    .length;
}
