import { emptyBox, growBox } from '../../geometry/measure.ts';
import type { Box, Piece, Ring } from '../../geometry/path.ts';
import { movePiece, reversedRing } from '../../geometry/transform.ts';
import { FARTHEST, PAGE } from '../limits.ts';
import type { Clip, FillRule, Mark } from '../marks/mark.ts';
import type { Page } from '../marks/page.ts';
import { type Place, refuse } from '../refusal.ts';
import { determinant, type Matrix, moved, shift, stretch, times } from '../syntax/matrix.ts';
import { moveOutline, type Outline, pointsOf, ringOf } from '../syntax/outline.ts';
import type { ClipperLibrary } from './clipper.ts';
import { type Stroked, stroked } from './stroke.ts';

/** A clip with its shapes in page units. */
export interface Window {
  shapes: { rings: Ring[]; rule: FillRule }[];
  within: Window[];
}

/** One colour laid on, in page units: origin at the middle of the page, whose longer side is 1000. */
export interface Layer {
  colour: string;
  area: { kind: 'rings'; rings: Ring[]; rule: FillRule } | { kind: 'stroke'; stroked: Stroked };
  windows: Window[];
  place: Place;
}

export interface Scene {
  layers: Layer[];
  /** The page in its own units, or nothing when the file states none. */
  page?: Box;
}

function boxOf(marks: Mark[]): Box {
  const box = emptyBox();
  for (const { outlines, matrix } of marks) {
    for (const outline of outlines) for (const point of pointsOf(outline)) growBox(box, ...moved(matrix, point));
  }
  return box;
}

/** From the drawing's own units to page units. */
function toPage({ view, ratio }: Page, marks: Mark[]): { matrix: Matrix; page?: Box } {
  if (view === undefined) {
    const { left, top, right, bottom } = boxOf(marks);
    const scale = PAGE / Math.max(right - left, bottom - top, Number.MIN_VALUE);
    return { matrix: times(stretch(scale, scale), shift(-(left + right) / 2, -(top + bottom) / 2)) };
  }
  const shape = ratio ?? view.height / view.width;
  const [width, height] = shape > 1 ? [PAGE / shape, PAGE] : [PAGE, PAGE * shape];
  const matrix = times(
    stretch(width / view.width, height / view.height),
    shift(-(view.x + view.width / 2), -(view.y + view.height / 2)),
  );
  return { matrix, page: { left: -width / 2, top: -height / 2, right: width / 2, bottom: height / 2 } };
}

function checkPoints(outlines: Outline[], place: Place): void {
  for (const outline of outlines) {
    for (const [x, y] of pointsOf(outline)) {
      if (Math.abs(x) <= FARTHEST && Math.abs(y) <= FARTHEST) continue;
      refuse(
        'far',
        Number.isFinite(x) && Number.isFinite(y)
          ? 'a point lies more than a hundred pages away from the page'
          : 'a point has a number that is too large to reckon with',
        'look for a stray shape far off the page in the drawing program and delete it',
        place,
      );
    }
  }
}

const ringsOf = (outlines: Outline[]): Ring[] => outlines.map(ringOf).filter((ring) => ring !== undefined);

/** The drawing's marks in page units, lines turned into the areas they paint. */
export function layOut(marks: Mark[], page: Page, library: ClipperLibrary): Scene {
  const { matrix: outer, page: box } = toPage(page, marks);
  const windows = new Map<Clip, Window>();
  const windowOf = (clip: Clip): Window => {
    const known = windows.get(clip);
    if (known) return known;
    const shapes = clip.shapes.map(({ outlines, matrix, rule }) => {
      const there = outlines.map((outline) => moveOutline(outline, times(outer, matrix)));
      checkPoints(there, { line: 1, column: 1 });
      return { rings: ringsOf(there), rule };
    });
    const window: Window = { shapes, within: clip.within.map(windowOf) };
    windows.set(clip, window);
    return window;
  };
  const layers = marks.map(({ outlines, matrix, how, colour, clips, place }): Layer => {
    const whole = times(outer, matrix);
    const rest = { colour, windows: clips.map(windowOf), place };
    if (how.kind === 'fill') {
      const there = outlines.map((outline) => moveOutline(outline, whole));
      checkPoints(there, place);
      return { ...rest, area: { kind: 'rings', rings: ringsOf(there), rule: how.rule } };
    }
    // A line is drawn in the shape's own coordinates, grown to the size it has on the page, and only then slanted.
    const scale = Math.sqrt(Math.abs(determinant(whole)));
    const grown = outlines.map((outline) => moveOutline(outline, stretch(scale, scale)));
    checkPoints(grown, place);
    const { stroke } = how;
    const pen = {
      ...stroke,
      width: stroke.width * scale,
      dashes: stroke.dashes.map((one) => one * scale),
      offset: stroke.offset * scale,
    };
    checkPoints([{ start: [pen.width, pen.offset], sides: [], closed: false }], place);
    const { rings, chords } = stroked(grown, pen, library, place);
    const toPlace = times(whole, stretch(1 / scale, 1 / scale));
    const area = {
      chords: movePieces(chords, toPlace),
      ...(rings && { rings: rings.map((ring) => movePiece([ring], (point) => moved(toPlace, point))[0]!) }),
    };
    return { ...rest, area: { kind: 'stroke', stroked: area } };
  });
  return { layers, ...(box && { page: box }) };
}

/** Moves pieces; a move that mirrors turns their rings round, so that outer rings stay outer. */
function movePieces(pieces: Piece[], matrix: Matrix): Piece[] {
  const back = determinant(matrix) < 0;
  return pieces.map((piece) =>
    movePiece(piece, (point) => moved(matrix, point)).map((ring) => (back ? reversedRing(ring) : ring)),
  );
}
