import { boxHeight, boxWidth } from '../geometry/measure.ts';
import type { Point } from '../geometry/path.ts';
import type { Cutting } from '../job/job.ts';
import type { Film, OnFilm } from '../stencil/films.ts';
import type { Sheet } from '../stencil/sheet.ts';
import { formatMm } from './number.ts';
import { linesOf, lineText, MIRRORED, note } from './stencil.ts';
import { element, escapeText, trueSizePage } from './svg.ts';

export const filmFile = (number: number): string => `film-${number}.svg`;

/** From sheet coordinates to those of the film. A turned sheet lies a quarter clockwise. */
function placeOn({ x, y, turned }: OnFilm, { outline }: Sheet): (point: Point) => Point {
  const { left, top } = outline;
  const high = boxHeight(outline);
  return ([px, py]) => (turned ? [x + high - (py - top), y + px - left] : [x + px - left, y + py - top]);
}

/**
 * A piece of film with all its sheets side by side, as one file to cut from: SVG 1.1, true size, every sheet cut to its end before the next.
 * The id of a line is that of the sheet's own file behind the number of the sheet on the film, such as `sheet-2-window-1`.
 */
export function writeFilm(film: Film, sheets: readonly Sheet[], cutting: Cutting): string {
  const [width, height] = [formatMm(film.across), formatMm(film.along)];
  const flip = ([x, y]: Point): Point => [film.across - x, y];
  const lines = film.sheets.flatMap((lie, at) => {
    const sheet = sheets[lie.sheet]!;
    const place = placeOn(lie, sheet);
    const move = cutting.mirrored ? (point: Point) => flip(place(point)) : place;
    return linesOf(sheet, cutting.outline).map((line) =>
      lineText({ ...line, id: `sheet-${at + 1}-${line.id}` }, cutting, [0, 0], move),
    );
  });
  const says = film.sheets.map(({ sheet }, at) => `sheet-${at + 1} is ${sheets[sheet]!.file}`);
  const sizes = film.sheets.map(({ sheet }) => {
    const { outline } = sheets[sheet]!;
    return `${formatMm(boxWidth(outline))} by ${formatMm(boxHeight(outline))} mm`;
  });
  const description = [
    `A film ${width} by ${height} mm, drawn true to size: ${says.map((one, at) => `${one}, ${sizes[at]}`).join('; ')}.`,
    ...(cutting.mirrored ? [MIRRORED] : []),
    'Cut with a sharp blade, away from the body.',
  ].join(' ');
  const all = [
    element('title', {}, `${film.sheets.length} sheets on one film`),
    element('desc', {}, escapeText(description)),
    note(cutting),
    ...lines,
  ];
  return trueSizePage(width, height, all);
}
