import type { FLOORS, PAINTS } from '../job/job.ts';
import { MM_PER_FOOT } from '../units/unit.ts';
import { ML_PER_GALLON } from '../units/volume.ts';

type Underfoot = (typeof FLOORS)[number] | undefined;
type Coating = (typeof PAINTS)[number] | undefined;

/** mm² of floor from one ml, for so many square feet from a U.S. gallon. */
export const fromSquareFeet = (perGallon: number): number => (perGallon * MM_PER_FOOT ** 2) / ML_PER_GALLON;
export const toSquareFeet = (mm2PerMl: number): number => (mm2PerMl * ML_PER_GALLON) / MM_PER_FOOT ** 2;

/**
 * What paint of this volume solids covers at this dry film, mm² from one ml: only the solids stay. In U.S. units it is
 * 231 / 0.001 / 144 = 1604.1667 sq ft per gallon at 1 mil and 100 %.
 * @param solids share, 0 to 1  @param film dry, mm
 */
export const fromSolids = (solids: number, film: number): number => (1000 * solids) / film;

/** Sq ft per gallon of the first, second and third coat, low and high: U.S. Army TM 43-0139, Table 3-2 (oil paint). */
const TABLE: Record<'new wood' | 'weathered wood' | 'repainted wood' | 'concrete' | 'plaster', [number, number][]> = {
  'new wood': [
    [500, 600],
    [500, 600],
    [500, 600],
  ],
  'weathered wood': [
    [300, 400],
    [400, 500],
    [400, 500],
  ],
  'repainted wood': [
    [400, 500],
    [500, 600],
    [500, 600],
  ],
  concrete: [
    [150, 300],
    [300, 400],
    [350, 450],
  ],
  plaster: [
    [250, 350],
    [300, 400],
    [400, 500],
  ],
};

/** What one coat of floor paint covers on a sealed floor, sq ft per gallon. Common practice, no source. */
const EVERYDAY: [number, number] = [350, 400];

const ROW: Record<Exclude<Underfoot, undefined>, keyof typeof TABLE> = {
  'bare wood': 'new wood',
  painted: 'repainted wood',
  varnished: 'repainted wood',
  concrete: 'concrete',
  // No row of the table is canvas; plaster drinks as much.
  canvas: 'plaster',
};

/**
 * What a coat may be taken to cover where the label is not known, sq ft per gallon, low and high. The table is of oil paint; of other
 * paint it is taken only where it is below the everyday allowance.
 * @param coat which one on this surface, from 0
 */
export function usualRange(underfoot: Underfoot, coating: Coating, coat: number): [number, number] {
  if (underfoot === undefined) return EVERYDAY;
  const rows = TABLE[ROW[underfoot]];
  const [low, high] = rows[Math.min(coat, rows.length - 1)]!;
  if (coating === 'oil') return [low, high];
  return [Math.min(low, EVERYDAY[0]), Math.min(high, EVERYDAY[1])];
}

/** The low end of it, mm² from one ml: rather some left than a second trip. */
export const usualCover = (underfoot: Underfoot, coating: Coating, coat: number): number =>
  fromSquareFeet(usualRange(underfoot, coating, coat)[0]);
