import { MM_PER_INCH, writeLength } from '../units/index.ts';
import type { Strip } from './clearance.ts';
import type { Tape } from './corners.ts';
import { nameCorner } from './walls.ts';

/** A strip that narrows by more than this over the length of the work shows beside a straight border. Common practice, no source. */
const SHOWS = MM_PER_INCH / 2;

/** A strip whose narrow end is at least this share of its wide end passes for even. Common practice, no source. */
const PASSES = 0.9;

/**
 * The least plain strip, mm at its narrow end, that hides a taper: wide enough for its ends to look alike. On the tape, rounded up.
 * @param taper mm, 0 or more
 */
export function hidingReserve(taper: number, step: number): number {
  return Math.ceil((taper * PASSES) / (1 - PASSES) / step - 1e-6) * step;
}

/** Whether the strip between work and wall is seen to narrow. */
export const tapers = ({ taper, narrow }: Strip, step: number, limit = SHOWS): boolean =>
  taper > limit + 1e-6 && narrow < hidingReserve(taper, step) - step / 2;

/** A warning for each side that is seen to narrow, with the remedy. @param held the axis is held by two openings, so that no strip of any width is even */
export function sayTapers(strips: Strip[], { units, step }: Tape, limit = SHOWS, held = false): string[] {
  const write = (mm: number): string => writeLength(mm, units, step);
  return strips
    .filter((strip) => tapers(strip, step, limit))
    .map(({ wall, from, to, narrow, taper }) => {
      const [wide, thin] = from.width > to.width ? [from, to] : [to, from];
      const place = ({ corner }: Strip['from']) => nameCorner(corner).replace(' corner', '');
      const remedy = held
        ? `The axis is held by the openings; laid parallel to a wall (axis: { parallel to: ${wall} }) it would be even there.`
        : `Set the work ${write(hidingReserve(taper, step))} off that wall at its narrow end, ${write(hidingReserve(taper, step) - narrow)} more than now, or lay the axis parallel to it.`;
      return (
        `Beside the ${wall} wall the plain strip narrows from ${write(wide.width)} at ${place(wide)} to ${write(thin.width)} at ${place(thin)}, ` +
        `by ${write(taper)}: more than ${write(limit)} shows beside a straight border. ` +
        remedy
      );
    });
}

/** The plain strip that hides the worst taper best, all round; 0 where nothing shows. */
export const bestReserve = (strips: Strip[], step: number, limit = SHOWS): number =>
  Math.max(0, ...strips.filter(({ taper }) => taper > limit).map(({ taper }) => hidingReserve(taper, step)));
