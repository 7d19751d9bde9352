import type { Layout } from '../../fit/layout.ts';
import { boxHeight, boxWidth } from '../../geometry/measure.ts';
import type { Job } from '../../job/job.ts';
import { limitsOf } from '../../marks/words.ts';
import type { Sheet } from '../../stencil/sheet.ts';
import { escapeText } from '../svg.ts';
import { alongOf, gatherPlacements, windowNumbers } from './placements.ts';
import { counted, listed, type Readings } from './reading.ts';

const TURNS = ['as drawn', 'a quarter turn clockwise', 'half a turn', 'a quarter turn anticlockwise'];

/** `on the axis`, `3″ and 9″ left`, from the outside left to the outside right. */
function acrossWords(xs: number[], { tape }: Readings): string {
  const side = (values: number[], word: string) =>
    values.length === 0 ? [] : [`${values.map((x) => tape(Math.abs(x))).join(', ')} ${word}`];
  const on = xs.some((x) => Math.abs(x) < 1e-4) ? ['on the axis'] : [];
  const left = xs.filter((x) => x <= -1e-4);
  const right = xs.filter((x) => x >= 1e-4);
  return [...side(left, 'left'), ...on, ...side(right, 'right')].join('; ');
}

function passTable(sheet: Sheet, number: number, layout: Layout, readings: Readings): string {
  const pass = sheet.passes[number]!;
  const rows = gatherPlacements(pass).map(({ turn, open, xs, ys }) => {
    const windows = open.length === sheet.windows.length ? 'all' : `only ${windowNumbers(open)}`;
    const along = ys.map((y) => readings.tape(alongOf(y, layout))).join(', ');
    return `<tr><td class="box"></td><td>${acrossWords(xs, readings)}</td><td>${along}</td><td>${TURNS[turn]}</td><td>${windows}</td></tr>`;
  });
  const words =
    number === 0 ? 'Pass 1' : `Pass ${number + 1}, when pass ${number} is dry`;
  return `<table><caption>${words}: ${counted(pass.length, 'placement')}.</caption><thead><tr><th scope="col">Done</th><th scope="col">Middle, from the axis</th><th scope="col">Middle, along</th><th scope="col">Turned</th><th scope="col">Windows open</th></tr></thead><tbody>${rows.join('')}</tbody></table>`;
}

function oneSheet(sheet: Sheet, layout: Layout, readings: Readings): string {
  const { outline, windows, keys, passes } = sheet;
  const size = `${readings.length(boxWidth(outline))} × ${readings.length(boxHeight(outline))}`;
  const told = [`${size}`, counted(windows.length, 'window'), keys.length > 0 ? counted(keys.length, 'key') : 'no keys'];
  const tables = passes.map((_, number) => passTable(sheet, number, layout, readings));
  return `<div class="sheet"><h3>${escapeText(sheet.file)}</h3><p>${escapeText(sheet.colour)}: ${escapeText(sheet.says)}. <span class="soft">${listed(told)}.</span></p>${tables.join('')}</div>`;
}

/** Every sheet with where it is laid, in the order of work. */
export function sheetPages(sheets: Sheet[], layout: Layout, job: Job, readings: Readings): string {
  if (sheets.length === 0) return '';
  const { near } = limitsOf(job);
  return `<section class="page"><h2>Sheets, in the order of work</h2><p>Cut each file at true size: its drawing is in millimetres, and its edge is the edge of the sheet. As drawn, the top of a sheet points to the far end. Distances say where the middle of its pattern comes to lie: from the axis, and along from ${escapeText(near)}. They only bring it there; its keys do the rest. Lay the points of the triangles on the guide lines; the other keys then show a corner of what is already painted, and nothing else. Tape the keys shut before you paint. Where not all windows are open, tape the rest shut.</p>${sheets.map((sheet) => oneSheet(sheet, layout, readings)).join('')}</section>`;
}
