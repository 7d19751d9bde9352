import type { Issue } from '../issue.ts';
import { MOST_CHARACTERS } from './limits.ts';

/** Scripts whose letters stand side by side from left to right, each in one form, and the tag by which a font kerns them. */
const SCRIPTS: [string, RegExp][] = [
  ['latn', /\p{Script=Latin}/u],
  ['grek', /\p{Script=Greek}/u],
  ['cyrl', /\p{Script=Cyrillic}/u],
  ['armn', /\p{Script=Armenian}/u],
  ['geor', /\p{Script=Georgian}/u],
  ['hani', /\p{Script=Han}/u],
  ['kana', /[\p{Script=Hiragana}\p{Script=Katakana}]/u],
  ['hang', /\p{Script=Hangul}/u],
  ['runr', /\p{Script=Runic}/u],
  ['ogam', /\p{Script=Ogham}/u],
];

const COMMON = /[\p{L}\p{N}\p{P}\p{S}\p{Zs}]/u;

/** The tag of the script that most of the text is in. */
export const scriptOf = (text: string): string =>
  SCRIPTS.map(([tag, letters]) => ({ tag, count: [...text].filter((one) => letters.test(one)).length })).sort(
    (a, b) => b.count - a.count,
  )[0]!.tag;

/** Text as it is set: accents joined to their letters, single spaces, and a curved apostrophe (’) beside a letter. */
export const tidyText = (text: string): string =>
  text
    .normalize('NFC')
    .replace(/\s+/gu, ' ')
    .trim()
    .replace(/(?<=\p{L})'|'(?=\p{N})/gu, '’');

const CODE = (character: string): string =>
  `U+${character.codePointAt(0)!.toString(16).toUpperCase().padStart(4, '0')}`;

/** `“ß” (U+00DF)`: the sign itself where it can be shown, and its number. */
export const named = (character: string): string =>
  COMMON.test(character) ? `“${character}” (${CODE(character)})` : `the character ${CODE(character)}`;

const canStand = (character: string): boolean =>
  SCRIPTS.some(([, letters]) => letters.test(character)) ||
  (/\p{Script=Common}/u.test(character) && COMMON.test(character));

/** What keeps a text from being set letter by letter. The text has been tidied. */
export function checkText(text: string): Issue[] {
  const issue = (code: string, says: string, hint: string): Issue[] => [
    { code: `lettering/${code}`, path: ['text'], says, hint },
  ];
  if (text === '') return issue('empty', 'there is no text to set', 'text: Dunmore 1908');
  const count = [...text].length;
  if (count > MOST_CHARACTERS)
    return issue(
      'long',
      `the text has ${count} characters; at most ${MOST_CHARACTERS} are set`,
      'a shorter text, or two of them in different places',
    );
  const odd = [...new Set(text)].filter((character) => !canStand(character));
  if (odd.length === 0) return [];
  return issue(
    'script',
    `${odd.slice(0, 5).map(named).join(', ')} cannot be set: letters are set one by one from left to right, each in one form, without loose accents`,
    'other words, or the lettering drawn as outlines in a motif of your own',
  );
}
