import { DRAWN } from '../claim.ts';
import type { LayoutNumbers } from '../read/layout.ts';
import type { Field } from './field.ts';
import type { Met } from './repeating.ts';
import type { Way } from './symmetry.ts';

/** What a straight line through the field, or along an edge of it, is to the pattern. */
export interface Line {
  /** Distance from the nearest line on which two repeats meet, and from the nearest through the middle of one, mm. */
  boundary: number;
  middle: number;
  /** The pattern is its own mirror image about it. */
  mirrors: boolean;
}

/** Distance from the nearest line on which two repeats meet, mm. */
export const fromBoundary = (field: Field, layout: LayoutNumbers, way: Way, at: number): number =>
  fromRepeats(field, layout, way, at, 0.5);

function fromRepeats({ repeats }: Field, { pitch }: LayoutNumbers, way: Way, at: number, share: number): number {
  let least = Infinity;
  for (const repeat of repeats) {
    const by = (at - (way === 'across' ? repeat.x : repeat.y)) / pitch[way] - share;
    least = Math.min(least, Math.abs(by - Math.round(by)) * pitch[way]);
  }
  return least;
}

/** @param at x of a line that runs along (`across`), or y of one that runs across */
export const lineAt = (field: Field, layout: LayoutNumbers, way: Way, at: number): Line => ({
  boundary: fromRepeats(field, layout, way, at, 0.5),
  middle: fromRepeats(field, layout, way, at, 0),
  mirrors: field.mirrorsAt(way, at),
});

/**
 * Whole: on a line between repeats that mirrors, or that cuts nothing; where nothing mirrors in that direction, on any line between repeats.
 * Also on a mirror line that cuts nothing. Half: on a mirror line through the middle of a repeat, or of pieces.
 */
export function landsAs(
  line: Line,
  cuts: { halves: number; cut: number },
  anyMirror: boolean,
): { whole: boolean; half: boolean } {
  const crossed = cuts.halves + cuts.cut;
  const between = line.boundary <= DRAWN;
  const wholeBetween = between && (crossed === 0 || !anyMirror || (line.mirrors && cuts.cut === 0));
  return {
    whole: wholeBetween || (line.mirrors && crossed === 0),
    half: line.mirrors && cuts.cut === 0 && (line.middle <= DRAWN || (crossed > 0 && !between)),
  };
}

export const isSound = ({ lost, odd, over }: Met): boolean => lost === 0 && odd === 0 && over === 0;
