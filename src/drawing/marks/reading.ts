import { shown } from '../../units/index.ts';
import type { Notes } from '../notes.ts';
import { type Place, refuse } from '../refusal.ts';
import type { Rules } from '../style/rules.ts';
import type { Style } from '../style/style.ts';
import { type Matrix, STILL } from '../syntax/matrix.ts';
import { readTransform } from '../syntax/transform.ts';
import type { Frame } from '../syntax/view.ts';
import type { Tally } from '../tally.ts';
import type { Element } from '../tree.ts';
import type { Clip } from './mark.ts';

/** What holds for the whole file while it is gone over. */
export interface Reading {
  byId: Map<string, Element>;
  rules: Rules;
  notes: Notes;
  tally: Tally;
}

/** What holds where an element stands. */
export interface Context {
  /** From here to the page. */
  matrix: Matrix;
  style: Style;
  clips: Clip[];
  frame: Frame | undefined;
  /** The elements it stands in, those that a `use` leads through among them. */
  chain: readonly Element[];
}

/** What is said of an element: its attributes and styles together. */
export type Declared = Map<string, string>;

/** Whether a property is given and is not `none`. */
export const isSet = (declared: Declared, property: string): boolean => (declared.get(property) ?? 'none') !== 'none';

/** The element's own move, from its style or its attribute. */
export function moveOf({ name, attributes, place }: Element, declared: Declared): Matrix {
  const text = declared.get('transform') ?? attributes.get('transform');
  if (text === undefined) return STILL;
  const origin = (declared.get('transform-origin') ?? attributes.get('transform-origin') ?? '0 0').trim();
  const matrix = readTransform(text);
  const hint =
    'use matrix, translate, scale, rotate, skewX or skewY with numbers, or let the drawing program apply the transforms';
  if (matrix === undefined) {
    return refuse('transform', `a ${name} is moved by "${shown(text)}", which cannot be read`, hint, place);
  }
  if (!/^0(px)?\s+0(px)?$/.test(origin)) {
    return refuse(
      'transform',
      `a ${name} is moved about a point of its own (transform-origin), which is not understood`,
      hint,
      place,
    );
  }
  return matrix;
}

export const refuseLoop = ({ name }: Element, place: Place): never =>
  refuse('loop', `a ${name} leads back to itself`, 'in the drawing program, unlink the copies and save again', place);
