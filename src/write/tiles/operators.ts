import type { Point, Ring } from '../../geometry/path.ts';
import { formatMm } from '../number.ts';
import type { Look } from './surface.ts';

const channel = (hex: string, at: number): string =>
  String(Math.round((Number.parseInt(hex.slice(at, at + 2), 16) / 255) * 1000) / 1000);

/** `#rrggbb` as three shares. */
const colour = (hex: string): string => `${channel(hex, 1)} ${channel(hex, 3)} ${channel(hex, 5)}`;

export const fillColour = (hex: string): string => `${colour(hex)} rg`;

/** The operators that set how lines look (ISO 32000-1, 8.4.4 and 8.6.8). */
export const lookText = ({ width, colour: hex, dash = [] }: Look): string =>
  `${formatMm(width)} w [${dash.map(formatMm).join(' ')}] 0 d ${colour(hex)} RG`;

/**
 * An outline as path operators (ISO 32000-1, table 59), each point rounded on its own to 1 µm.
 * @param at where its own origin lies, mm
 */
export function ringText(ring: Ring, closed: boolean, at: Point = [0, 0]): string {
  const point = ([x, y]: Point): string => `${formatMm(x + at[0])} ${formatMm(y + at[1])}`;
  const sides = ring.sides.map((side) =>
    side.kind === 'line' ? `${point(side.to)} l` : `${point(side.out)} ${point(side.into)} ${point(side.to)} c`,
  );
  return `${point(ring.start)} m ${sides.join(' ')}${closed ? ' h' : ''}`;
}

/** Moves and enlarges what follows; lengths to 1e-6 mm, the scale to 1e-10. */
export function matrixText(scale: number, x: number, y: number, flip = false): string {
  const exact = (value: number, digits: number): string => String(Number(value.toFixed(digits)) + 0);
  const factor = exact(scale, 10);
  return `${factor} 0 0 ${flip ? '-' : ''}${factor} ${exact(x, 6)} ${exact(y, 6)} cm`;
}
