import { inches, MM_PER_INCH, type System } from '../units/index.ts';

/** A width a hair over a whole grain, from adding doubles, is still that many. */
const HAIR = 1e-6;

/**
 * The first even whole inch, or multiple of 2 cm, that covers all the widths, mm.
 * A common practice for a runner between openings of different width; no source.
 * @param widths mm, above 0, at least one
 */
export function coveringWidth(widths: number[], system: System): number {
  const widest = Math.max(...widths) - HAIR;
  if (system === 'metric') return Math.max(1, Math.ceil(widest / 20)) * 20;
  return inches(Math.max(1, Math.ceil(widest / (2 * MM_PER_INCH))) * 2);
}
