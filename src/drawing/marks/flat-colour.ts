import type { Rules } from '../style/rules.ts';
import { declaredOf } from '../style/style.ts';
import { type Colour, readColour } from '../syntax/colour.ts';
import { readShare } from '../syntax/number.ts';
import { readPaint } from '../syntax/paint.ts';
import type { Element } from '../tree.ts';

const GRADIENTS = new Set(['linearGradient', 'radialGradient']);
const MOST_LINKS = 10;

/** Where an element points within its own file. */
export const localLink = ({ attributes }: Element): string | undefined => {
  const link = attributes.get('href')?.trim();
  return link?.startsWith('#') ? link.slice(1) : undefined;
};

const grey: Colour = { key: '#808080', opacity: 1 };

/** The first colour filled in a pattern, looked for among its first elements. */
function firstFill(pattern: Element, rules: Rules): Colour {
  const queue = [...pattern.children];
  for (let at = 0; at < queue.length && at < 100; at++) {
    const paint = readPaint(declaredOf(queue[at]!, rules).get('fill') ?? '');
    if (paint?.kind === 'colour' && paint.colour.opacity > 0) return paint.colour;
    queue.push(...queue[at]!.children.slice(0, 100));
  }
  return grey;
}

/**
 * One colour for a gradient or pattern: its first visible one. A gradient without stops paints nothing.
 * Nothing when the element is neither.
 */
export function flatColour(server: Element, byId: Map<string, Element>, rules: Rules): Colour | undefined {
  if (server.name === 'pattern') return firstFill(server, rules);
  if (!GRADIENTS.has(server.name)) return undefined;
  let from: Element | undefined = server;
  for (let links = 0; from !== undefined && links < MOST_LINKS; links++) {
    const stops = from.children.filter((child) => child.name === 'stop');
    const colours = stops.map((stop): Colour => {
      const declared = declaredOf(stop, rules);
      const colour = readColour(declared.get('stop-color') ?? 'black') ?? { key: '#000000', opacity: 1 };
      return { key: colour.key, opacity: colour.opacity * (readShare(declared.get('stop-opacity') ?? '1') ?? 1) };
    });
    if (colours.length > 0) return colours.find((colour) => colour.opacity > 0) ?? colours[0]!;
    const link = localLink(from);
    from = link === undefined ? undefined : byId.get(link);
  }
  return { key: '#000000', opacity: 0 };
}
