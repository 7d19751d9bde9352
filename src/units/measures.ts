import { type Ratio, ratio } from './ratio.ts';
import type { System, Unit } from './unit.ts';

/** A unit as it is written in a job, with its exact size. */
export interface Measure {
  name: string;
  /** The unit of the job it counts as. */
  unit: Unit;
  mm: Ratio;
  system: System;
}

const measure = (name: string, unit: Unit, mm: Ratio, system: Measure['system']): Measure => ({
  name,
  unit,
  mm,
  system,
});
// Exact: 16 CFR 500.19.
export const INCH = measure('in', 'in', ratio(254, 10), 'inch');
export const FOOT = measure('ft', 'ft', ratio(3048, 10), 'inch');
const YARD = measure('yd', 'ft', ratio(9144, 10), 'inch');
export const MILLIMETRE = measure('mm', 'mm', ratio(1), 'metric');
const CENTIMETRE = measure('cm', 'cm', ratio(10), 'metric');
export const METRE = measure('m', 'm', ratio(1000), 'metric');
/** What a bare number means where the job states its unit. */
export const OF_JOB: Record<Unit, Measure> = { in: INCH, ft: FOOT, mm: MILLIMETRE, cm: CENTIMETRE, m: METRE };

/** How each is written after a plain number (see `plainText`). */
export const WORDS: [RegExp, Measure][] = [
  [/^(?:"|(?:inches|inch|ins|in)(?![a-z])\.?)/, INCH],
  [/^(?:'|(?:feet|foot|ft)(?![a-z])\.?)/, FOOT],
  [/^(?:yards|yard|yds|yd)(?![a-z])\.?/, YARD],
  [/^(?:millimetres?|millimeters?|mm)(?![a-z])\.?/, MILLIMETRE],
  [/^(?:centimetres?|centimeters?|cm)(?![a-z])\.?/, CENTIMETRE],
  [/^(?:metres?|meters?|m)(?![a-z])\.?/, METRE],
];
