import type { Lettering } from '../label.ts';

/** A name as a sheet has it; `lacks` are the letters that its face does not have, where they made another name necessary. */
export interface SheetName {
  name: string;
  drawn: string;
  lacks?: string;
}

/** Names as they can be lettered; those that cannot are a word and their number. */
export const sheetNames = (lettering: Lettering, names: readonly string[], word: string): SheetName[] =>
  names.map((name, at) => {
    if (lettering.canSet(name)) return { name, drawn: name };
    const lacks = [...new Set(name.normalize('NFC'))].filter((letter) => !lettering.canSet(letter)).join(' ');
    return { name, drawn: `${word} ${at + 1}`, lacks };
  });

/** One line for each name that a sheet could not show. */
export const sayNames = (names: readonly SheetName[]): string[] =>
  names.flatMap(({ name, drawn, lacks }) =>
    lacks === undefined ? [] : [`“${name}” stands on the sheets as “${drawn}”: their lettering has no ${lacks}.`],
  );
