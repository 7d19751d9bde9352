import { parseNumber, shown } from '../../units/index.ts';
import type { Reader } from '../readers.ts';

const MOST_TURN = 45;

/** How far boards turn from a wall, degrees; to the left it is below zero. */
export const turnReader: Reader = {
  code: 'job/turn',
  example: '0.5',
  read(text) {
    const plain = text.replace(/\s*(?:°|deg(?:rees?)?)\s*$/i, '').trim();
    const below = /^[-−–]\s*/.exec(plain);
    const read = parseNumber(below ? plain.slice(below[0].length) : plain);
    if (!read.ok) return { ok: false, says: read.says, hint: '0.5' };
    if (read.value > MOST_TURN)
      return {
        ok: false,
        says: `${shown(text)} is not from -${MOST_TURN} to ${MOST_TURN} degrees; name the other wall for more`,
        hint: '0.5',
      };
    return { ok: true, value: below ? -read.value : read.value };
  },
};
