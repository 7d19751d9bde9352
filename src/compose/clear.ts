import { loadBooleans } from '../geometry/booleans.ts';
import { clipPieces } from '../geometry/clip.ts';
import { piecesBox } from '../geometry/measure.ts';
import type { Box, Piece } from '../geometry/path.ts';
import { keptIn, keyOf } from '../keep.ts';
import type { Region } from './drawing.ts';

/** Nearer than this, mm, a shape that touches the room is not cut by it. */
const TOUCH = 1e-6;

const rectangle = ({ left, top, right, bottom }: Box): Piece => [
  {
    start: [left, top],
    sides: [
      { kind: 'line', to: [right, top] },
      { kind: 'line', to: [right, bottom] },
      { kind: 'line', to: [left, bottom] },
      { kind: 'line', to: [left, top] },
    ],
  },
];

/** An edge that does not reach the shape cuts nothing, wherever it lies; just outside, it is the same for all. */
const within = (edge: number, low: number, high: number): number => Math.min(Math.max(edge, low - 1), high + 1);

/** What a single edge of the room leaves of a shape that no other edge reaches: the side of it that lies away from the room. */
function besideEdge({ left, top, right, bottom }: Box, reach: Box): Box | undefined {
  const all: Box = { left: -Infinity, top: -Infinity, right: Infinity, bottom: Infinity };
  const found: Box[] = [];
  if (left > reach.left) found.push({ ...all, right: left });
  if (right < reach.right) found.push({ ...all, left: right });
  if (top > reach.top) found.push({ ...all, bottom: top });
  if (bottom < reach.bottom) found.push({ ...all, top: bottom });
  return found.length === 1 ? found[0] : undefined;
}

/** So many cut shapes are kept: the corners of a room and of the one before it, in each part. */
const MOST_CUT = 64;

const cuts = new Map<string, Piece[]>();

/**
 * Takes a rectangle out of what is painted: shapes outside it stay, shapes inside it go, shapes that its edge crosses are cut, each distinct
 * crossing once. An inset stands whole or not at all.
 */
export async function clearRoom(regions: Region[], room: Box): Promise<Region[]> {
  const { subtract } = await loadBooleans();
  return regions.flatMap((region): Region[] => {
    const reach = piecesBox(region.pieces);
    const outside: number[] = [];
    const crossing = new Map<string, { window: Box; at: number[] }>();
    for (let i = 0; i < region.at.length; i += 2) {
      const [x, y] = [region.at[i]!, region.at[i + 1]!];
      const [left, right, top, bottom] = [room.left - x, room.right - x, room.top - y, room.bottom - y];
      const apart =
        reach.right <= left + TOUCH ||
        reach.left >= right - TOUCH ||
        reach.bottom <= top + TOUCH ||
        reach.top >= bottom - TOUCH;
      const inside =
        reach.left >= left - TOUCH &&
        reach.right <= right + TOUCH &&
        reach.top >= top - TOUCH &&
        reach.bottom <= bottom + TOUCH;
      if (apart) outside.push(x, y);
      else if (!inside && region.part !== 'inset') {
        const window = {
          left: within(left, reach.left, reach.right),
          right: within(right, reach.left, reach.right),
          top: within(top, reach.top, reach.bottom),
          bottom: within(bottom, reach.top, reach.bottom),
        };
        const key = Object.values(window)
          .map((edge) => Math.round(edge * 1e5))
          .join(' ');
        const same = crossing.get(key) ?? { window, at: [] };
        same.at.push(x, y);
        crossing.set(key, same);
      }
    }
    const kept: Region[] = outside.length > 0 ? [{ ...region, at: Float64Array.from(outside) }] : [];
    for (const { window, at } of crossing.values()) {
      const beside = besideEdge(window, reach);
      const pieces = beside
        ? clipPieces(region.pieces, beside)
        : keptIn(cuts, MOST_CUT, keyOf(region.pieces, window), () => subtract(region.pieces, [rectangle(window)]));
      if (pieces.length > 0) kept.push({ ...region, pieces, cut: true, at: Float64Array.from(at) });
    }
    return kept;
  });
}
