import { MM_PER_FOOT, MM_PER_INCH, type System } from './unit.ts';

/** Up to so many feet, so many inches: NIST Handbook 44 (2007), Sec. 5.52, tolerances for metal tapes. */
const INCH_TAPE: [feet: number, inches: number][] = [
  [6, 1 / 32],
  [30, 1 / 16],
  [55, 1 / 8],
  [80, 3 / 16],
  [100, 1 / 4],
];

/** A class II tape: 0.3 mm and 0.2 mm a metre or part of one, and 0.2 mm where it starts from its hook (UK SI 2016/1153, Sch. 1I). */
const metricTape = (mm: number): number => 0.3 + 0.2 * Math.ceil(mm / 1000 - 1e-9) + 0.2;

function inchTape(mm: number): number {
  const feet = mm / MM_PER_FOOT;
  const row = INCH_TAPE.find(([upTo]) => feet <= upTo + 1e-9);
  return row ? row[1] * MM_PER_INCH : inchTape(100 * MM_PER_FOOT) + inchTape(mm - 100 * MM_PER_FOOT);
}

/** How far an honest tape may be off over a length, mm. A length over 100 ft is pulled in parts. */
export const tapeTolerance = (mm: number, system: System): number =>
  system === 'inch' ? inchTape(mm) : metricTape(mm);

/** How far a careful reading may be from true: the tape's own tolerance and half of its finest mark, mm. */
export const readingDoubt = (mm: number, step: number, system: System): number => tapeTolerance(mm, system) + step / 2;
