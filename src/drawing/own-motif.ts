import { boxHeight, boxWidth, pieceArea, piecesBox } from '../geometry/measure.ts';
import type { Box, Piece, Point, Ring } from '../geometry/path.ts';
import type { Lines, Motif, Part, Pen } from '../motif/motif.ts';
import { shown } from '../units/index.ts';
import type { Regions } from './area/layers.ts';
import { tidy } from './area/tidy.ts';
import { MOST_RINGS } from './limits.ts';
import type { Notes } from './notes.ts';
import { refuse } from './refusal.ts';
import { symmetryOf } from './symmetry.ts';
import { colourName } from './syntax/colour.ts';

/** A repeat may be at most this many times as long one way as the other. */
const MOST_SLIM = 50;

const PARTS: Part[] = ['field', 'alternate'];

/** A part with its rings in shares of the repeat, origin at its centre. */
interface OwnPart {
  part: Part;
  rings: Ring[];
}

const areaOf = (pieces: Piece[]): number => pieces.reduce((sum, piece) => sum + pieceArea(piece), 0);

const percent = (share: number): string => `${share < 0.01 ? 'under 1' : Math.round(100 * share)} %`;

function scaled({ start, sides }: Ring, box: Box): Ring {
  const move = ([x, y]: Point): Point => [
    (x - (box.left + box.right) / 2) / boxWidth(box),
    (y - (box.top + box.bottom) / 2) / boxHeight(box),
  ];
  return {
    start: move(start),
    sides: sides.map((side) =>
      side.kind === 'line'
        ? { kind: 'line', to: move(side.to) }
        : { kind: 'curve', out: move(side.out), into: move(side.into), to: move(side.to) },
    ),
  };
}

function drawRing(pen: Pen, { start, sides }: Ring, across: number, along: number): void {
  const at = ([x, y]: Point): [number, number] => [x * across, y * along];
  pen.moveTo(...at(start));
  for (const side of sides) {
    if (side.kind === 'line') pen.lineTo(...at(side.to));
    else pen.curveTo(...at(side.out), ...at(side.into), ...at(side.to));
  }
  pen.close();
}

/** The colours that show, the one that covers most first. Refuses a third, and a drawing that shows none. */
function partsOf({ colours, ground }: Regions, notes: Notes): { key: string; pieces: Piece[] }[] {
  const found = [...colours]
    .map(([key, pieces]) => ({ key, pieces: tidy(pieces) }))
    .filter(({ pieces }) => pieces.length > 0)
    .map((one) => ({ ...one, area: areaOf(one.pieces) }))
    .sort((a, b) => b.area - a.area || (a.key < b.key ? -1 : 1));
  if (found.length === 0) {
    const why = notes.list().slice(0, 3).join(' ');
    refuse(
      'nothing',
      `the drawing holds no shape that paints anything${why === '' ? '' : `. ${why}`}`,
      'draw closed shapes and fill them, turn letters into outlines, and save the drawing as plain SVG',
    );
  }
  if (found.length > PARTS.length) {
    const all = found.reduce((sum, { area }) => sum + area, 0);
    const named = found.slice(0, 8).map(({ key, area }) => `${colourName(key)} (${percent(area / all)})`);
    const more = found.length > 8 ? ` and ${found.length - 8} more` : '';
    refuse(
      'colours',
      `the drawing is in ${found.length} colours: ${named.join(', ')}${more}; at most two can be painted`,
      `give all shapes one of two colours, for example ${colourName(found[0]!.key)} and ${colourName(found[1]!.key)}`,
    );
  }
  const rings = found.flatMap(({ pieces }) => pieces.flat()).length;
  if (rings > MOST_RINGS) {
    refuse(
      'too-many',
      `the drawing comes to ${rings} outlines in one repeat; at most ${MOST_RINGS} are taken`,
      'simplify the drawing',
    );
  }
  if (ground !== undefined)
    notes.add(`The ${colourName(ground)} behind the drawing is taken as the ground and is not painted`);
  if (found.length === 2) {
    const [first, second] = found.map(({ key }) => colourName(key));
    notes.add(`${first} is the part "field", ${second} the part "alternate"`);
    if (found.some(({ key }) => key === '#ffffff')) {
      notes.add(
        'White is painted like any other colour; where the floor is to show instead, cut a hole, or put one white rectangle as large as the page behind everything',
      );
    }
  }
  return found;
}

/** A motif that draws what shows of the drawing into any cell, one repeat filling the cell. */
export function ownMotif(regions: Regions, page: Box | undefined, name: string, notes: Notes): Motif {
  const found = partsOf(regions, notes);
  const box = page ?? piecesBox(found.flatMap(({ pieces }) => pieces));
  const ratio = boxHeight(box) / boxWidth(box);
  if (ratio > MOST_SLIM || ratio < 1 / MOST_SLIM) {
    refuse(
      'size',
      `one repeat of the drawing is more than ${MOST_SLIM} times as ${ratio > 1 ? 'high as wide' : 'wide as high'}`,
      'set a page round one repeat in the drawing program and save again',
    );
  }
  const parts = found.map(
    ({ pieces }, i): OwnPart => ({ part: PARTS[i]!, rings: pieces.flat().map((ring) => scaled(ring, box)) }),
  );
  const count = found.reduce((sum, { pieces }) => sum + pieces.length, 0);
  const none: Lines = { mirrors: [], whole: [], half: [] };
  const motif: Motif = {
    name,
    kind: 'field',
    summary: `Your own drawing ${shown(name)}: ${count === 1 ? 'one piece' : `${count} pieces`} in ${found.length === 1 ? 'one colour' : 'two colours'}.`,
    parameters: {},
    ratio,
    lines: { across: none, along: none },
    made: 'sheet',
    draw({ across, along }, _settings, pen) {
      for (const { part, rings } of parts) {
        pen.part(part);
        for (const ring of rings) drawRing(pen, ring, across, along);
      }
    },
  };
  return { ...motif, ...symmetryOf(motif, notes) };
}
