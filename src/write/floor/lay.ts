import type { Sheet } from '../../stencil/sheet.ts';
import { type Block, type Table, words } from '../job-sheet/block.ts';
import { gatherPlacements, windowNumbers } from '../job-sheet/placements.ts';
import type { Readings } from '../job-sheet/reading.ts';
import { bySheetMiddle, passWords, TURNS } from '../job-sheet/sheets.ts';

/** `on it`, `3″, 9″ left; 15″ right`. */
function beside(values: number[], [low, high]: [string, string], { tape }: Readings): string {
  const side = (chosen: number[], word: string) =>
    chosen.length === 0 ? [] : [`${chosen.map((value) => tape(Math.abs(value))).join(', ')} ${word}`];
  const on = values.some((value) => Math.abs(value) < 1e-4) ? ['on it'] : [];
  return [
    ...side(
      values.filter((value) => value <= -1e-4),
      low,
    ),
    ...on,
    ...side(
      values.filter((value) => value >= 1e-4),
      high,
    ),
  ].join('; ');
}

/** Where a sheet is laid on a floor, from its two centre lines, pass by pass. */
export function layOnFloor(sheet: Sheet, readings: Readings): Block[] {
  const rows: string[][] = [];
  const parts: NonNullable<Table['parts']> = [];
  for (const [number, pass] of sheet.passes.entries()) {
    parts.push({ before: rows.length, text: passWords(sheet, number) });
    for (const { turn, open, xs, ys } of gatherPlacements(pass.map((place) => bySheetMiddle(place, sheet))))
      rows.push([
        beside(xs, ['left', 'right'], readings),
        beside(
          [...ys].sort((a, b) => a - b),
          ['far', 'near'],
          readings,
        ),
        TURNS[turn]!,
        open.length === sheet.windows.length ? 'all' : `only ${windowNumbers(open)}`,
      ]);
  }
  return [
    words(
      'The middle of the sheet, so far to the left or right of the centre line along, and so far beyond the centre line across, to the far or to the near side.',
      'soft',
    ),
    {
      kind: 'table',
      head: ['From the line along', 'From the line across', 'Turned', 'Windows open'],
      rows,
      ticked: true,
      narrow: [2],
      parts,
    },
  ];
}
