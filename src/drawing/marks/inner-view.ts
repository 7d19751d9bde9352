import { shown } from '../../units/index.ts';
import { readLength } from '../syntax/length.ts';
import { type Matrix, shift, times } from '../syntax/matrix.ts';
import type { Outline } from '../syntax/outline.ts';
import { fitView, readSetting, readView, type View } from '../syntax/view.ts';
import type { Element } from '../tree.ts';
import type { Clip } from './mark.ts';
import type { Context, Declared, Reading } from './reading.ts';
import { cornerOf } from './shapes.ts';

const boxOutline = ({ x, y, width, height }: View): Outline => ({
  start: [x, y],
  sides: [
    { kind: 'line', to: [x + width, y] },
    { kind: 'line', to: [x + width, y + height] },
    { kind: 'line', to: [x, y + height] },
    { kind: 'line', to: [x, y] },
  ],
  closed: true,
});

const windowOf = (view: View, matrix: Matrix): Clip => ({
  shapes: [{ outlines: [boxOutline(view)], matrix, rule: 'nonzero' }],
  within: [],
});

/**
 * What holds inside an inner svg or a symbol: its view is set into its frame and what hangs over is cut off. Nothing where its size is 0.
 * @param user the `use` that leads here, whose width and height come before the element's own
 */
export function innerContext(
  { name, attributes, place }: Element,
  declared: Declared,
  context: Context,
  { notes }: Reading,
  user?: Element,
): Context | undefined {
  const { frame, matrix, clips } = context;
  const text = attributes.get('viewBox');
  let view = text === undefined ? undefined : readView(text);
  if (text !== undefined && (view === undefined || view.width < 0 || view.height < 0)) {
    notes.add(`The viewBox "${shown(text)}" of a part of the drawing cannot be read and was passed over`, place);
    view = undefined;
  }
  const sizeOf = (size: 'width' | 'height'): number | undefined => {
    const given = user?.attributes.get(size) ?? attributes.get(size) ?? 'auto';
    return readLength(given.trim() === 'auto' ? '100%' : given, frame?.[size]);
  };
  const corner = name === 'svg' ? cornerOf({ attributes }, frame) : { x: 0, y: 0 };
  const [width, height] = [sizeOf('width'), sizeOf('height')];
  if (width === undefined || height === undefined)
    return { ...context, matrix: times(matrix, shift(corner.x, corner.y)) };
  if (width <= 0 || height <= 0 || view?.width === 0 || view?.height === 0) return undefined;

  const opening = { ...corner, width, height };
  const shows = declared.get('overflow') === 'visible' || (name === 'symbol' && view === undefined);
  const inner: Context = { ...context, clips: shows ? clips : [...clips, windowOf(opening, matrix)] };
  if (view === undefined)
    return { ...inner, matrix: times(matrix, shift(corner.x, corner.y)), frame: { width, height } };
  const setting = readSetting(attributes.get('preserveAspectRatio'));
  return { ...inner, matrix: times(matrix, fitView(view, opening, setting)), frame: view };
}
