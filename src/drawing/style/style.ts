import { readDeclarations } from '../syntax/declarations.ts';
import type { Element } from '../tree.ts';
import { type Rules, rulesFor } from './rules.ts';

/** Properties that pass from an element to what stands in it, with their first values (SVG 2, property index). */
const INHERITED = {
  color: 'black',
  fill: 'black',
  'fill-rule': 'nonzero',
  'fill-opacity': '1',
  stroke: 'none',
  'stroke-width': '1',
  'stroke-opacity': '1',
  'stroke-linecap': 'butt',
  'stroke-linejoin': 'miter',
  'stroke-miterlimit': '4',
  'stroke-dasharray': 'none',
  'stroke-dashoffset': '0',
  'paint-order': 'normal',
  visibility: 'visible',
  'clip-rule': 'nonzero',
} as const;

export type Property = keyof typeof INHERITED;

export type Style = Readonly<Record<Property, string>>;

export const FIRST_STYLE: Style = INHERITED;

/** Properties that hold for the element alone. `transform` is told apart because its attribute is written otherwise. */
const OWN = [
  'display',
  'opacity',
  'overflow',
  'clip-path',
  'mask',
  'filter',
  'stop-color',
  'stop-opacity',
  'vector-effect',
] as const;
const STYLE_ONLY = ['transform', 'transform-origin'] as const;
const MARKERS = ['marker', 'marker-start', 'marker-mid', 'marker-end'] as const;

const ATTRIBUTES: readonly string[] = [...Object.keys(INHERITED), ...OWN, ...MARKERS];
const KNOWN = new Set<string>([...ATTRIBUTES, ...STYLE_ONLY]);

/** What the file says of one element: attributes, then style sheets, then its own `style`; `!important` above all. */
export function declaredOf(element: Element, rules: Rules): Map<string, string> {
  const found = new Map<string, string>();
  for (const name of ATTRIBUTES) {
    const value = element.attributes.get(name);
    if (value !== undefined) found.set(name, value.trim());
  }
  const inline = element.attributes.get('style');
  const blocks = rulesFor(element, rules).map((rule) => rule.declarations);
  if (inline !== undefined) blocks.push(readDeclarations(inline));
  for (const important of [false, true]) {
    for (const block of blocks) {
      for (const [name, declaration] of block) {
        if (declaration.important === important && KNOWN.has(name)) found.set(name, declaration.value);
      }
    }
  }
  return found;
}

/**
 * The style that holds in an element, from its parent's and what is said of it.
 * @param isValid whether a value means something; one that does not is passed over, as CSS asks
 */
export function inheritStyle(
  parent: Style,
  declared: Map<string, string>,
  isValid: (property: Property, value: string) => boolean,
): Style {
  const style: Record<Property, string> = { ...parent };
  for (const property of Object.keys(INHERITED) as Property[]) {
    const value = declared.get(property);
    if (value === undefined || value === 'inherit' || value === 'unset') continue;
    if (value === 'initial') style[property] = INHERITED[property];
    else if (isValid(property, value)) style[property] = value;
  }
  return style;
}
