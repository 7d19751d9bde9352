import type { FloorEntry } from '../read/floor.ts';
import type { Frame, Outline } from '../read/outline.ts';
import { loadClipping, type Polygons } from './clipping.ts';
import { flat, holds } from './flat.ts';
import { ringOf } from './floor-room.ts';

/** How near the chords of what is cut follow its curves, mm: areas are to be right to a ten-thousandth. */
const FINE = 0.0005;

/** A floor less what stands on it, and what of an outline lies there. */
export interface Floor {
  polygons: Polygons;
  area: number;
  /** mm², 0 or more. */
  areaOf(outline: Outline): number;
  /** What of a polygon lies there. */
  within(polygon: number[]): number[][];
  holds(x: number, y: number): boolean;
}

const ringArea = (ring: readonly number[]): number => {
  let twice = 0;
  for (let i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2)
    twice += ring[j]! * ring[i + 1]! - ring[i]! * ring[j + 1]!;
  return twice / 2;
};

const frameOf = (ring: readonly number[]): Frame => {
  const xs = ring.filter((_, i) => i % 2 === 0);
  const ys = ring.filter((_, i) => i % 2 === 1);
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
};

const apart = (a: Frame, b: Frame): boolean =>
  a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top;

/** @param corners of the room, or of what is patterned of it: four, pointing outwards */
export async function floorOf({ obstacles }: FloorEntry, corners: FloorEntry['corners']): Promise<Floor> {
  const { common, shared, without } = await loadClipping();
  const ring = ringOf(corners);
  const standing = obstacles.map(({ outline }) => outline.flat());
  const frames = standing.map(frameOf);
  const polygons = standing.reduce<Polygons>((left, one) => without(left, [one]), [ring]);
  const isWhole = ({ left, top, right, bottom }: Frame): boolean =>
    holds(ring, left, top) && holds(ring, right, top) && holds(ring, right, bottom) && holds(ring, left, bottom);
  return {
    polygons,
    area: Math.abs(polygons.reduce((sum, one) => sum + ringArea(one), 0)),
    areaOf(outline) {
      const { frame } = outline;
      if (apart(frame, frameOf(ring))) return 0;
      if (isWhole(frame) && frames.every((one) => apart(one, frame))) return Math.abs(outline.area);
      return Math.abs(shared([flat(outline, FINE)], polygons, 0));
    },
    within: (polygon) => common([polygon], polygons, 0),
    holds: (x, y) => polygons.filter((one) => holds(one, x, y)).length % 2 === 1,
  };
}
