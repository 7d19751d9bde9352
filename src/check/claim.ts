import type { FileSet } from './file-set.ts';
import type { Claim } from './told.ts';

export type { Claim, Claims } from './told.ts';

/** The claims of one kind. One family a file in `claims/`, as its default export; adding one means adding a file. */
export type Family = (set: FileSet) => Claim[] | Promise<Claim[]>;

/** What a family proves and how, for people; the table in DEVELOPERS.md is made of it. Each file in `claims/` exports one as `proof`. */
export interface Proof {
  claims: string;
  /** The files that are read for it, where they are there; `*` stands for any number. */
  files: readonly string[];
  method: string;
  tolerance: string;
}

/** How far a drawing may lie from what is claimed of it, mm. */
export const DRAWN = 0.05;
/** How far numbers may be from adding up, mm. */
export const REASONED = 1e-6;
/** A claim that something measured is not more than a limit, mm. */
export function atMost(file: string, claim: string, measured: number, allowed: number): Claim {
  return { claim, holds: measured <= allowed, measured: shown(measured), allowed: shown(allowed), file };
}

/** A claim that something measured is not less than a limit. */
export function atLeast(file: string, claim: string, measured: number, allowed: number): Claim {
  return { claim, holds: measured >= allowed, measured: shown(measured), allowed: shown(allowed), file };
}

/** A claim that something counted or read is just so. */
export function equal(file: string, claim: string, measured: string | number, allowed: string | number): Claim {
  return { claim, holds: measured === allowed, measured, allowed, file };
}

export function stated(
  file: string,
  claim: string,
  holds: boolean,
  measured: string | number,
  allowed: string | number,
): Claim {
  return { claim, holds, measured: typeof measured === 'number' ? shown(measured) : measured, allowed, file };
}

/** A claim that cannot be looked at, and why. */
export function unproven(
  file: string,
  claim: string,
  says: string,
  allowed: string | number = 'can be measured',
): Claim {
  return { claim, holds: false, measured: `cannot be measured: ${says}`, allowed, file };
}

/** A number as it is reported: whole micrometres are enough, but what adds up to next to nothing keeps its size. */
const shown = (value: number): number | string => {
  if (!Number.isFinite(value)) return 'nothing that matches';
  if (Math.abs(value) < 1e-9) return 0;
  return Math.abs(value) >= 0.001 ? Math.round(value * 1000) / 1000 : Number(value.toPrecision(3));
};

/** Lengths in a row, for people: `63.5, 63.5, 63.5, 63.5`. */
export const list = (values: readonly number[]): string => values.map((value) => String(shown(value))).join(', ');
