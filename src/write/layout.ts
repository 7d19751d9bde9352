import type { Motifs } from '../compose/compose.ts';
import type { Lettered } from '../compose/drawing.ts';
import type { Fit, Layout } from '../fit/layout.ts';
import { boxWidth } from '../geometry/measure.ts';
import type { Box } from '../geometry/path.ts';
import type { Cutting, Job, MotifChoice, Way } from '../job/job.ts';
import type { Film } from '../stencil/films.ts';
import { paintOrder } from '../stencil/meeting/meeting.ts';
import type { Sheet } from '../stencil/sheet.ts';
import { tapedParts } from '../stencil/taped.ts';
import { filmFile } from './film.ts';
import { lineOrder, sheetOrigin } from './stencil.ts';
import { printedPages } from './tiles/pages.ts';

/** To 1e-9 mm, so that what is written still adds up to a millionth; no minus nought. */
const rounded = (value: number): number => Math.round(value * 1e9) / 1e9 + 0;

/** The value with every number in it rounded, whatever its shape. */
function roundAll(value: unknown): unknown {
  if (typeof value === 'number') return rounded(value);
  if (Array.isArray(value)) return value.map(roundAll);
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, roundAll(inner)]));
}

/** JSON with lists of plain numbers kept on one line. */
const asText = (value: unknown): string =>
  `${JSON.stringify(value, null, 2).replace(/\[\n\s+(-?[\d.e+-]+(?:,\n\s+-?[\d.e+-]+)*)\n\s+\]/g, (_, numbers: string) => `[${numbers.replace(/\s+/g, ' ')}]`)}\n`;

export const named = ({ motif, settings }: MotifChoice) => ({ name: motif, settings });

/** How a border goes round, and the block at its corners where it has one. */
const wayOf = ({ turn, run, corner }: Way & { corner: MotifChoice }) => ({
  turn,
  run,
  ...(turn === 'block' ? { corner: named(corner) } : {}),
});

/** What was chosen beside the motif of the field, under the names that the job has for it. */
function chosen({ border, inner, field, medallion }: Job) {
  const { alternation, inset } = field;
  return {
    ...(border.motif === 'none' ? {} : { border: wayOf(border) }),
    ...(inner ? { inner: { ...named(inner), width: inner.width, gap: inner.gap, ...wayOf(inner) } } : {}),
    ...(alternation
      ? { alternation: { by: alternation.by, ...(alternation.other ? { other: named(alternation.other) } : {}) } }
      : {}),
    ...(inset ? { inset: { ...named(inset), size: inset.size } } : {}),
    ...(medallion ? { medallion: { ...named(medallion), repeats: medallion.repeats } } : {}),
  };
}

const boxOf = ({ left, top, right, bottom }: Box) => ({ left, top, right, bottom });

/** A line of lettering where it stands, in the coordinates of the plan. `stands`: x and y of each letter's foot, and its turn. */
const letteredAs = (line: Lettered) => ({
  text: line.text,
  face: line.face,
  place: line.place,
  arc: line.arc,
  capHeight: line.capHeight,
  width: boxWidth(line.reach),
  base: line.base,
  reach: boxOf(line.reach),
  room: boxOf(line),
  stands: line.stands.map(({ foot, turn }) => [...foot, turn]),
});

/** How a sheet's file is to be cut: the ids of its lines in their order, and what was done with them. */
const cutAs = (sheet: Sheet, { outline, mirrored, overcut, lines }: Cutting) => ({
  order: lineOrder(sheet, { outline }).join(' '),
  outline,
  mirrored,
  overcut,
  lines,
});

/** The pieces of film, and what is cut from each. */
export const filmEntries = (films: Film[], sheets: Sheet[], { stencil }: Job) =>
  films.map((film, at) => ({
    ...(stencil.cutting.files === 'one a film' ? { file: filmFile(at + 1) } : {}),
    across: film.across,
    along: film.along,
    sheets: film.sheets.map(({ sheet, x, y, turned }) => ({ file: sheets[sheet]!.file, x, y, turned })),
  }));

/** Every sheet, and how it is laid. */
export const sheetEntries = (sheets: Sheet[], { stencil }: Job) =>
  sheets.map((sheet) => ({
    file: sheet.file,
    colour: sheet.colour,
    says: sheet.says,
    windows: sheet.windows.length,
    keys: sheet.keys.length,
    origin: sheetOrigin(sheet),
    cut: cutAs(sheet, stencil.cutting),
    ...(sheet.part ? { part: sheet.part } : {}),
    passes: sheet.passes.map((pass) => pass.map(({ turn, x, y, open }) => ({ turn, x, y, open }))),
  }));

/** What holds for all sheets of a job. */
export function jobEntry(job: Job) {
  const { title, name, surface, units, step } = job;
  const { bridge, window, gaps, lap, meeting } = job.stencil;
  const meets = meeting.way === 'edge to edge' ? {} : { meeting: { ...meeting, order: paintOrder(job.colours) } };
  return { title, name, surface, units, step, bridge, window, gaps, lap, ...meets };
}

/** Lists as JSON text, every number rounded. */
export const writeLists = (lists: unknown): string => asText(roundAll(lists));

/** Everything the written files were made from: the chosen layout, the motifs, the colours, and how every sheet is laid. JSON text. */
export function writeLayout(
  layout: Layout,
  { searched, proof }: Pick<Fit, 'searched' | 'proof'>,
  job: Job,
  motifs: Motifs,
  sheets: Sheet[],
  films: Film[],
  lettering?: readonly Lettered[],
  /** What the surface has to say of itself, by key. */
  surfaceSays: Record<string, unknown> = {},
): string {
  const print = printedPages(job, layout, sheets);
  const lists = {
    evenfield: 1,
    job: jobEntry(job),
    searched,
    proof,
    layout,
    motifs: {
      field: named(job.field),
      ...(motifs.border && { border: named(job.border) }),
      ...(motifs.corner && { corner: named(job.border.corner) }),
    },
    ...chosen(job),
    ...(lettering ? { lettering: lettering.map(letteredAs) } : {}),
    palette: job.palette,
    colours: job.colours,
    taped: tapedParts(job, motifs),
    films: filmEntries(films, sheets, job),
    sheets: sheetEntries(sheets, job),
    ...(print ? { print } : {}),
    ...surfaceSays,
  };
  return writeLists(lists);
}
