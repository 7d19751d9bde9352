import { wrap } from '../../wrap.ts';
import type { Row } from './atom.ts';
import type { Face } from './face.ts';
import { LEADING, mmOf } from './sizes.ts';

/** How words look. */
export interface Type {
  face: Face;
  /** Points. */
  size: number;
  colour: string;
}

/** Share of the size by which capitals stand above the base line, and where the base line lies in its line of words. */
export const CAPITAL = 0.7;
const BASE = 1.0;

export const lineHeight = ({ size }: Pick<Type, 'size'>): number => mmOf(size) * LEADING;

/** Where the base line lies under the top of its line, mm. */
export const baseOf = ({ size }: Pick<Type, 'size'>): number => mmOf(size) * BASE;

/** How wide a text comes out, mm. */
export const widthOf = (text: string, { face, size }: Type): number => face.set(text).width * mmOf(size);

/** Less than this too wide is rounding, mm. */
const SLACK = 0.1;

/** Words in lines; what hangs together by hard spaces stays together unless it is too wide for any line. */
export function linesOf(text: string, width: number, type: Type): string[] {
  const hard = '\u00a0';
  const parts = text
    .split(' ')
    .flatMap((word) => (widthOf(word, type) <= width + SLACK ? [word] : cut(word.replaceAll(hard, ' '), width, type)));
  const lines: string[] = [];
  let [line, used] = ['', 0];
  const space = widthOf(' ', type);
  for (const part of parts.filter(Boolean)) {
    const wide = widthOf(part, type);
    if (line !== '' && used + space + wide > width + SLACK) {
      lines.push(line);
      [line, used] = [part, wide];
    } else {
      used += (line === '' ? 0 : space) + wide;
      line = line === '' ? part : `${line} ${part}`;
    }
  }
  return line === '' ? lines : [...lines, line];
}

/** A run of letters that no line holds: first at its spaces, then wherever it must. */
function cut(text: string, width: number, type: Type): string[] {
  return wrap(text, width, (some) => widthOf(some, type)).flatMap((word) => {
    if (widthOf(word, type) <= width) return [word];
    const pieces = [''];
    for (const character of word) {
      const longer = pieces.at(-1)! + character;
      if (widthOf(longer, type) <= width || pieces.at(-1) === '') pieces[pieces.length - 1] = longer;
      else pieces.push(character);
    }
    return pieces;
  });
}

/** Lines of words, one row each. */
export const textRows = (text: string, width: number, type: Type, indent = 0): Row[] =>
  linesOf(text, width - indent, type).map((line) => ({
    height: lineHeight(type),
    draw: (ink, x, top) => ink.text(type.face, line, x + indent, top + baseOf(type), mmOf(type.size), type.colour),
  }));
