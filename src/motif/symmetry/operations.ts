import type { Point } from '../../geometry/path.ts';
import { holohedry } from './holohedry.ts';
import { angleOf, applyLinear, axisAngle, type Isometry, reflects } from './isometry.ts';
import { type Basis, cellArea, translationAlong, withinCell } from './lattice.ts';
import type { Pattern } from './pattern.ts';
import { dot, length, mean, minus, plus, times } from './vector.ts';

/** A move that brings a pattern onto itself; every translation of the pattern put behind it gives another. */
export type Operation = Isometry &
  (
    | { kind: 'turn' /** How many make a full turn; 1 stands for not moving at all. */; order: number }
    | {
        kind: 'mirror' | 'glide';
        /** Direction of its line, of length 1. */
        axis: Point;
        /** Shortest translation along the line and, from each such line to the next but one, square to it, mm. */
        along: Point;
        aside: Point;
        /** Whether mirrors and glides of this direction take turns, the lattice being centred on them. */
        centred: boolean;
      }
  );

/** What an operation is, its shift brought within one repeat; a mirror's so that it does not glide. */
function describe({ linear, shift }: Isometry, lattice: Basis): Operation {
  if (!reflects(linear)) {
    const order = Math.round((2 * Math.PI) / (Math.abs(angleOf(linear)) || 2 * Math.PI));
    return { kind: 'turn', order, linear, shift: withinCell(lattice, shift) };
  }
  const angle = axisAngle(linear);
  const axis: Point = [Math.cos(angle), Math.sin(angle)];
  const along = translationAlong(lattice, axis)!;
  const aside = translationAlong(lattice, [-axis[1], axis[0]])!;
  const centred = length(along) * length(aside) > 1.5 * cellArea(lattice);
  // Done twice it is a translation along its line, so it glides by a whole number of half translations.
  const halves = Math.round((2 * dot(shift, axis)) / length(along));
  const back = centred ? times(plus(along, aside), halves / 2) : times(along, Math.floor(halves / 2));
  const kind = centred || halves % 2 === 0 ? 'mirror' : 'glide';
  return { kind, axis, along, aside, centred, linear, shift: minus(shift, back) };
}

/** Every symmetry of the pattern, once for all its translations. Not moving comes first. */
export function operationsOf(pattern: Pattern): Operation[] {
  const { lattice, within } = pattern;
  const linears = holohedry(lattice, within);
  const [first, ...others] = pattern.rarest();
  const found: Operation[] = [];
  for (const linear of linears) {
    const shifts: Point[] =
      first === undefined
        ? [[0, 0]]
        : [first, ...others].map((to) => minus(mean(to.points), applyLinear(linear, mean(first.points))));
    // In the smallest repeat there is one shift at most for each turn or mirror image.
    const shift = shifts.find((one) => pattern.isKeptBy({ linear, shift: one }));
    if (shift !== undefined) found.push(describe({ linear, shift }, lattice));
  }
  const rank = (operation: Operation): number => (operation.kind === 'turn' ? operation.order : 10);
  return found.sort((one, other) => rank(one) - rank(other));
}
