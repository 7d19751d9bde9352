import type { Piece, Point } from '../../geometry/path.ts';

/** What bridging is asked for. Lengths in mm. */
export interface BridgeSettings {
  /** Width of a bridge, and the least that may be left between two openings. */
  bridge: number;
  /** The least width of a window. */
  window: number;
  /** An island wider than this gets two bridges at least; 25 if not said (common practice, no source). */
  atLeastTwoOver?: number;
  /** `letter`: bridges stand upright in pairs, above and below a counter. Otherwise they follow the shape's own symmetry. */
  style?: 'motif' | 'letter';
  /** Radius of the corners that bridges cut into windows; 0, or not said, for sharp ones. */
  round?: number;
  /** Windows may touch, since no two of them are cut side by side: what lies between two of them is not looked at. */
  apart?: boolean;
}

/** A strip of the sheet left across a window. Lengths in mm. */
export interface Bridge {
  /** `island`: holds a piece that would fall out. `neck`: makes a place that was too thin as wide as a bridge. */
  kind: 'island' | 'neck';
  /** The strip taken out of the windows; its ends reach a little into the sheet on either side. */
  piece: Piece;
  /** The middle of the strip. */
  at: Point;
  /** Its direction, of length 1. */
  way: Point;
  width: number;
  /** From edge to edge of the window it crosses. */
  length: number;
}

/** A fault that no bridge mends: where, how wide, and what it is. Lengths in mm. */
export interface Unmended {
  x: number;
  y: number;
  width: number;
  says: string;
}

export interface Bridged {
  /** The windows with the bridges taken out. */
  windows: Piece[];
  bridges: Bridge[];
  /** Share of the painted area that the bridges cost, 0 to 1. */
  lost: number;
  /** Empty when the windows are sound. */
  unmended: Unmended[];
}
