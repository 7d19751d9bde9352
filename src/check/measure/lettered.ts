import { DRAWN } from '../claim.ts';
import type { LetteringEntry } from '../read/layout.ts';
import type { Frame } from '../read/outline.ts';
import type { Painted } from '../read/plan.ts';
import { type Move, moveOutline } from './move.ts';

export const saysOf = ({ place }: Pick<LetteringEntry, 'place'>): string =>
  place === 'centre' ? 'the lettering' : `the ${place} lettering`;

const SIDES = ['left', 'right', 'top', 'bottom'] as const;
/** A bridge through the tip of a letter takes away no more of its height than this many times the least bridge. */
const TIP = 2;

/**
 * What lettering reaches as it is drawn, and how far that is from what the layout states. A bridge may stand upright through the top or the foot of the
 * letter that reaches farthest, such as an O, or where letters lean through any; there the stated reach is taken. Nothing may reach farther than stated.
 */
export function reachOf({ reach, arc }: LetteringEntry, drawn: Frame, bridge: number): { seen: Frame; off: number } {
  const seen = { ...drawn };
  let off = 0;
  for (const side of SIDES) {
    const short = side === 'left' || side === 'top' ? drawn[side] - reach[side] : reach[side] - drawn[side];
    const mayLack = arc !== 0 || side === 'top' || side === 'bottom' ? TIP * bridge : DRAWN;
    if (short > DRAWN && short <= mayLack) seen[side] = reach[side];
    else off = Math.max(off, Math.abs(short));
  }
  return { seen, off };
}

/** Capitals with a flat top and a flat foot. The height of the H is that of the capitals; the others come close to it in most faces. */
const FLAT = 'HIEFLTNMKXZ';
/** How much higher or lower than its H another of them may be drawn, and what is a face of another kind, as shares of the cap height. */
const ALIKE = 0.005;
const OTHER = 0.03;

export interface Heights {
  /** How far the foot of a letter lies from the base line, mm. */
  feet: number;
  /** The letter that shows the height best; nothing where the text has none. Off by so much, mm. */
  capitals?: { by: string; foot: number; top: number; allowed: number };
}

/** Looks at each letter as if the base line were straight and the letter stood at 0, 0. */
export function heightsOf(line: LetteringEntry, pieces: readonly Painted[]): Heights {
  const letters = [...line.text.normalize('NFC')];
  if (letters.length !== line.stands.length) return { feet: Infinity };
  const found = letters.flatMap((letter, at) => {
    if (!FLAT.includes(letter)) return [];
    const frames = framesAt(line.stands, at, pieces);
    const foot = Math.min(Infinity, ...frames.map(({ bottom }) => Math.abs(bottom)));
    const top = Math.min(Infinity, ...frames.map((frame) => Math.abs(frame.top + line.capHeight)));
    const allowed = letter === 'H' ? DRAWN : DRAWN + ALIKE * line.capHeight;
    return [{ by: letter, foot, top, allowed }];
  });
  const worse = (one: (typeof found)[number]) => Math.max(one.foot, one.top);
  const order = [...found].sort((a, b) => worse(a) - worse(b));
  const [best] = order;
  const worst = order.filter(({ by }) => by === 'H').at(-1);
  const feet = footsOff(line);
  if (worst) return { feet, capitals: worst };
  return best && worse(best) <= OTHER * line.capHeight ? { feet, capitals: best } : { feet };
}

/** The frames of the pieces that lie nearer to one letter's foot than to any other's, turned upright about that foot. */
function framesAt(stands: LetteringEntry['stands'], at: number, pieces: readonly Painted[]): Frame[] {
  const [x, y, turn] = stands[at]!;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const upright: Move = [cos, sin, -sin, cos, -x * cos - y * sin, x * sin - y * cos];
  const apart = stands.filter((_, other) => other !== at).map(([u, v]) => Math.hypot(u - x, v - y));
  const near = Math.min(Infinity, ...apart);
  return pieces
    .map(({ outline }) => moveOutline(outline, upright).frame)
    .filter(({ left, right }) => Math.abs(left + right) / 2 < near);
}

/** Feet of a straight line lie on its base line; those of a bent one on a circle through the base line on the axis. */
function footsOff({ arc, base, stands }: LetteringEntry): number {
  const [first, last] = [stands[0]!, stands.at(-1)!];
  const lean = Math.sin(last[2]) - Math.sin(first[2]);
  if (arc === 0 || Math.abs(lean) < 1e-9)
    return arc === 0 ? Math.max(...stands.map(([, y, turn]) => Math.abs(y - base) + Math.abs(turn))) : 0;
  const radius = (last[0] - first[0]) / lean;
  const rise = (turn: number) => radius * 2 * Math.sin(turn / 2) ** 2;
  return Math.max(...stands.map(([, y, turn]) => Math.abs(y - rise(turn) - base)));
}
