import { shown } from '../../units/index.ts';
import { type Place, refuse } from '../refusal.ts';
import { declaredOf, FIRST_STYLE, inheritStyle } from '../style/style.ts';
import { judgeStyle } from '../style/valid.ts';
import { shift, times } from '../syntax/matrix.ts';
import { readAddress } from '../syntax/paint.ts';
import type { Element } from '../tree.ts';
import { localLink } from './flat-colour.ts';
import type { Clip, FillRule } from './mark.ts';
import { type Context, type Declared, isSet, moveOf, type Reading, refuseLoop } from './reading.ts';
import { cornerOf, readShape, SHAPES } from './shapes.ts';

const notUnderstood = (what: string, place: Place): never =>
  refuse(
    'clip',
    `${what} is not understood`,
    'in the drawing program, cut the shapes to what shows of them, and release the clip',
    place,
  );

/** The clips that hold in an element: those it stands in, and its own. */
export function clipsOf(element: Element, declared: Declared, context: Context, reading: Reading): Clip[] {
  const value = declared.get('clip-path') ?? 'none';
  if (value === 'none') return context.clips;
  const address = readAddress(value)?.address;
  if (!address?.startsWith('#')) return notUnderstood(`clip-path "${shown(value)}"`, element.place);
  const clipper = reading.byId.get(address.slice(1));
  if (clipper?.name !== 'clipPath') {
    reading.notes.add(
      `A shape is cut to "${shown(address)}", which is not in the file, so it was left whole`,
      element.place,
    );
    return context.clips;
  }
  if (clipper.attributes.get('clipPathUnits') === 'objectBoundingBox') {
    return notUnderstood('a clip-path given in shares of the shape it cuts', clipper.place);
  }
  if (context.chain.includes(clipper)) return refuseLoop(clipper, clipper.place);
  const own = declaredOf(clipper, reading.rules);
  const inner: Context = {
    ...context,
    matrix: times(context.matrix, moveOf(clipper, own)),
    style: inheritStyle(FIRST_STYLE, own, judgeStyle(reading.notes, clipper.place)),
    clips: [],
    chain: [...context.chain, clipper],
  };
  const shapes: Clip['shapes'] = [];
  for (const child of clipper.children) addShape(child, inner, reading, shapes);
  return [...context.clips, { shapes, within: clipsOf(clipper, own, inner, reading) }];
}

function addShape(element: Element, context: Context, reading: Reading, shapes: Clip['shapes']): void {
  const { name, place } = element;
  const isUse = name === 'use';
  if (!isUse && !SHAPES.has(name)) return;
  const declared = declaredOf(element, reading.rules);
  if (declared.get('display') === 'none') return;
  reading.tally.element(place);
  if (isSet(declared, 'clip-path')) notUnderstood('a clip-path whose own shapes are cut in turn', place);
  const style = inheritStyle(context.style, declared, judgeStyle(reading.notes, place));
  const matrix = times(context.matrix, moveOf(element, declared));
  if (isUse) {
    const target = reading.byId.get(localLink(element) ?? '');
    if (target === undefined) return;
    if (context.chain.includes(target)) refuseLoop(element, place);
    const { x, y } = cornerOf(element, context.frame);
    addShape(
      target,
      { ...context, style, matrix: times(matrix, shift(x, y)), chain: [...context.chain, target] },
      reading,
      shapes,
    );
  } else if (style.visibility === 'visible') {
    const outlines = readShape(element, context.frame, reading);
    shapes.push({ outlines, matrix, rule: style['clip-rule'] as FillRule });
  }
}
