import type { Layout } from '../fit/layout.ts';
import type { Point } from '../geometry/path.ts';
import type { Job } from '../job/job.ts';
import type { Drawn } from '../motif/motif.ts';
import { writeLength } from '../units/index.ts';
import { labelPath, labelWidth } from './label.ts';
import { formatMm } from './number.ts';
import { linesText, rectangleText, shortText } from './path.ts';
import { element, escapeText, trueSizePage } from './svg.ts';

/** Room round the repeat, and the notches and the cross in it, mm. */
const MARGIN = 16;
const NOTCH = 6;
const CROSS = 5;
/** Largest and smallest lettering, mm. */
const [LARGE, SMALL] = [6, 2];

const NOTE =
  '<!-- True size. Black: the shapes of one repeat, to cut or trace round. Blue: notches whose points lie on the centre lines of the repeat, ' +
  'and the cross at its centre. Grey, broken: the edge of the repeat. -->';

/** A triangle outside the repeat whose point touches the middle of a side. */
function notch(x: number, y: number, outX: number, outY: number): string {
  const [fx, fy] = [x + outX * NOTCH, y + outY * NOTCH];
  const half = NOTCH / 2;
  const points: Point[] = [
    [x, y],
    [fx - outY * half, fy + outX * half],
    [fx + outY * half, fy - outX * half],
  ];
  return linesText(points, true);
}

/** Lettering no larger than the room it has. */
async function sizeFor(text: string, room: number): Promise<number> {
  const wide = await labelWidth(text, LARGE);
  return Math.max(SMALL, Math.min(LARGE, (LARGE * room) / wide));
}

/**
 * The bare outline of one repeat at true size, for those who trace it on card: shapes, notches on its centre lines, a cross at its
 * centre, and its size in the job's units beside it.
 * @param motif what `drawMotif` returns for a cell of one pitch
 */
export async function writeTemplate(
  motif: Drawn[],
  layout: Pick<Layout, 'pitch'>,
  job: Pick<Job, 'title' | 'units' | 'step'>,
): Promise<string> {
  const { across, along } = layout.pitch;
  const [width, height] = [across + 2 * MARGIN, along + 2 * MARGIN];
  const [cx, cy] = [width / 2, height / 2];
  const [left, right, top, bottom] = [MARGIN, MARGIN + across, MARGIN, MARGIN + along];
  const write = (mm: number) => writeLength(mm, job.units, job.step);

  const label = async (text: string, room: number, place: { x: number; y: number; turn?: number }) => {
    const size = await sizeFor(text, room);
    const d = await labelPath(text, { ...place, size, anchor: 'start' });
    return element('path', { 'data-label': text, fill: '#333', d });
  };
  const blue = { fill: 'none', stroke: '#06c', 'stroke-width': 0.2 };
  const edge = rectangleText({ left, right, top, bottom });
  const notches = [notch(cx, top, 0, -1), notch(right, cy, 1, 0), notch(cx, bottom, 0, 1), notch(left, cy, -1, 0)];
  const cross =
    linesText([
      [cx - CROSS, cy],
      [cx + CROSS, cy],
    ]) +
    linesText([
      [cx, cy - CROSS],
      [cx, cy + CROSS],
    ]);
  const says = `One repeat, ${write(across)} across and ${write(along)} along`;
  const lines = [
    element('title', {}, escapeText(`${job.title}: template`)),
    element(
      'desc',
      {},
      escapeText(
        `${says} (${formatMm(across)} by ${formatMm(along)} mm), drawn true to size. Lay the notches on the centre lines between guide lines.`,
      ),
    ),
    NOTE,
    element('path', {
      'data-line': 'repeat',
      fill: 'none',
      stroke: '#999',
      'stroke-width': 0.2,
      'stroke-dasharray': '4 2',
      d: edge,
    }),
    ...motif.map(({ part, pieces }) =>
      element('path', {
        'data-line': 'trace',
        'data-part': part,
        fill: 'none',
        stroke: '#000',
        'stroke-width': 0.3,
        d: pieces.map((piece) => shortText(piece, [cx, cy])).join(''),
      }),
    ),
    ...notches.map((d) => element('path', { 'data-line': 'notch', ...blue, d })),
    element('path', { 'data-line': 'centre', ...blue, d: cross }),
    await label(`${write(across)} across`, across / 2 - NOTCH, { x: left, y: bottom + 10 }),
    await label(`${write(along)} along`, along / 2 - NOTCH, { x: left - 6, y: bottom, turn: -Math.PI / 2 }),
  ];
  const [w, h] = [formatMm(width), formatMm(height)];
  return trueSizePage(w, h, lines);
}
