import { DRAWN } from '../claim.ts';
import type { Painted } from '../read/plan.ts';
import { apartAsPolygons, polygonFrame } from './alike.ts';
import { centre } from './finder.ts';
import { flat } from './flat.ts';

const SQUARE = 1;
const key = (part: string, column: number, row: number): string => `${part} ${column} ${row}`;

/** Pieces that are not yet accounted for, found by where they lie and taken out one by one. */
export class Leftover {
  private readonly squares = new Map<string, Painted[]>();
  private readonly left: Set<Painted>;

  constructor(pieces: readonly Painted[]) {
    this.left = new Set(pieces);
    for (const piece of pieces) {
      const [x, y] = centre(piece.outline.frame);
      const at = key(piece.part, Math.floor(x / SQUARE), Math.floor(y / SQUARE));
      const here = this.squares.get(at);
      if (here) here.push(piece);
      else this.squares.set(at, [piece]);
    }
  }

  get rest(): Painted[] {
    return [...this.left];
  }

  /** Takes the piece of this part whose outline is this polygon, if one is left; says how far apart the two lie, mm. */
  take(part: string, polygon: readonly number[]): number | undefined {
    const frame = polygonFrame(polygon);
    const [x, y] = centre(frame);
    for (const column of around(x)) {
      for (const row of around(y)) {
        for (const piece of this.squares.get(key(part, column, row)) ?? []) {
          if (!this.left.has(piece)) continue;
          const { left, right, top, bottom } = piece.outline.frame;
          const off = Math.max(
            Math.abs(left - frame.left),
            Math.abs(right - frame.right),
            Math.abs(top - frame.top),
            Math.abs(bottom - frame.bottom),
          );
          if (off > 2 * DRAWN) continue;
          const apart = apartAsPolygons(flat(piece.outline), polygon, DRAWN);
          if (apart > DRAWN) continue;
          this.left.delete(piece);
          return apart;
        }
      }
    }
    return undefined;
  }
}

const around = (at: number): Set<number> =>
  new Set([-2 * DRAWN, 2 * DRAWN].map((by) => Math.floor((at + by) / SQUARE)));
