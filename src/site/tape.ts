import { MM_PER_INCH, type System } from '../units/index.ts';

const MM_PER_FOOT = 12 * MM_PER_INCH;

/** Up to so many feet, so many inches: NIST Handbook 44 (2007), Sec. 5.52, tolerances for metal tapes. */
const INCH_TAPE: [feet: number, inches: number][] = [
  [6, 1 / 32],
  [30, 1 / 16],
  [55, 1 / 8],
  [80, 3 / 16],
  [100, 1 / 4],
];
const LONGEST = 100 * MM_PER_FOOT;

function inchTape(mm: number): number {
  if (mm > LONGEST + 1e-6) return inchTape(LONGEST) + inchTape(mm - LONGEST);
  const [, inches] = INCH_TAPE.find(([upTo]) => mm <= upTo * MM_PER_FOOT + 1e-6)!;
  return inches * MM_PER_INCH;
}

/** A class II tape: 0.3 mm and 0.2 mm a metre or part of one, and 0.2 mm where it starts from its hook (UK SI 2016/1153, Sch. 1I). */
const metricTape = (mm: number): number => 0.3 + 0.2 * Math.ceil(mm / 1000 - 1e-9) + 0.2;

/**
 * How far a careful reading may be from true, mm: what an honest tape may be off over the length, and half of its finest mark.
 * A length over 100 ft is pulled in parts.
 */
export const readingDoubt = (mm: number, step: number, system: System): number =>
  (system === 'inch' ? inchTape(mm) : metricTape(mm)) + step / 2;
