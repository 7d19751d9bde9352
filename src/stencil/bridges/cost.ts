import type { Drawing } from '../../compose/drawing.ts';
import { pieceArea } from '../../geometry/measure.ts';
import type { Part } from '../../motif/motif.ts';

const areaOf = ({ regions }: Drawing, part: Part): number =>
  regions
    .filter((region) => region.part === part && !region.fills)
    .reduce(
      (sum, { pieces, at }) => sum + (at.length / 2) * pieces.reduce((area, piece) => area + pieceArea(piece), 0),
      0,
    );

/** How much of the painted area of each part its bridges take, as shares; parts without bridges are left out. */
export type BridgeCost = Partial<Record<Part, number>>;

/** Compares the work as it is drawn with the work as it is bridged. */
export function costOfBridges(whole: Drawing, bridged: Drawing): BridgeCost {
  const parts = [...new Set(whole.regions.map(({ part }) => part))];
  return Object.fromEntries(
    parts.flatMap((part): [Part, number][] => {
      const before = areaOf(whole, part);
      const share = 1 - areaOf(bridged, part) / before;
      return share > 1e-6 ? [[part, share]] : [];
    }),
  );
}
