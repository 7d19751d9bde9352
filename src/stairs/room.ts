import type { Range, Stairs, Step } from '../job/job.ts';
import { type Face, facesOf, frontOf, paintedFaces } from './faces.ts';

/** Sizes nearer to each other than this are one, mm. */
const SAME = 1e-6;

/** What keeps one panel from fitting on every step. */
export interface Misfit {
  way: 'across' | 'along';
  /** The step that is at fault: the one farthest from the others, or the smallest. */
  face: Face;
  /** The step that it does not go with. */
  other: Face;
  /** `apart`: the two differ by more than the margins can take up. `small`: the margins leave nothing of it. */
  why: 'apart' | 'small';
  /** The largest margin that there must be at one side, mm, so that both take the panel. */
  needed: number;
}

/** How many strips of a way take up what a step has more: both sides, or only what lies above the panel. */
export const stripsAt = (way: 'across' | 'along', { stands }: Pick<Stairs, 'stands'>): 1 | 2 =>
  way === 'along' && stands === 'foot' ? 1 : 2;

/** The margin that is allowed on a way. */
export const marginAt = (way: 'across' | 'along', { margin, painted }: Pick<Stairs, 'margin' | 'painted'>): Range =>
  way === 'across' ? margin.sides : margin[painted];

/** What of a face may be painted, mm. */
const roomOn = (face: Face, way: 'across' | 'along', stairs: Stairs): number =>
  way === 'across' ? face.across : face.along - frontOf(face, stairs);

/** Across, the risers and the treads decide together, so that both get the same panel; along, those that are painted. */
const decidingFaces = (steps: readonly Step[], way: 'across' | 'along', stairs: Stairs): Face[] =>
  way === 'across' ? [...facesOf(steps, 'riser'), ...facesOf(steps, 'tread')] : paintedFaces(steps, stairs);

/** The faces by the room they have, least first; equals from the bottom up. */
const byRoom = (faces: Face[], way: 'across' | 'along', stairs: Stairs): Face[] =>
  [...faces].sort((a, b) => roomOn(a, way, stairs) - roomOn(b, way, stairs) || a.step - b.step);

/**
 * The sizes that the panel may have one way, so that on every step its plain strips keep within their limits:
 * no less than the largest step with its widest strips, no more than the smallest with its narrowest. Wished for: as large as it may be.
 */
export function panelRoom(steps: readonly Step[], way: 'across' | 'along', stairs: Stairs): Range | Misfit {
  const sorted = byRoom(decidingFaces(steps, way, stairs), way, stairs);
  const [small, large] = [sorted[0]!, sorted.at(-1)!];
  const strips = stripsAt(way, stairs);
  const margin = marginAt(way, stairs);
  const least = roomOn(large, way, stairs) - strips * margin.to;
  const most = roomOn(small, way, stairs) - strips * margin.from;
  if (most <= SAME) return { way, face: small, other: small, why: 'small', needed: margin.from };
  if (least > most + SAME) {
    const middle = roomOn(sorted[sorted.length >> 1]!, way, stairs);
    const largeIsOdd = roomOn(large, way, stairs) - middle >= middle - roomOn(small, way, stairs);
    const needed = margin.from + (roomOn(large, way, stairs) - roomOn(small, way, stairs)) / strips;
    const [face, other] = largeIsOdd ? [large, small] : [small, large];
    return { way, face, other, why: 'apart', needed };
  }
  const wish = margin.wish === undefined ? most : roomOn(small, way, stairs) - strips * margin.wish;
  const from = Math.max(least, 0);
  return { from: Math.min(from, most), to: most, wish: Math.min(most, Math.max(from, wish)) };
}

export const isMisfit = (room: Range | Misfit): room is Misfit => 'why' in room;

/** A step that a panel of this size does not fit, with the margin that it would have at one side, mm. */
export function stepOutside(
  steps: readonly Step[],
  way: 'across' | 'along',
  size: number,
  stairs: Stairs,
): { face: Face; margin: number } | undefined {
  const margin = marginAt(way, stairs);
  const off = decidingFaces(steps, way, stairs)
    .map((face) => ({ face, margin: (roomOn(face, way, stairs) - size) / stripsAt(way, stairs) }))
    .map((one) => ({ ...one, by: Math.max(margin.from - one.margin, one.margin - margin.to) }))
    .sort((a, b) => b.by - a.by)[0];
  return off && off.by > SAME ? { face: off.face, margin: off.margin } : undefined;
}
