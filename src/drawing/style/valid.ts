import { shown } from '../../units/index.ts';
import type { Notes } from '../notes.ts';
import type { Place } from '../refusal.ts';
import { readColour } from '../syntax/colour.ts';
import { readLength } from '../syntax/length.ts';
import { readShare } from '../syntax/number.ts';
import { readPaint } from '../syntax/paint.ts';
import type { Property } from './style.ts';

const oneOf = (...words: string[]) => {
  const known = new Set(words);
  return (value: string) => known.has(value);
};
const isShare = (value: string) => readShare(value) !== undefined;
const isPaint = (value: string) => readPaint(value) !== undefined;
const isLength = (value: string) => readLength(value, 1) !== undefined;
const isRule = oneOf('nonzero', 'evenodd');

/** The lengths of dash and gap in turn, an odd list twice over; empty for a whole line; nothing when it cannot be read. */
export function readDashes(text: string, hundred?: number): number[] | undefined {
  if (text.trim() === 'none') return [];
  const lengths = text
    .trim()
    .split(/[\s,]+/)
    .map((one) => readLength(one, hundred));
  const read = lengths.filter((one) => one !== undefined && Number.isFinite(one) && one >= 0) as number[];
  if (read.length < lengths.length) return undefined;
  if (read.every((one) => one === 0)) return [];
  return read.length % 2 === 1 ? [...read, ...read] : read;
}

const VALID: Record<Property, (value: string) => boolean> = {
  color: (value) => readColour(value) !== undefined,
  fill: isPaint,
  'fill-rule': isRule,
  'fill-opacity': isShare,
  stroke: isPaint,
  'stroke-width': (value) => (readLength(value, 1) ?? -1) >= 0,
  'stroke-opacity': isShare,
  'stroke-linecap': oneOf('butt', 'round', 'square'),
  'stroke-linejoin': oneOf('miter', 'miter-clip', 'arcs', 'round', 'bevel'),
  'stroke-miterlimit': (value) => Number(value) >= 1,
  'stroke-dasharray': (value) => readDashes(value, 1) !== undefined,
  'stroke-dashoffset': isLength,
  'paint-order': () => true,
  visibility: oneOf('visible', 'hidden', 'collapse'),
  'clip-rule': isRule,
};

/** Tells whether a style value means something, and remarks on one that does not. */
export const judgeStyle =
  (notes: Notes, place: Place) =>
  (property: Property, value: string): boolean => {
    if (VALID[property](value)) return true;
    notes.add(`${property} "${shown(value)}" cannot be read and was passed over`, place);
    return false;
  };
