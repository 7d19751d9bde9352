import type { Booleans } from '../../geometry/booleans.ts';
import { boxesMeet, pieceArea, pieceBox } from '../../geometry/measure.ts';
import type { Piece } from '../../geometry/path.ts';
import { type Clipper, grown, outers, piecePaths } from '../clip.ts';
import { SLACK } from '../soundness.ts';
import type { BridgeSettings } from './bridge.ts';

/** A chip that bridges cut off a window: narrower than the least window everywhere, and small. Nobody would miss it, and it would tear. */
function isChip(piece: Piece, { bridge, window }: BridgeSettings, clipper: Clipper): boolean {
  if (pieceArea(piece) > bridge * window) return false;
  return outers(clipper, grown(clipper, piecePaths(piece), (SLACK - window) / 2)).length === 0;
}

/** Takes strips out of the windows they touch, and the chips that leaves; the other windows come back as they are. */
export function cutStrips(
  windows: Piece[],
  strips: Piece[],
  settings: BridgeSettings,
  booleans: Booleans,
  clipper: Clipper,
): Piece[] {
  const boxes = strips.map(pieceBox);
  return windows.flatMap((window) => {
    const box = pieceBox(window);
    const own = strips.filter((_, at) => boxesMeet(boxes[at]!, box));
    if (own.length === 0) return [window];
    const ownBoxes = own.map(pieceBox);
    // Strips that may share an edge or a corner are taken one at a time, so as not to be joined to each other first.
    const apart = own.every((_, at) =>
      own.slice(0, at).every((__, other) => !boxesMeet(ownBoxes[at]!, ownBoxes[other]!)),
    );
    const left = apart
      ? booleans.subtract([window], own)
      : own.reduce((pieces, strip) => booleans.subtract(pieces, [strip]), [window]);
    return left.filter((piece) => !isChip(piece, settings, clipper));
  });
}
