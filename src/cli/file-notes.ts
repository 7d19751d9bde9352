import { writeTable } from './table.ts';
import { shownPath } from './talk.ts';

const NOTES: [RegExp, string][] = [
  [/^job-sheet\.html$/, 'print this first: plan, marks, checks, order of work'],
  [/^job-sheet\.pdf$/, 'the same over pages, for the printer'],
  [/^plan\.svg$/, 'the painted floor, drawn true to size'],
  [/^plan\.png$/, 'the same as a picture'],
  [/^room\.svg$/, 'the work in its room, true to size'],
  [/^flight\.svg$/, 'every step with its panel, true to size'],
  [/^cloth\.svg$/, 'how the canvas is cut and folded, true to size'],
  [/^stencil-.*\.svg$/, 'a sheet to cut, true to size'],
  [/^tiles\.pdf$/, 'the sheets over pages of paper, true to size; print its first page first'],
  [/^tile-.*\.svg$/, 'one of those pages'],
  [/^film-.*\.svg$/, 'all sheets that are cut from one piece of film, side by side'],
  [/^template\.svg$/, 'the outline of one repeat, true to size, for tracing'],
  [/^paint\.csv$/, 'how much of each paint, what is at hand and what to buy'],
  [/^marks\.csv$/, 'every tape mark, as a list'],
  [/^marks\.svg$/, 'the marks, drawn'],
  [/^marks-large\.html$/, 'the marks in large type, for a phone or a wall'],
  [/^layout\.json$/, 'every number of the layout, for other programs'],
];

/** Names the files of a folder and what each is for, those that a person wants first at the top. */
export function fileNotes(out: string, names: string[]): string[] {
  const place = (name: string) => {
    const at = NOTES.findIndex(([pattern]) => pattern.test(name));
    return at < 0 ? NOTES.length : at;
  };
  const rows = names
    .toSorted((a, b) => place(a) - place(b) || (a < b ? -1 : 1))
    .map((name) => [`  ${name}`, NOTES[place(name)]?.[1] ?? '']);
  return [`${names.length} files in ${shownPath(out)}:`, ...writeTable(rows)];
}
