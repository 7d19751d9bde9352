import { boxCentre, boxHeight, boxWidth, pieceBox } from '../../geometry/measure.ts';
import type { Job } from '../../job/job.ts';
import type { Sheet } from '../../stencil/sheet.ts';
import { INK, RED } from '../ink.ts';
import type { Lettering } from '../lettering.ts';
import { formatMm } from '../number.ts';
import { pathText } from '../path.ts';
import { Sketch } from '../sketch.ts';
import { sheetOrigin } from '../stencil.ts';
import { element } from '../svg.ts';
import { type Figure, PAGE_WIDTH } from './block.ts';

/** The largest a figure of a sheet may stand on the page, mm. */
const ROOM = { across: 62, along: 58 };

/** A small picture of a sheet: its windows with their numbers, its keys, and which edge points to the far end. */
export function sheetFigure(sheet: Sheet, job: Pick<Job, 'palette'>, lettering: Lettering): Figure {
  const { outline, windows, keys } = sheet;
  const [wide, high] = [boxWidth(outline), boxHeight(outline)];
  const perPage = Math.max(wide / ROOM.across, high / ROOM.along);
  const origin = sheetOrigin(sheet);
  const sketch = new Sketch(lettering, 3 * perPage);
  const line = 0.25 * perPage;
  sketch.rectangle({ left: 0, top: 0, right: wide, bottom: high }, { fill: '#fbf7ee', 'stroke-width': line });
  for (const piece of windows) {
    const fill = job.palette[sheet.colour]!;
    sketch.add(element('path', { d: pathText(piece, origin), fill, 'fill-opacity': 0.35, 'stroke-width': line / 2 }));
  }
  for (const { kind, piece } of keys) {
    const fill = kind === 'guide' ? RED : 'none';
    sketch.add(element('path', { d: pathText(piece, origin), fill, stroke: RED, 'stroke-width': line / 2 }));
  }
  const apart = Math.sqrt((wide * high) / Math.max(1, windows.length));
  const size = Math.min(3.2 * perPage, 0.5 * apart);
  windows.forEach((piece, at) => {
    const [x, y] = boxCentre(pieceBox(piece));
    sketch.label(`${at + 1}`, [x + origin[0], y + origin[1]], 'middle', { size });
  });
  const lettered = 2.8 * perPage;
  sketch.label('far end', [wide / 2, -0.8 * lettered], 'middle', { size: lettered });
  const { left, right, top } = sketch.box;
  const [across, along] = [right - left + 4 * line, high - top + 4 * line];
  const says = `${sheet.file}: where its ${windows.length} windows and ${keys.length} keys lie`;
  const svg = element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: [left - 2 * line, top - 2 * line, across, along].map(formatMm).join(' '),
      width: `${formatMm(across / perPage)}mm`,
      height: `${formatMm(along / perPage)}mm`,
      role: 'img',
      'aria-label': says,
    },
    element('g', { fill: 'none', stroke: INK }, sketch.text),
  );
  return { kind: 'figure', svg, says, share: across / perPage / PAGE_WIDTH };
}
