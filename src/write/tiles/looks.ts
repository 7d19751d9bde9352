import { INK, RED, SOFT } from '../ink.ts';
import type { Look } from './surface.ts';

/** Fine lines that a home printer still shows; broken ones differ without colour. */
export const CUT: Look = { width: 0.3, colour: '#000000' };
export const KEY: Look = { width: 0.3, colour: '#0066cc', dash: [1.6, 0.8] };
export const EDGE: Look = { width: 0.2, colour: SOFT };
export const PAINTED: Look = { width: 0.25, colour: INK };
export const GUIDE: Look = { width: 0.18, colour: RED, dash: [6, 2, 1, 2] };
export const TRIM: Look = { width: 0.2, colour: INK, dash: [3, 1.5] };
export const LAY: Look = { width: 0.15, colour: SOFT, dash: [0.6, 1.8] };
export const MARK: Look = { width: 0.2, colour: INK };
export const CARD: Look = { width: 0.2, colour: INK };
export const WORDS = INK;
export const SMALL_WORDS = SOFT;
