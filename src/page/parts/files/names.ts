/** What each file is for, in the order in which a person wants them. */
const NOTES: readonly (readonly [RegExp, string])[] = [
  [/^job-sheet\.pdf$/, 'to print: plan, cautions, order of work, every mark and check'],
  [/^job-sheet\.html$/, 'the same as a page for the screen'],
  [/^stencil-.*\.svg$/, 'a sheet to cut, true to size'],
  [/^film-.*\.svg$/, 'all sheets of one piece of film, side by side'],
  [/^tiles\.pdf$/, 'the sheets over pages of paper, true to size; print its first page first and measure it'],
  [/^tile-.*\.svg$/, 'one of those pages'],
  [/^template\.svg$/, 'the outline of one repeat, to trace'],
  [/^plan\.svg$/, 'the painted floor, drawn to scale'],
  [/^plan\.png$/, 'the same as a picture, to show round'],
  [/^room\.svg$/, 'the work in its room'],
  [/^flight\.svg$/, 'every step with its panel'],
  [/^cloth\.svg$/, 'how the canvas is cut and folded'],
  [/^marks-large\.html$/, 'every mark in large type, for a phone or the wall'],
  [/^marks\.svg$/, 'the guide lines and their marks, drawn'],
  [/^marks\.csv$/, 'every mark as a list'],
  [/^paint\.csv$/, 'how much of each paint, and what to buy'],
  [/^layout\.json$/, 'every number of the job, for other programs and for proving the files'],
];

const placeOf = (name: string): number => {
  const at = NOTES.findIndex(([pattern]) => pattern.test(name));
  return at < 0 ? NOTES.length : at;
};

/** What a file is for; nothing of files that are not known here. */
export const purposeOf = (name: string): string => NOTES[placeOf(name)]?.[1] ?? '';

/** Names of files, those first that a person wants first; numbers in them count as numbers. */
export const inOrder = (names: Iterable<string>): string[] =>
  [...names].sort((a, b) => placeOf(a) - placeOf(b) || a.localeCompare(b, 'en', { numeric: true }));
