import type { Issue } from '../issue.ts';

/** Ends the reading of a font. Caught where the font is opened, which hands the issue on. */
export class BadFont extends Error {
  readonly issue: Issue;

  constructor(code: string, says: string, hint: string) {
    super(says);
    this.issue = { code: `lettering/${code}`, path: ['font'], says, hint };
  }
}

export const damaged = (): BadFont =>
  new BadFont(
    'font',
    'this font file is damaged: it breaks off or contradicts itself',
    'a fresh copy of the font file',
  );
