import { motifWords } from '../../../motif/words.ts';
import { upper } from '../../../words.ts';
import { NONE, type Slot } from '../../engine/motifs-slots.ts';

const TURNS: Record<string, string> = {
  own: 'a corner of its own',
  block: 'a square in the corner',
  mitre: 'cut on the diagonal',
  butt: 'two sides run through',
};

const NOTHING: Partial<Record<Slot, string>> = {
  alternate: 'the same, colours exchanged',
  inset: 'nothing inside',
  medallion: 'no medallion',
  inner: 'no second border',
};

/** What hangs on a board, as it is called in a sentence. */
export function boardWords(slot: Slot, name: string): string {
  if (slot === 'turn' || slot === 'inner-turn') return TURNS[name] ?? name;
  if (name === NONE) return 'no border';
  if (name === '') return NOTHING[slot] ?? 'nothing';
  const words = motifWords(name);
  return /\.svg$/i.test(words) ? `mine: ${words.slice(0, -4)}` : words;
}

/** What stands under a board. */
export const boardName = (slot: Slot, name: string): string => upper(boardWords(slot, name));
