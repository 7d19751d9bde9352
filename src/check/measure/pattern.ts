import { DRAWN } from '../claim.ts';
import type { Painted } from '../read/plan.ts';
import { centre, Finder } from './finder.ts';
import { type Move, moveOutline } from './move.ts';

/** Painted outlines sorted by part, so that a piece is only ever matched by a piece of its own part. */
export class Pattern {
  readonly pieces: readonly Painted[];
  private readonly finders = new Map<string, { finder: Finder; pieces: Painted[] }>();

  constructor(pieces: readonly Painted[]) {
    this.pieces = pieces;
    const parts = new Map<string, Painted[]>();
    for (const piece of pieces) {
      const same = parts.get(piece.part);
      if (same) same.push(piece);
      else parts.set(piece.part, [piece]);
    }
    for (const [part, same] of parts) {
      this.finders.set(part, { finder: new Finder(same.map((piece) => piece.outline)), pieces: same });
    }
  }

  /** The piece that lies where the given one comes to lie when it is moved. */
  partner(piece: Painted, move: Move): { piece: Painted; apart: number } | undefined {
    const same = this.finders.get(piece.part);
    const found = same?.finder.nearest(moveOutline(piece.outline, move));
    return found && { piece: same!.pieces[found.index]!, apart: found.apart };
  }
}

/** What a comparison of moved pieces with those that lie there found. */
export interface Agreement {
  /** Pieces compared. */
  count: number;
  /** The farthest that any moved corner or handle lies from its partner, mm; Infinity where a piece has none. */
  apart: number;
  /** Sum over all pairs of what the partner lies farther on than the piece, mm. */
  onward: { x: number; y: number };
  /** The worst piece, in words. */
  worst: string;
}

/** Moves pieces and compares each with the piece that lies there; no two may share one. */
export function agreement(pieces: readonly Painted[], pattern: Pattern, move: Move): Agreement {
  const found: Agreement = { count: 0, apart: 0, onward: { x: 0, y: 0 }, worst: '' };
  const taken = new Set<Painted>();
  for (const piece of pieces) {
    const partner = pattern.partner(piece, move);
    found.count += 1;
    const apart = partner && !taken.has(partner.piece) ? partner.apart : Infinity;
    if (apart > found.apart) {
      found.apart = apart;
      const [x, y] = centre(piece.outline.frame);
      const off = apart === Infinity ? 'has no partner' : `lies ${apart.toFixed(3)} mm off its partner`;
      found.worst = `the ${piece.part} piece at ${Math.round(x)}, ${Math.round(y)} ${off}`;
    }
    if (!partner) continue;
    taken.add(partner.piece);
    const [x, y] = centre(piece.outline.frame);
    const [u, v] = centre(partner.piece.outline.frame);
    found.onward.x += u - x;
    found.onward.y += v - y;
  }
  return found;
}

/** Whether an agreement is within what a drawing may be off. */
export const agrees = (found: Agreement): boolean => found.apart <= DRAWN;

/** What was measured: the distance, or the piece that has no partner. */
export const saysAgreement = (found: Agreement): string | number =>
  found.apart === Infinity ? found.worst : found.apart;

/** What is painted over the gaps of bridges; it laps over the rest. */
export const isGap = (piece: Painted): boolean => piece.element.startsWith('gap-');

export const isField = (piece: Painted): boolean => piece.element === 'field';
