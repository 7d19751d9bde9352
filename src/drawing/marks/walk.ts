import { shown } from '../../units/index.ts';
import { MOST_LINKED } from '../limits.ts';
import { refuse } from '../refusal.ts';
import { declaredOf, FIRST_STYLE, inheritStyle } from '../style/style.ts';
import { judgeStyle } from '../style/valid.ts';
import { STILL, shift, times } from '../syntax/matrix.ts';
import { readShare } from '../syntax/number.ts';
import type { Element } from '../tree.ts';
import { clipsOf } from './clip.ts';
import { SEEN_THROUGH } from './colour-of.ts';
import { localLink } from './flat-colour.ts';
import { innerContext } from './inner-view.ts';
import type { Mark } from './mark.ts';
import { marksOf } from './marks-of.ts';
import type { Page } from './page.ts';
import { type Context, isSet, moveOf, type Reading, refuseLoop } from './reading.ts';
import { cornerOf, SHAPES } from './shapes.ts';

const KEEPERS = new Set(['svg', 'g', 'a', 'switch', 'use']);
/** Elements that draw nothing where they stand. */
const SILENT = new Set(
  'title desc metadata defs symbol clipPath mask filter linearGradient radialGradient pattern marker style script view font font-face'.split(
    ' ',
  ),
);
const LEFT_OUT = new Map([
  ['image', 'A picture made of dots (image) was left out; only shapes can be painted'],
  ['text', 'Letters (text) were left out; turn them into outlines in the drawing program to keep them'],
  ['foreignObject', 'Something that is no drawing (foreignObject) was left out'],
]);
const MOVING = /^(animate|set$)/;

const isDrawn = ({ name }: Element): boolean => KEEPERS.has(name) || SHAPES.has(name);

/** Whether a part of a `switch` asks for nothing special. */
const canShow = ({ attributes }: Element): boolean =>
  !attributes.has('requiredExtensions') && /(^|,)\s*en\b/.test(attributes.get('systemLanguage') ?? 'en');

/** Goes over the file in the order it paints and returns what it lays on, in the page's own coordinates. */
export function walk(root: Element, page: Page, reading: Reading): Mark[] {
  const { byId, rules, notes, tally } = reading;
  const marks: Mark[] = [];

  const leftOut = ({ name, place }: Element): void => {
    if (name === '' || SILENT.has(name)) return;
    const moving = MOVING.test(name) && 'Movement (animation) was left out; the drawing is taken as it stands still';
    notes.add(
      moving || (LEFT_OUT.get(name) ?? `<${shown(name)}> is none of the shapes that are read and was left out`),
      place,
    );
  };

  const copy = (element: Element, context: Context): void => {
    const { attributes, place } = element;
    const link = attributes.get('href')?.trim() ?? '';
    const id = localLink(element);
    if (link === '') return;
    if (id === undefined) {
      refuse(
        'elsewhere',
        `a part of the drawing stands in another file ("${shown(link)}"), which is not fetched`,
        'in the drawing program, unlink the copy or paste the part itself, and save again',
        place,
      );
    }
    const target = byId.get(id);
    if (target === undefined) {
      notes.add(`A copy (use) of "${shown(link)}" was left out: there is no such part in the file`, place);
      return;
    }
    if (context.chain.includes(target)) refuseLoop(element, place);
    const { x, y } = cornerOf(element, context.frame);
    const there = { ...context, matrix: times(context.matrix, shift(x, y)) };
    if (target.name === 'symbol' || isDrawn(target)) enter(target, there, element);
    else leftOut(target);
  };

  /** What an element shows, whatever stands in it. Nothing where it shows nothing. */
  const contextOf = (element: Element, outer: Context, user?: Element): Context | undefined => {
    const { name, place } = element;
    const declared = declaredOf(element, rules);
    const opacity = readShare(declared.get('opacity') ?? '1') ?? 1;
    if (declared.get('display') === 'none' || opacity === 0) return undefined;
    if (isSet(declared, 'mask')) {
      refuse(
        'mask',
        'a part of the drawing is hidden by a mask, which is not understood',
        'in the drawing program, cut the shapes to what shows of them, and take the mask out',
        place,
      );
    }
    if (opacity < 1) notes.add(SEEN_THROUGH, place);
    if (isSet(declared, 'filter')) notes.add('An effect (filter), such as a shadow or blur, was left out', place);
    const own: Context = {
      ...outer,
      style: inheritStyle(outer.style, declared, judgeStyle(notes, place)),
      // The root's transform would move the page itself; a symbol has none.
      matrix: element === root || name === 'symbol' ? outer.matrix : times(outer.matrix, moveOf(element, declared)),
      chain: [...outer.chain, element],
    };
    const context = { ...own, clips: clipsOf(element, declared, own, reading) };
    if (SHAPES.has(name)) for (const mark of marksOf(element, declared, context, reading)) marks.push(mark);
    const inner = element !== root && (name === 'svg' || name === 'symbol');
    return inner ? innerContext(element, declared, context, reading, user) : context;
  };

  const enter = (element: Element, outer: Context, user?: Element): void => {
    const { name, children, place } = element;
    tally.element(place);
    if (outer.chain.length >= MOST_LINKED) {
      refuse(
        'too-deep',
        `copies (use) lead more than ${MOST_LINKED} deep into one another`,
        'take groups and copies apart in the drawing program',
        place,
      );
    }
    const context = contextOf(element, outer, user);
    if (context === undefined || SHAPES.has(name)) return;
    if (name === 'use') copy(element, context);
    else if (name === 'switch') {
      const first = children.find((child) => isDrawn(child) && canShow(child));
      if (first) enter(first, context);
    } else for (const child of children) isDrawn(child) ? enter(child, context) : leftOut(child);
  };

  if (root.attributes.has('transform')) notes.add('The transform of the page itself was passed over', root.place);
  enter(root, { matrix: STILL, style: FIRST_STYLE, clips: [], frame: page.view, chain: [] });
  return marks;
}
