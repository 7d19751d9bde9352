import { type SaxesAttributeNS, SaxesParser } from 'saxes';
import { shown } from '../units/index.ts';
import { MOST_DEEP, MOST_ELEMENTS } from './limits.ts';
import type { Notes } from './notes.ts';
import { type Place, refuse } from './refusal.ts';

/** One element of the file. `name` is without its prefix, or empty when it is none of SVG's. */
export interface Element {
  name: string;
  attributes: Map<string, string>;
  children: Element[];
  /** The text that stands directly in it; kept for style sheets only. */
  text: string;
  place: Place;
}

const SVG = 'http://www.w3.org/2000/svg';
const LINKS = 'http://www.w3.org/1999/xlink';
const PLAIN = 'save it again from the drawing program as plain SVG';

/** An attribute by the name SVG gives it; nothing for what other programs keep in the file for themselves. */
function attributeName({ prefix, local, uri }: SaxesAttributeNS): string | undefined {
  if (prefix === '') return local;
  return uri === LINKS || (prefix === 'xlink' && local === 'href') ? local : undefined;
}

/** The file's elements as a tree. Refuses what is no well-formed SVG, what defines words of its own, and what is too deep or too much. */
export function readTree(text: string, notes: Notes): Element {
  const parser = new SaxesParser({ xmlns: true });
  const open: Element[] = [];
  let root: Element | undefined;
  let count = 0;
  let start: Place = { line: 1, column: 1 };
  const here = (back = 0): Place => ({ line: parser.line, column: Math.max(1, parser.column - back) });

  parser.on('error', (error) => {
    const says = error.message.replace(/^[^a-z]*\d+:\d+: /i, '').replace(/\.$/, '');
    // What other programs keep for themselves is skipped anyway, whether they say whose it is or not.
    if (says.startsWith('unbound namespace prefix')) return;
    if (/unclosed tag/.test(says)) {
      refuse('cut-short', 'the file ends before the drawing does', `fetch or ${PLAIN}`, here());
    }
    if (/undefined entity/.test(says)) {
      refuse('entity', 'the file uses a shorthand (&…;) that it does not explain', PLAIN, here());
    }
    refuse('not-svg', `the file is no well-formed SVG: ${shown(says)}`, PLAIN, here());
  });
  parser.on('doctype', (doctype) => {
    if (doctype.includes('[')) {
      refuse(
        'doctype',
        'the file defines words of its own at its head (<!DOCTYPE … [ … ]>), which could make it mean something else; that is not read',
        PLAIN,
        here(),
      );
    }
  });
  parser.on('processinginstruction', ({ target }) => {
    if (target === 'xml-stylesheet') {
      refuse(
        'elsewhere',
        'the drawing takes its colours from another file (<?xml-stylesheet …?>), which is not fetched',
        PLAIN,
        here(),
      );
    }
  });
  parser.on('opentagstart', (tag) => {
    start = here(tag.name.length + 1);
    count += 1;
    if (open.length >= MOST_DEEP) {
      refuse(
        'too-deep',
        `elements stand more than ${MOST_DEEP} deep in one another`,
        'take groups apart in the drawing program',
        start,
      );
    }
    if (count > MOST_ELEMENTS) {
      refuse(
        'too-many',
        `the drawing has more than ${MOST_ELEMENTS} elements`,
        'simplify the drawing; join shapes of one colour',
        start,
      );
    }
  });
  parser.on('opentag', (tag) => {
    const known = tag.uri === SVG || tag.uri === '' || (tag.prefix === 'svg' && tag.uri === 'svg');
    const attributes = new Map<string, string>();
    for (const attribute of Object.values(tag.attributes)) {
      const name = attributeName(attribute);
      if (name !== undefined && !attributes.has(name)) attributes.set(name, attribute.value);
    }
    const element: Element = { name: known ? tag.local : '', attributes, children: [], text: '', place: start };
    open.at(-1)?.children.push(element);
    open.push(element);
    if (root === undefined) {
      root = element;
      if (element.name !== 'svg') {
        refuse('not-svg', `the file is no SVG: it begins with <${shown(tag.name)}>`, PLAIN, start);
      }
    }
    if ([...attributes.keys()].some((name) => /^on[a-z]/i.test(name))) {
      notes.add('Instructions to a browser (such as onclick) were left out', start);
    }
  });
  parser.on('closetag', () => {
    open.pop();
  });
  const keep = (piece: string): void => {
    const element = open.at(-1);
    if (element?.name === 'style') element.text += piece;
  };
  parser.on('text', keep);
  parser.on('cdata', keep);

  parser.write(text).close();
  if (root === undefined) return refuse('not-svg', 'the file holds no SVG', PLAIN);
  return root;
}
