import { SaxesParser } from 'saxes';
import svgpath from 'svgpath';

/** An element of an SVG, read by saxes. */
export interface Read {
  name: string;
  attributes: Record<string, string>;
  /** Ids of the groups it stands in, outermost first. */
  groups: string[];
  text: string;
}

/** Every element of a well-formed SVG or page, in order; throws where it is not well-formed. */
export function readElements(source: string): Read[] {
  const found: Read[] = [];
  const open: Read[] = [];
  const parser = new SaxesParser();
  parser.on('error', (error) => {
    throw error;
  });
  parser.on('opentag', ({ name, attributes }) => {
    const groups = open.filter((one) => one.name === 'g').map((one) => one.attributes.id ?? '');
    const element: Read = { name, attributes: attributes as Record<string, string>, groups, text: '' };
    found.push(element);
    open.push(element);
  });
  parser.on('text', (text) => {
    for (const one of open) one.text += text;
  });
  parser.on('closetag', () => {
    open.pop();
  });
  parser.write(source).close();
  return found;
}

export interface Reach {
  left: number;
  right: number;
  top: number;
  bottom: number;
}

const known = new Map<string, Reach>();

/** The box of a path's corners and handles, by svgpath; a label's outlines never leave it. */
export function boxOf(d: string): Reach {
  const found = known.get(d) ?? measure(d);
  known.set(d, found);
  return found;
}

function measure(d: string): Reach {
  const [xs, ys]: [number[], number[]] = [[], []];
  svgpath(d)
    .abs()
    .iterate(([command, ...numbers]) => {
      const values = numbers as number[];
      if (command === 'H') xs.push(values[0]!);
      else if (command === 'V') ys.push(values[0]!);
      else for (let i = 0; i < values.length; i += 2) [xs[xs.length], ys[ys.length]] = [values[i]!, values[i + 1]!];
    });
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

export interface Label {
  text: string;
  box: Reach;
  d: string;
}

export const labelsOf = (elements: Read[]): Label[] =>
  elements
    .filter(({ attributes }) => attributes['data-label'] !== undefined)
    .map(({ attributes }) => ({ text: attributes['data-label']!, d: attributes.d!, box: boxOf(attributes.d!) }));

/** Pairs of labels that lie over each other. */
export function clashes(labels: Label[]): string[] {
  const found: string[] = [];
  for (const [at, { text, box }] of labels.entries()) {
    for (const other of labels.slice(at + 1)) {
      const apart =
        box.right <= other.box.left ||
        other.box.right <= box.left ||
        box.bottom <= other.box.top ||
        other.box.bottom <= box.top;
      if (!apart) found.push(`${text} / ${other.text}`);
    }
  }
  return found;
}
