import { shown } from '../../units/index.ts';
import { type Place, refuse } from '../refusal.ts';
import type { Style } from '../style/style.ts';
import { type Colour, readColour } from '../syntax/colour.ts';
import { readShare } from '../syntax/number.ts';
import { type Paint, readPaint } from '../syntax/paint.ts';
import { flatColour } from './flat-colour.ts';
import type { Reading } from './reading.ts';

export const SEEN_THROUGH = 'Colour that can be seen through was taken as solid';

/** The plain colour of a paint; nothing for none. */
function plain(paint: Paint, style: Style, reading: Reading, place: Place): Colour | undefined {
  switch (paint.kind) {
    case 'none':
      return undefined;
    case 'current':
      return readColour(style.color);
    case 'colour':
      return paint.colour;
  }
  if (!paint.address.startsWith('#')) {
    refuse(
      'elsewhere',
      `a colour is to come from another file ("${shown(paint.address)}"), which is not fetched`,
      'give the shape a plain colour in the drawing program',
      place,
    );
  }
  const { byId, rules, notes } = reading;
  const server = byId.get(paint.address.slice(1));
  const flat = server && flatColour(server, byId, rules);
  if (flat === undefined) return paint.otherwise && plain(paint.otherwise, style, reading, place);
  if (flat.opacity > 0) {
    notes.add(`A shading or pattern ("${shown(paint.address)}") was taken as one flat colour, ${flat.key}`, place);
  }
  return flat;
}

/** `#rrggbb` of a shape's fill or stroke, or nothing when it paints nothing. */
export function colourOf(which: 'fill' | 'stroke', style: Style, reading: Reading, place: Place): string | undefined {
  const paint = readPaint(style[which]);
  const colour = paint && plain(paint, style, reading, place);
  const seen = (colour?.opacity ?? 0) * (readShare(style[`${which}-opacity`]) ?? 1);
  if (colour === undefined || seen === 0) return undefined;
  if (seen < 1) reading.notes.add(SEEN_THROUGH, place);
  return colour.key;
}
