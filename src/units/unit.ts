/** The units a bare number may stand for, and that lengths are written in. */
export const UNITS = ['in', 'ft', 'mm', 'cm', 'm'] as const;
export type Unit = (typeof UNITS)[number];

/** Inches and fractions, or metric. */
export type System = 'inch' | 'metric';

export const systemOf = (unit: Unit): System => (unit === 'in' || unit === 'ft' ? 'inch' : 'metric');

/** Exact: 16 CFR 500.19. */
export const MM_PER_INCH = 25.4;
export const INCHES_PER_FOOT = 12;
export const MM_PER_FOOT = 304.8;

/** Inches in mm, divided once, so that 3 in are 76.2 mm to the last bit. */
export const inches = (count: number): number => (count * 254) / 10;
