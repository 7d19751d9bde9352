import { DRAWN } from '../claim.ts';
import type { Frame } from '../read/outline.ts';
import type { Painted } from '../read/plan.ts';
import { centre } from './finder.ts';
import { gatherKinds, type Kinds, placesInside } from './kinds.ts';
import { MIRROR_ACROSS } from './move.ts';
import { type Agreement, agreement, agrees, Pattern, saysAgreement } from './pattern.ts';
import type { Facing } from './ring.ts';
import { Symmetry } from './symmetry.ts';

/** How the repeats of a side follow each other. */
export interface Run {
  /** All alike from end to end, or turned round at the centre; neither where pieces do not repeat. */
  way: 'onward' | 'reversed' | 'neither';
  /** Equal parts in each of the layout's repeats, such as the teeth of a repeat of several. */
  parts: number;
  /** There is one repeat, or one each way: whatever parts it has, they are not seen to come again. */
  isAlone: boolean;
  /** A repeat is its own mirror image. */
  mirrors: boolean;
  /** The side mirrored about its own centre. */
  mirrored: Agreement;
  says: string;
}

/** More equal parts than any repeat has. */
const MOST_PARTS = 24;

/** Looks at the repeats of one side, as many as the layout has of them. */
export function runOf({ pieces, length, count, room }: Facing): Run {
  const mirrored = agreement(pieces, new Pattern(pieces), MIRROR_ACROSS);
  const found: Run = {
    way: 'neither',
    parts: 0,
    isAlone: false,
    mirrors: false,
    mirrored,
    says: 'pieces that do not repeat',
  };
  if (pieces.length === 0 || count < 1) return { ...found, says: 'nothing is painted' };
  const pitch = length / count;
  const half = length / 2;
  const whole = repeating(pieces, -half, half, pitch, room);
  if (whole) {
    const parts = equalParts((by) => repeating(pieces, -half, half, pitch / by, room) !== undefined);
    const symmetry = new Symmetry(whole.all, whole.period);
    return {
      ...found,
      way: 'onward',
      parts,
      isAlone: count === 1,
      mirrors: symmetry.mirrors('across'),
      says: says(count * parts, pitch / parts),
    };
  }
  if (count % 2 !== 0) return found;
  const [before, after] = [pieces.filter((piece) => isBefore(piece)), pieces.filter((piece) => !isBefore(piece))];
  const both = (by: number) =>
    repeating(before, -half, 0, pitch / by, room) !== undefined &&
    repeating(after, 0, half, pitch / by, room) !== undefined;
  if (!both(1)) return found;
  if (!agrees(mirrored)) return { ...found, says: `halves that are no mirror images: ${saysAgreement(mirrored)}` };
  const parts = equalParts(both);
  return {
    ...found,
    way: 'reversed',
    parts,
    isAlone: count === 2,
    says: `${says(count * parts, pitch / parts)}, half of them turned round`,
  };
}

const says = (count: number, pitch: number): string => `${count} of ${pitch.toFixed(3)} mm`;

const isBefore = ({ outline }: Painted): boolean => centre(outline.frame)[0] < 0;

function equalParts(holds: (by: number) => boolean): number {
  for (let by = MOST_PARTS; by > 1; by--) if (holds(by)) return by;
  return 1;
}

/** The kinds of pieces on a stretch, when every place of every kind is filled and nothing else is there. */
function repeating(
  pieces: readonly Painted[],
  low: number,
  high: number,
  pitch: number,
  room?: Frame,
): Kinds | undefined {
  const stretch = (by: number) => ({
    frame: { left: low - by, right: high + by, top: -Infinity, bottom: Infinity },
    room: room && {
      left: Math.max(low, room.left + by),
      right: Math.min(high, room.right - by),
      top: -Infinity,
      bottom: Infinity,
    },
  });
  // Repeats of a border are never cut, so pieces at the ends, and beside a room of lettering, count like any other.
  const { kinds, odd } = gatherKinds(pieces, stretch(1), { across: pitch, along: Infinity });
  const isFull = kinds.all.every(
    (kind) => kind.drawn.size === placesInside(kind, kinds.period, stretch(DRAWN)) && kind.off <= DRAWN,
  );
  return odd.length === 0 && isFull ? kinds : undefined;
}
