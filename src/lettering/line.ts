import type { Face, Letter } from './face.ts';

/** A letter of a line and where it begins, font units from the beginning of the line. */
export interface Placed {
  letter: Letter;
  at: number;
}

/** A line of type, straight: each letter begins where the one before ends, moved by the kerning of the two. */
export function layLine(letters: readonly Letter[], face: Pick<Face, 'kern'>, script: string): Placed[] {
  let at = 0;
  return letters.map((letter, n) => {
    const before = letters[n - 1];
    if (before) at += before.advance + face.kern(before, letter, script);
    return { letter, at };
  });
}
