import type { Cloth, Size } from '../job/job.ts';

/** `along`: the length of the roll lies along the work; `across`: it lies across the work. */
export type RollWay = 'along' | 'across';

/**
 * Dimensional change of a trial piece as a share, after less before over before: below zero where it shrinks
 * (the definition of ISO 5077 and AATCC TM135, there in per cent).
 */
export const changeOf = (before: number, after: number): number => (after - before) / before;

/** The change across and along the roll; none where no trial piece is told. */
export const changes = ({ swatch }: Pick<Cloth, 'swatch'>): Size =>
  swatch
    ? {
        across: changeOf(swatch.before.across, swatch.after.across),
        along: changeOf(swatch.before.along, swatch.after.along),
      }
    : { across: 0, along: 0 };

/** What to cut, mm, so that it is this size when it has changed: size over 1 + change, each way by the change that applies to it. */
export function beforeChange(size: Size, change: Size, way: RollWay): Size {
  const [across, along] = way === 'along' ? [change.across, change.along] : [change.along, change.across];
  return { across: size.across / (1 + across), along: size.along / (1 + along) };
}
