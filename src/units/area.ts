import { MM_PER_FOOT, MM_PER_INCH, type System } from './unit.ts';

/** A square foot counted in mm² misses 1 by the last bits, and 60 1/2 sq in miss their half: so far off, as a share, they count as whole. */
const HAIR = 1e-9;

const trimmed = (value: number, digits: number): string =>
  (value * (1 + HAIR)).toFixed(digits).replace(/\.0+$|(\.\d*?)0+$/, '$1');

/** An area as a person reads it: `12.5 sq ft` (below 1 sq ft `84 sq in`), or `1.16 m²` (below 0.1 m² `840 cm²`). Takes mm². */
export function writeArea(mm2: number, system: System): string {
  if (system === 'inch') {
    const feet = mm2 / MM_PER_FOOT ** 2;
    return feet < 1 - HAIR ? `${trimmed(mm2 / MM_PER_INCH ** 2, 0)} sq in` : `${trimmed(feet, 1)} sq ft`;
  }
  return mm2 < 100_000 ? `${trimmed(mm2 / 100, 0)} cm²` : `${trimmed(mm2 / 1e6, 2)} m²`;
}
