import type { Layout } from '../../fit/layout.ts';
import { boxCentre, boxHeight, boxWidth } from '../../geometry/measure.ts';
import { quarterTurn } from '../../geometry/transform.ts';
import type { Job } from '../../job/job.ts';
import { limitsOf } from '../../marks/words.ts';
import type { Placement, Sheet } from '../../stencil/sheet.ts';
import type { Lettering } from '../lettering.ts';
import { escapeText } from '../svg.ts';
import { alongOf, gatherPlacements, windowNumbers } from './placements.ts';
import { counted, listed, type Readings } from './reading.ts';
import { sheetFigure } from './sheet-figure.ts';

const TURNS = ['as drawn', 'quarter turn right', 'half turn', 'quarter turn left'];

/** Where the middle of the sheet itself comes to lie, which can be found on it with a ruler. */
function bySheetMiddle({ turn, x, y, open }: Placement, { outline }: Sheet): Placement {
  const [dx, dy] = quarterTurn(turn)(boxCentre(outline));
  return { turn, x: x + dx, y: y + dy, open };
}

/** `on the axis`, `3″, 9″ left; 15″ right`. */
function acrossWords(xs: number[], { tape }: Readings): string {
  const side = (values: number[], word: string) =>
    values.length === 0 ? [] : [`${values.map((x) => tape(Math.abs(x))).join(', ')} ${word}`];
  const on = xs.some((x) => Math.abs(x) < 1e-4) ? ['on the axis'] : [];
  const left = xs.filter((x) => x <= -1e-4);
  const right = xs.filter((x) => x >= 1e-4);
  return [...side(left, 'left'), ...on, ...side(right, 'right')].join('; ');
}

function passRows(sheet: Sheet, number: number, layout: Layout, readings: Readings): string {
  const pass = sheet.passes[number]!.map((place) => bySheetMiddle(place, sheet));
  const rows = gatherPlacements(pass).map(({ turn, open, xs, ys }) => {
    const windows = open.length === sheet.windows.length ? 'all' : `only ${windowNumbers(open)}`;
    const along = ys.map((y) => readings.tape(alongOf(y, layout))).join(', ');
    return `<tr><td class="box"></td><td>${acrossWords(xs, readings)}</td><td>${along}</td><td>${TURNS[turn]}</td><td>${windows}</td></tr>`;
  });
  const when = number === 0 ? '' : `, when pass ${number} is dry`;
  const placements = counted(pass.length, 'placement');
  return `<tbody><tr><th colspan="5" scope="rowgroup">Pass ${number + 1}${when}: ${placements}</th></tr>${rows.join('')}</tbody>`;
}

function oneSheet(sheet: Sheet, layout: Layout, job: Job, readings: Readings, lettering: Lettering): string {
  const { outline, windows, keys, passes } = sheet;
  const size = `${readings.length(boxWidth(outline))} × ${readings.length(boxHeight(outline))}`;
  const told = [size, counted(windows.length, 'window'), keys.length > 0 ? counted(keys.length, 'key') : 'no keys'];
  const head = ['Done', 'Middle, from the axis', 'Middle, along', 'Turned', 'Windows open']
    .map((words) => `<th scope="col">${words}</th>`)
    .join('');
  const rows = passes.map((_, number) => passRows(sheet, number, layout, readings)).join('');
  const about = `<h3>${escapeText(sheet.file)}</h3><p><b>${escapeText(sheet.colour)}</b>: ${escapeText(sheet.says)}.</p><p>${listed(told)}.</p>`;
  return `<section class="sheet"><div>${about}<table class="lay"><thead><tr>${head}</tr></thead>${rows}</table></div>${sheetFigure(sheet, job, lettering)}</section>`;
}

/** Every sheet with where it is laid, in the order of work. */
export function sheetPages(
  sheets: Sheet[],
  layout: Layout,
  job: Job,
  readings: Readings,
  lettering: Lettering,
): string {
  if (sheets.length === 0) return '';
  const how = [
    'Cut each file at true size: its drawing is in millimetres, and its edge is the edge of the sheet. Write the numbers of the windows on it.',
    `As drawn, the top of a sheet points to the far end. The distances say where the middle of the sheet comes to lie: from the axis, and along from ${escapeText(limitsOf(job).near)}. They only bring it there; its keys do the rest.`,
    'Filled keys belong on the guide lines, with their points. Open keys then show a corner of what is painted already, and nothing else. Tape the keys shut before you paint, and every window that is not to be open.',
  ];
  const all = sheets.map((sheet) => oneSheet(sheet, layout, job, readings, lettering)).join('');
  return `<section class="page"><h2>Sheets, in the order of work</h2>${how.map((words) => `<p>${words}</p>`).join('')}${all}</section>`;
}
