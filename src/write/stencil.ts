import type { Piece, Point, Ring } from '../geometry/path.ts';
import { type Move, movePiece } from '../geometry/transform.ts';
import { CUTTING } from '../job/defaults.ts';
import type { Cutting } from '../job/job.ts';
import { startedAt } from '../stencil/cut-order/entry.ts';
import { plainCuts } from '../stencil/cut-order/sheet-cuts.ts';
import type { Sheet } from '../stencil/sheet.ts';
import { counted } from '../words.ts';
import { formatMm } from './number.ts';
import { overcutText } from './overcut.ts';
import { pathText } from './path.ts';
import { element, escapeText, trueSizePage } from './svg.ts';

/** Width of the lines drawn, mm; the cut runs along their middle. */
const LINE = 0.2;

/** Says that the sheet is mirrored; the check looks for these words. */
export const MIRRORED = 'Mirrored for cutting from the back.';

export function note({ lines, outline, overcut }: Cutting): string {
  const says = [
    `Every path says in data-line what is done with it, and each kind of line has a colour of its own: cut (${lines.cut}) goes through the sheet, draw (${lines.draw}) is only drawn, crease (${lines.crease}) is scored for folding. A kind that does not occur is not needed here.`,
    'Paths named window are painted through; paths named key line the sheet up and are covered before painting.',
    'Paths stand in the order of cutting, what lies inside first, and begin where the blade goes in.',
    {
      cut: 'The path named outline is the edge of the sheet, cut last.',
      draw: 'The path named outline is the edge of the sheet, drawn only.',
      none: 'The edge of the drawing is the edge of the sheet.',
    }[outline],
  ];
  if (overcut > 0) {
    says.push(
      `Every cut comes back to its start and runs on along its own first stretch by ${formatMm(overcut)} mm, for a blade that trails.`,
    );
  }
  return `<!-- ${says.join(' ')} -->`;
}

function description({ windows, keys, passes, outline }: Sheet, { mirrored }: Cutting): string {
  const [wide, high] = [formatMm(outline.right - outline.left), formatMm(outline.bottom - outline.top)];
  const of = (kind: Sheet['keys'][number]['kind']) => keys.filter((key) => key.kind === kind).length;
  const [guides, neighbours, matches] = [of('guide'), of('neighbour'), of('match')];
  const sentences = [
    `A sheet ${wide} by ${high} mm, drawn true to size, with ${counted(windows.length, 'window')} and ${counted(keys.length, 'key')}.`,
    `It is laid ${counted(passes.flat().length, 'time')}, in ${counted(passes.length, 'pass', 'passes')}.`,
  ];
  if (guides > 0) sentences.push('The points of the triangles lie on guide lines.');
  if (matches > 0) {
    sentences.push(
      'The squares on their points are match keys of a split shape: pencil round those of the first part, and lay the next part so that its own lie on the pencil marks.',
    );
  }
  if (neighbours > 0) {
    sentences.push(
      'The other keys show a corner of a shape that is already painted, and nothing else, when the sheet lies right.',
    );
  }
  if (keys.length > 0) sentences.push('Cover the keys with tape before painting.');
  if (mirrored) sentences.push(MIRRORED);
  sentences.push('Cut with a sharp blade, away from the body.');
  return sentences.join(' ');
}

/** Where sheet coordinate 0, 0 lies in the sheet's file, mm. */
export const sheetOrigin = ({ outline }: Pick<Sheet, 'outline'>): [x: number, y: number] => [
  -outline.left,
  -outline.top,
];

/** One line of the file, its holes (none, once bridges are cut) before it. */
export interface Line {
  id: string;
  kind: 'cut' | 'draw';
  key?: string;
  piece: Piece;
  /** The end of the outer ring's sides at which the blade goes in. */
  entry: number;
}

function outlineOf({ left, top, right, bottom }: Sheet['outline'], kind: Cutting['outline']): Line[] {
  if (kind === 'none') return [];
  const corners: Point[] = [
    [right, top],
    [right, bottom],
    [left, bottom],
    [left, top],
  ];
  const ring: Ring = { start: [left, top], sides: corners.map((to) => ({ kind: 'line', to })) };
  return [{ id: 'outline', kind, piece: [ring], entry: 0 }];
}

/** Every line of a sheet, in the order of the file. */
export function linesOf(sheet: Sheet, outline: Cutting['outline']): Line[] {
  const { windows, keys, cuts = plainCuts(sheet) } = sheet;
  const openings = cuts.map(({ kind, index, entry }): Line => {
    const id = `${kind}-${index + 1}`;
    if (kind === 'window') return { id, kind: 'cut', piece: windows[index]!, entry };
    return { id, kind: 'cut', key: keys[index]!.kind, piece: keys[index]!.piece, entry };
  });
  return [...openings, ...outlineOf(sheet.outline, outline)];
}

/** The ids of a sheet's lines in the order in which they are cut or drawn. */
export const lineOrder = (sheet: Sheet, { outline }: Pick<Cutting, 'outline'> = CUTTING): string[] =>
  linesOf(sheet, outline).map(({ id }) => id);

/** One line of a file, begun where the blade goes in. `move` puts it elsewhere first. */
export function lineText(
  { id, kind, key, piece, entry }: Line,
  { overcut, lines }: Cutting,
  origin: Point,
  move?: Move,
): string {
  const rings = [...piece.slice(1), startedAt(piece[0]!, entry)];
  const placed = move ? movePiece(rings, move) : rings;
  const isOver = overcut > 0 && kind === 'cut';
  return element('path', {
    id,
    'data-line': kind,
    'data-key': key,
    'data-overcut': isOver ? formatMm(overcut) : undefined,
    fill: 'none',
    stroke: lines[kind],
    'stroke-width': LINE,
    d: isOver ? placed.map((ring) => overcutText(ring, overcut, origin)).join('') : pathText(placed, origin),
  });
}

/**
 * One sheet as a file to cut from: SVG 1.1, true size, one user unit a millimetre, one path a window and a key in the order of
 * cutting, no groups, nothing moved, nothing filled. What is done with a line stands in its `data-line` and in its colour. Curves stay
 * cubics. Where the blade runs on past the start, `data-overcut` says by how many mm, and the path is left open.
 */
export function writeStencil(sheet: Sheet, cutting: Cutting = CUTTING): string {
  const { outline, colour, says } = sheet;
  const origin = sheetOrigin(sheet);
  const [width, height] = [formatMm(outline.right - outline.left), formatMm(outline.bottom - outline.top)];
  const { mirrored } = cutting;
  // A mirrored ring runs the other way round, which is all the same to a blade.
  const across = ([x, y]: Point): Point => [outline.left + outline.right - x, y];
  const drawn = linesOf(sheet, cutting.outline).map((line) =>
    lineText(line, cutting, origin, mirrored ? across : undefined),
  );
  const all = [
    element('title', {}, escapeText(`Stencil for ${colour}: ${says}`)),
    element('desc', {}, escapeText(description(sheet, cutting))),
    note(cutting),
    ...drawn,
  ];
  return trueSizePage(width, height, all);
}
