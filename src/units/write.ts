import { nearestEven, roundToStep } from './round.ts';
import { INCHES_PER_FOOT, MM_PER_INCH, type Unit } from './unit.ts';

/** From this many inches up, lengths are written in feet and inches; below it in inches alone, as doors and boards are named. */
const FEET_FROM = 48;
const FINEST = 64;

/** How many parts the tape divides an inch into; the finest fraction where its step is no part of an inch. */
function partsOfInch(step: number): number {
  for (let parts = 1; parts <= FINEST; parts *= 2) {
    const steps = (step * parts) / MM_PER_INCH;
    if (steps > 0.5 && Math.abs(steps - Math.round(steps)) < 1e-9) return parts;
  }
  return FINEST;
}

/** `6 3/8`, `6` or `3/8`; the fraction in lowest terms. */
function writeMixed(count: number, parts: number): string {
  let [top, bottom] = [count % parts, parts];
  while (top > 0 && top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  const whole = Math.floor(count / parts);
  if (top === 0) return `${whole}`;
  return whole === 0 ? `${top}/${bottom}` : `${whole} ${top}/${bottom}`;
}

function inInches(mm: number, step: number, feetFrom: number): string {
  const parts = partsOfInch(step);
  const count = nearestEven((roundToStep(mm, step) * parts) / MM_PER_INCH);
  if (count < feetFrom * parts) return `${writeMixed(count, parts)}"`;
  const foot = INCHES_PER_FOOT * parts;
  const left = count % foot;
  const feet = `${Math.floor(count / foot)}'`;
  return left === 0 ? feet : `${feet} ${left < parts ? '0 ' : ''}${writeMixed(left, parts)}"`;
}

const IN_MM = { mm: 1, cm: 10, m: 1000 };

function inMetric(mm: number, unit: 'mm' | 'cm' | 'm', step: number): string {
  const value = roundToStep(mm, step) / IN_MM[unit];
  return `${value.toFixed(6).replace(/\.?0+$/, '')} ${unit}`;
}

const withSign = (mm: number, step: number, write: (mm: number) => string): string =>
  (roundToStep(mm, step) < 0 ? '-' : '') + write(Math.abs(mm));

/**
 * A length as a person writes it, rounded to the tape's step (mm): for `in` and `ft` `34"`, and from 4 ft up `12' 6 3/8"`;
 * otherwise `1504 mm`, `150.4 cm` or `3.25 m`. What is written reads back as the rounded length.
 */
export function writeLength(mm: number, unit: Unit, step: number): string {
  return withSign(mm, step, (size) =>
    unit === 'in' || unit === 'ft' ? inInches(size, step, FEET_FROM) : inMetric(size, unit, step),
  );
}

/** A length as the tape shows it: running inches (`150 3/8"`), or `1504 mm` (`150.4 cm` in jobs kept in cm or m). */
export function writeTape(mm: number, unit: Unit, step: number): string {
  return withSign(mm, step, (size) => {
    if (unit === 'in' || unit === 'ft') return inInches(size, step, Number.POSITIVE_INFINITY);
    return inMetric(size, unit === 'mm' ? 'mm' : 'cm', step);
  });
}
