import type { Style } from '../style/style.ts';
import { readDashes } from '../style/valid.ts';
import { readLength } from '../syntax/length.ts';
import { determinant } from '../syntax/matrix.ts';
import type { Frame } from '../syntax/view.ts';
import type { Element } from '../tree.ts';
import { colourOf } from './colour-of.ts';
import type { FillRule, Mark, Stroke } from './mark.ts';
import { type Context, type Declared, isSet, type Reading } from './reading.ts';
import { diagonalOf, readShape } from './shapes.ts';

const MARKERS = ['marker', 'marker-start', 'marker-mid', 'marker-end'];

function strokeOf(style: Style, frame: Frame | undefined): Stroke | undefined {
  const hundred = diagonalOf(frame);
  const width = readLength(style['stroke-width'], hundred) ?? 0;
  if (!(width > 0)) return undefined;
  const join = style['stroke-linejoin'];
  return {
    width,
    cap: style['stroke-linecap'] as Stroke['cap'],
    join: join === 'round' || join === 'bevel' ? join : 'miter',
    limit: Number(style['stroke-miterlimit']),
    dashes: readDashes(style['stroke-dasharray'], hundred) ?? [],
    offset: readLength(style['stroke-dashoffset'], hundred) ?? 0,
  };
}

/** What one shape lays on: its fill, and the line along it. */
export function marksOf(element: Element, declared: Declared, context: Context, reading: Reading): Mark[] {
  const { style, matrix, clips, frame } = context;
  const { name, place } = element;
  if (style.visibility !== 'visible' || determinant(matrix) === 0) return [];
  const outlines = readShape(element, frame, reading);
  if (outlines.length === 0) return [];
  if (MARKERS.some((marker) => isSet(declared, marker))) {
    reading.notes.add('The ends and corners of a line (marker) were left out', place);
  }
  const mark = (which: 'fill' | 'stroke', how: Mark['how']): Mark[] => {
    const colour = colourOf(which, style, reading, place);
    return colour === undefined ? [] : [{ outlines, matrix, how, colour, clips, place }];
  };
  const fill = name === 'line' ? [] : mark('fill', { kind: 'fill', rule: style['fill-rule'] as FillRule });
  const stroke = strokeOf(style, frame);
  const line = stroke === undefined ? [] : mark('stroke', { kind: 'stroke', stroke });
  if (line.length > 0) reading.notes.add('Lines (strokes) were turned into the areas that they paint');
  if (line.length > 0 && isSet(declared, 'vector-effect')) {
    reading.notes.add('A line that keeps its width at any size (vector-effect) was taken as an ordinary one', place);
  }
  return style['paint-order'].trim().startsWith('stroke') ? [...line, ...fill] : [...fill, ...line];
}
