import { oklchOf } from './difference.ts';

/** Where each hue begins, degrees of OKLCH; by eye, no source. */
const HUES: [from: number, word: string][] = [
  [15, 'red'],
  [45, 'orange'],
  [78, 'yellow'],
  [118, 'green'],
  [172, 'teal'],
  [222, 'blue'],
  [292, 'purple'],
  [340, 'pink'],
];
/** Below this chroma a colour is called a grey. */
const GREY = 0.025;

/** A colour in plain words, such as `pale yellow`, `deep red` or `dark grey`: letters and blanks only. */
export function colourWord(hex: string): string {
  const { l, c, h } = oklchOf(hex);
  if (c < GREY) {
    if (l > 0.95) return 'white';
    if (l < 0.25) return 'black';
    return l > 0.75 ? 'pale grey' : l < 0.45 ? 'dark grey' : 'grey';
  }
  const hue = HUES.findLast(([from]) => h >= from)?.[1] ?? 'pink';
  // A dark or dull orange is what everybody calls brown.
  const word = (hue === 'orange' || hue === 'red') && l < 0.6 && c < 0.12 ? 'brown' : hue;
  return l > 0.78 && c < 0.11 ? `pale ${word}` : l < 0.4 ? `deep ${word}` : c < 0.07 ? `dull ${word}` : word;
}
