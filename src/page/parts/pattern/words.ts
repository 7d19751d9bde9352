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

/** What stands under a board. */
export function boardName(slot: Slot, name: string): string {
  if (slot === 'turn' || slot === 'inner-turn') return upper(TURNS[name] ?? name);
  if (name === NONE) return 'No border';
  if (name === '') return upper(NOTHING[slot] ?? 'nothing');
  if (/\.svg$/i.test(name))
    return `Mine: ${name
      .split(/[\\/]/)
      .at(-1)!
      .replace(/\.svg$/i, '')}`;
  return upper(name.replaceAll('-', ' '));
}
