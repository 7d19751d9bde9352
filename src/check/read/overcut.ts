import { cornerCount, makeOutline, type Outline } from './outline.ts';

/** The stretch that a cut runs on past its start: the ring again, begun at the start, and open at its end. */
export interface Overcut {
  ring: Outline;
  /** Corners and handles as in an outline, the first corner being where the cut comes back to its start. */
  corners: Float64Array;
  handles: Float64Array;
}

/** A path has come back to its start when it is this near, mm: coordinates are written in steps, each to 1 µm or so. */
const BACK = 0.003;

/** The closed ring of a path that runs on past its start, and the stretch it runs there; a path that does not come back as it is. */
export function withoutOvercut(outline: Outline): { ring: Outline; overcut?: Overcut } {
  const { corners, handles } = outline;
  const n = cornerCount(outline);
  const isBack = (i: number) =>
    Math.abs(corners[2 * i]! - corners[0]!) <= BACK && Math.abs(corners[2 * i + 1]! - corners[1]!) <= BACK;
  let back = 2;
  while (back < n && !isBack(back)) back++;
  if (back >= n) return { ring: outline };
  const ring = makeOutline(corners.slice(0, 2 * back), handles.slice(0, 4 * back));
  return { ring, overcut: { ring, corners: corners.slice(2 * back), handles: handles.slice(4 * back, 4 * (n - 1)) } };
}
