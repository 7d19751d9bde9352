import type { Raster } from './raster.ts';

/** Why a picture cannot be had from a file: its end is missing, what is inside makes no sense, or it is of a kind that is not read. */
export type Undecoded = 'short' | 'broken' | 'other';

export interface Refused {
  ok: false;
  why: Undecoded;
}

export const refused = (why: Undecoded): Refused => ({ ok: false, why });

/** A file whose size in pixels is known, and that has not been unpacked yet. */
export type Opened =
  | { ok: true; width: number; height: number; decode(): Promise<{ ok: true; raster: Raster } | Refused> }
  | Refused;
