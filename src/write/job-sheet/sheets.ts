import type { Layout } from '../../fit/layout.ts';
import { boxCentre, boxHeight, boxWidth } from '../../geometry/measure.ts';
import { quarterTurn } from '../../geometry/transform.ts';
import type { Job } from '../../job/job.ts';
import { datumsOf } from '../../marks/words.ts';
import type { Placement, Sheet } from '../../stencil/sheet.ts';
import { counted, listed } from '../../words.ts';
import type { Lettering } from '../lettering.ts';
import { type Block, heading, type Table, words } from './block.ts';
import { alongOf, gatherPlacements, windowNumbers } from './placements.ts';
import type { Readings } from './reading.ts';
import { sheetFigure } from './sheet-figure.ts';

export const TURNS = ['as drawn', 'quarter turn right', 'half turn', 'quarter turn left'];

/** Where the middle of the sheet itself comes to lie, which can be found on it with a ruler. */
export function bySheetMiddle({ turn, x, y, open }: Placement, { outline }: Sheet): Placement {
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

function passRows(sheet: Sheet, number: number, layout: Layout, readings: Readings): string[][] {
  const pass = sheet.passes[number]!.map((place) => bySheetMiddle(place, sheet));
  return gatherPlacements(pass).map(({ turn, open, xs, ys }) => [
    acrossWords(xs, readings),
    ys.map((y) => readings.place(alongOf(y, layout))).join(', '),
    TURNS[turn]!,
    open.length === sheet.windows.length ? 'all' : `only ${windowNumbers(open)}`,
  ]);
}

/** `Pass 2, when pass 1 is dry: 12 placements`. */
export const passWords = (sheet: Sheet, number: number): string => {
  const when = number === 0 ? '' : `, when pass ${number} is dry`;
  return `Pass ${number + 1}${when}: ${counted(sheet.passes[number]!.length, 'placement')}`;
};

/** Where a sheet is laid, from the axis and along it, pass by pass. */
function layTable(sheet: Sheet, layout: Layout, readings: Readings): Table {
  const rows: string[][] = [];
  const parts: NonNullable<Table['parts']> = [];
  for (const number of sheet.passes.keys()) {
    parts.push({ before: rows.length, text: passWords(sheet, number) });
    rows.push(...passRows(sheet, number, layout, readings));
  }
  return {
    kind: 'table',
    head: ['Middle, from the axis', 'Middle, along', 'Turned', 'Windows open'],
    rows,
    ticked: true,
    narrow: [2],
    parts,
  };
}

/** Every sheet with where it is laid, in the order of work. `lay` where placements are told in another way than from one axis. */
export function sheetPages(
  sheets: Sheet[],
  job: Job,
  readings: Readings,
  lettering: Lettering,
  { layout, lay }: { layout?: Layout | undefined; lay?: ((sheet: Sheet) => Block[]) | undefined },
): Block[] {
  if (sheets.length === 0) return [];
  const along =
    layout && !lay
      ? `The distances say where the middle of the sheet comes to lie: from the axis, and along from ${datumsOf(job).near}. They only bring it there; its keys do the rest.`
      : 'The distances only bring it there; its keys do the rest.';
  const how = [
    'Cut each file at true size: its drawing is in millimetres, and its edge is the edge of the sheet. Write the numbers of the windows on it.',
    `As drawn, the top of a sheet points to the far end. ${along}`,
    'Filled keys belong on the guide lines, with their points. Open keys then show a corner of what is painted already, and nothing else. Tape the keys shut before you paint, and every window that is not to be open.',
  ];
  const one = (sheet: Sheet): Block[] => {
    const { outline, windows, keys } = sheet;
    const size = `${readings.length(boxWidth(outline))} × ${readings.length(boxHeight(outline))}`;
    const told = [size, counted(windows.length, 'window'), keys.length > 0 ? counted(keys.length, 'key') : 'no keys'];
    const placed = lay ? lay(sheet) : layout ? [layTable(sheet, layout, readings)] : [];
    return [
      {
        kind: 'beside',
        side: 'right',
        figure: sheetFigure(sheet, job, lettering),
        blocks: [
          heading(3, sheet.file),
          words(`${sheet.colour}: ${sheet.says}.`),
          words(`${listed(told)}.`),
          ...placed,
        ],
      },
    ];
  };
  return [heading(2, 'Sheets, in the order of work'), ...how.map((text) => words(text)), ...sheets.flatMap(one)];
}
