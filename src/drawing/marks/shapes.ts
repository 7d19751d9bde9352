import type { Point, Side } from '../../geometry/path.ts';
import { shown } from '../../units/index.ts';
import { ellipse, rectangle } from '../syntax/basic-outlines.ts';
import { readLength } from '../syntax/length.ts';
import { readNumbers } from '../syntax/number.ts';
import type { Outline } from '../syntax/outline.ts';
import { countNumbers, readPathData } from '../syntax/path-data.ts';
import type { Frame } from '../syntax/view.ts';
import type { Element } from '../tree.ts';
import type { Reading } from './reading.ts';

export const SHAPES = new Set(['path', 'rect', 'circle', 'ellipse', 'line', 'polygon', 'polyline']);

/** What a share of a length that runs neither across nor along is of (SVG 2, section 8.9). */
export const diagonalOf = (frame: Frame | undefined): number | undefined =>
  frame && Math.sqrt((frame.width ** 2 + frame.height ** 2) / 2);

/** Where an inner svg or a copy stands. */
export const cornerOf = (
  { attributes }: Pick<Element, 'attributes'>,
  frame: Frame | undefined,
): { x: number; y: number } => ({
  x: readLength(attributes.get('x') ?? '0', frame?.width) ?? 0,
  y: readLength(attributes.get('y') ?? '0', frame?.height) ?? 0,
});

/** The outlines of one shape in its own coordinates. What has no size has none. */
export function readShape(
  element: Element,
  frame: Frame | undefined,
  reading: Pick<Reading, 'notes' | 'tally'>,
): Outline[] {
  const outlines = outlinesOf(element, frame, reading);
  for (const { sides } of outlines) reading.tally.sides(sides.length, element.place);
  return outlines;
}

function outlinesOf(
  { name, attributes, place }: Element,
  frame: Frame | undefined,
  { notes, tally }: Pick<Reading, 'notes' | 'tally'>,
): Outline[] {
  const length = (attribute: string, of: number | undefined): number | undefined => {
    const text = attributes.get(attribute);
    if (text === undefined || text.trim() === 'auto') return undefined;
    const value = readLength(text, of);
    if (value === undefined) {
      notes.add(
        `${attribute}="${shown(text)}" of a ${name} is no length that can be read (such as 12, 12px, 3mm or 1in), so it counts as left out`,
        place,
      );
    }
    return value;
  };
  const x = (attribute: string) => length(attribute, frame?.width);
  const y = (attribute: string) => length(attribute, frame?.height);
  /** A size, or nothing when it is left out or below 0. */
  const size = (value: number | undefined): number | undefined => {
    if (value === undefined || value >= 0) return value;
    notes.add(`A ${name} has a size below 0, which counts as left out`, place);
    return undefined;
  };

  switch (name) {
    case 'rect': {
      const [width, height] = [size(x('width')) ?? 0, size(y('height')) ?? 0];
      if (width === 0 || height === 0) return [];
      const [across, along] = [size(x('rx')), size(y('ry'))];
      const rx = Math.min(across ?? along ?? 0, width / 2);
      const ry = Math.min(along ?? across ?? 0, height / 2);
      return [rectangle(x('x') ?? 0, y('y') ?? 0, width, height, rx, ry)];
    }
    case 'circle': {
      const r = size(length('r', diagonalOf(frame))) ?? 0;
      return r === 0 ? [] : [ellipse(x('cx') ?? 0, y('cy') ?? 0, r, r)];
    }
    case 'ellipse': {
      const [across, along] = [size(x('rx')), size(y('ry'))];
      const [rx, ry] = [across ?? along ?? 0, along ?? across ?? 0];
      return rx === 0 || ry === 0 ? [] : [ellipse(x('cx') ?? 0, y('cy') ?? 0, rx, ry)];
    }
    case 'line': {
      const start: Point = [x('x1') ?? 0, y('y1') ?? 0];
      return [{ start, sides: [{ kind: 'line', to: [x('x2') ?? 0, y('y2') ?? 0] }], closed: false }];
    }
    case 'polygon':
    case 'polyline': {
      const { numbers, whole } = readNumbers(attributes.get('points') ?? '');
      tally.numbers(numbers.length, place);
      if (!whole || numbers.length % 2 === 1)
        notes.add(`The points of a ${name} have a mistake; those before it were taken`, place);
      const points = Array.from(
        { length: numbers.length >> 1 },
        (_, i): Point => [numbers[2 * i]!, numbers[2 * i + 1]!],
      );
      const [start, ...rest] = points;
      if (start === undefined || rest.length === 0) return [];
      const sides = rest.map((to): Side => ({ kind: 'line', to }));
      if (name === 'polygon') sides.push({ kind: 'line', to: start });
      return [{ start, sides, closed: name === 'polygon' }];
    }
    case 'path': {
      const text = attributes.get('d') ?? '';
      tally.numbers(countNumbers(text), place);
      const { outlines, mistake } = readPathData(text);
      if (mistake !== undefined) {
        const where = mistake > 0 ? ` at character ${mistake}` : '';
        notes.add(`The data of a path has a mistake${where}; what stands before it was taken`, place);
      }
      return outlines;
    }
    default:
      return [];
  }
}
