import type { Sheet } from '../stencil/sheet.ts';
import { formatMm } from './number.ts';
import { pathText } from './path.ts';
import { element, escapeText } from './svg.ts';

/** Width of the lines drawn, mm; the cut runs along their middle. */
const LINE = 0.2;
const WINDOW = '#000';
const KEY = '#06c';

const NOTE =
  '<!-- Every line is cut. Black: windows, painted through. Blue: keys that line the sheet up, not painted through. ' +
  'The edge of the drawing is the edge of the sheet. -->';

const counted = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;

function description({ windows, keys, passes, outline }: Sheet): string {
  const [wide, high] = [formatMm(outline.right - outline.left), formatMm(outline.bottom - outline.top)];
  const guides = keys.filter(({ kind }) => kind === 'guide').length;
  const sentences = [
    `A sheet ${wide} by ${high} mm, drawn true to size, with ${counted(windows.length, 'window')} and ${counted(keys.length, 'key')}.`,
    `It is laid ${counted(passes.flat().length, 'time')}, in ${counted(passes.length, 'pass', 'passes')}.`,
  ];
  if (guides > 0) sentences.push('The points of the triangles lie on guide lines.');
  if (keys.length > guides) {
    sentences.push(
      'The other keys show a corner of a shape that is already painted, and nothing else, when the sheet lies right.',
    );
  }
  if (keys.length > 0) sentences.push('Cover the keys with tape before painting.');
  sentences.push('Cut with a sharp blade, away from the body.');
  return sentences.join(' ');
}

/** Where sheet coordinate 0, 0 lies in the sheet's file, mm. */
export const sheetOrigin = ({ outline }: Pick<Sheet, 'outline'>): [x: number, y: number] => [
  -outline.left,
  -outline.top,
];

/**
 * One sheet as a file to cut from: SVG 1.1, true size, one user unit a millimetre, one path a window and a key, no groups,
 * nothing moved. Windows are black and keys blue; everything drawn is cut. Curves stay cubics.
 */
export function writeStencil(sheet: Sheet): string {
  const { windows, keys, outline, colour, says } = sheet;
  const origin = sheetOrigin(sheet);
  const [width, height] = [formatMm(outline.right - outline.left), formatMm(outline.bottom - outline.top)];
  const look = (stroke: string) => ({ fill: 'none', stroke, 'stroke-width': LINE });
  const lines = [
    element('title', {}, escapeText(`Stencil for ${colour}: ${says}`)),
    element('desc', {}, escapeText(description(sheet))),
    NOTE,
    ...windows.map((piece, n) =>
      element('path', { id: `window-${n + 1}`, 'data-line': 'cut', ...look(WINDOW), d: pathText(piece, origin) }),
    ),
    ...keys.map(({ kind, piece }, n) =>
      element('path', {
        id: `key-${n + 1}`,
        'data-line': 'cut',
        'data-key': kind,
        ...look(KEY),
        d: pathText(piece, origin),
      }),
    ),
  ];
  const size = {
    xmlns: 'http://www.w3.org/2000/svg',
    version: '1.1',
    width: `${width}mm`,
    height: `${height}mm`,
    viewBox: `0 0 ${width} ${height}`,
  };
  return `${element('svg', size, `\n${lines.join('\n')}\n`)}\n`;
}
