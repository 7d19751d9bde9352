import type { Drawing, Region } from '../../compose/drawing.ts';
import { clipPieces } from '../../geometry/clip.ts';
import { boxHeight, boxWidth, pieceArea, piecesBox } from '../../geometry/measure.ts';
import type { Box } from '../../geometry/path.ts';
import { shiftedBox } from '../../geometry/transform.ts';
import type { Job } from '../../job/job.ts';
import type { Shown } from './shown.ts';

const HAIR = 1e-6;
/** So many repeats are seen each way at least. */
const REPEATS = 2;
/** Of a border along walls: so many repeats beside its corner. */
const BESIDE = 3;

/** Where the repeats of the field lie in one direction: the middle of one of them, from one to the next, and from one to the next that is like it, mm. */
interface Rhythm {
  middle: number;
  pitch: number;
  period: number;
}

/** The places of a region in one direction, each once, from the lowest up. */
function placesOf({ at }: Region, axis: 0 | 1): number[] {
  const found: number[] = [];
  for (const value of at.filter((_, n) => n % 2 === axis).sort())
    if (found.length === 0 || value - found.at(-1)! > HAIR) found.push(value);
  return found;
}

const closest = (places: number[]): number =>
  Math.min(...places.slice(1).map((place, at) => place - places[at]!), Infinity);

/** Nothing where there is but one repeat. */
function rhythmOf(regions: readonly Region[], alternates: boolean, axis: 0 | 1): Rhythm | undefined {
  const rows = regions.filter(({ element, cut }) => element === 'field' && !cut).map((one) => placesOf(one, axis));
  const periods = rows.map(closest).filter(Number.isFinite);
  if (periods.length === 0) return undefined;
  const period = Math.max(...periods);
  return { middle: rows[0]![0]!, pitch: alternates ? period / 2 : period, period };
}

/** The first line between two repeats at or beyond a place. */
const lineFrom = ({ middle, pitch }: Rhythm, from: number): number => {
  const line = middle + pitch / 2;
  return line + Math.ceil((from - line - HAIR) / pitch) * pitch;
};

/** The last one at or before it. */
const lineBefore = (rhythm: Rhythm, from: number): number => -lineFrom({ ...rhythm, middle: -rhythm.middle }, -from);

const lengthOf = ({ pitch, period }: Rhythm): number => Math.max(REPEATS * pitch, period);

/** From the near left corner of the work over its border to the end of a whole repeat. */
function cornerWindow({ work, field }: Drawing, across: Rhythm | undefined, along: Rhythm | undefined): Box {
  const right = across && lineFrom(across, field.left + Math.max(lengthOf(across), field.left - work.left));
  const top = along && lineBefore(along, field.bottom - Math.max(lengthOf(along), work.bottom - field.bottom));
  return {
    left: work.left,
    bottom: work.bottom,
    right: Math.min(right ?? work.right, work.right),
    top: Math.max(top ?? work.top, work.top),
  };
}

/** Whole repeats as near to the near left corner as a block of them is all there. */
function blockWindow(
  { field }: Drawing,
  { box, ground }: Shown,
  across: Rhythm | undefined,
  along: Rhythm | undefined,
): Box {
  const left = Math.max(box.left, field.left);
  const bottom = Math.min(box.bottom, field.bottom);
  const [wide, high] = [across ? lengthOf(across) : boxWidth(box), along ? lengthOf(along) : boxHeight(box)];
  const at = (right: number, up: number): Box => {
    const x = across ? lineFrom(across, left) + right * across.pitch : left;
    const y = along ? lineBefore(along, bottom) - up * along.pitch : bottom;
    return { left: x, right: x + wide, bottom: y, top: y - high };
  };
  const most = 6;
  for (let away = 0; away <= 2 * most; away++)
    for (let right = 0; right <= away; right++) {
      const window = at(right, away - right);
      const seen = clipPieces(ground, window).reduce((sum, piece) => sum + pieceArea(piece), 0);
      if (seen > wide * high * (1 - HAIR)) return window;
    }
  return box;
}

/** A corner of a border along walls, and some repeats beside it both ways. */
function wallWindow({ regions }: Drawing, { box }: Shown): Box {
  const placed = regions.flatMap((region) => {
    const own = piecesBox(region.pieces);
    return Array.from({ length: region.at.length / 2 }, (_, n) => ({
      element: region.element,
      box: shiftedBox(own, region.at[2 * n]!, region.at[2 * n + 1]!),
    }));
  });
  const corners = placed.filter(({ element }) => element === 'corner');
  const [first] = (corners.length > 0 ? corners : placed).sort(
    (a, b) => a.box.left - a.box.bottom - b.box.left + b.box.bottom,
  );
  if (!first) return box;
  const pitches = regions
    .filter(({ element }) => element.startsWith('border'))
    .flatMap((region) => [closest(placesOf(region, 0)), closest(placesOf(region, 1))])
    .filter(Number.isFinite);
  const wide = Math.max(boxWidth(first.box), boxHeight(first.box));
  const more = Math.max(BESIDE * Math.min(...pitches, wide), wide);
  return {
    left: Math.max(box.left, first.box.left - wide),
    bottom: Math.min(box.bottom, first.box.bottom + wide),
    right: Math.min(box.right, first.box.right + more),
    top: Math.max(box.top, first.box.top - more),
  };
}

/**
 * The part of a work in which most of it is seen from close by, mm: its near left corner, border and all, as far as whole repeats of the field;
 * without a border a block of repeats.
 */
export function closeWindow(drawing: Drawing, job: Pick<Job, 'surface' | 'field'>, shown: Shown): Box {
  if (job.surface === 'room-border') return wallWindow(drawing, shown);
  const by = job.field.alternation?.by;
  const across = rhythmOf(drawing.regions, by === 'column' || by === 'checker', 0);
  const along = rhythmOf(drawing.regions, by === 'row' || by === 'checker', 1);
  const bordered = drawing.regions.some(({ element }) => element.startsWith('border'));
  return bordered ? cornerWindow(drawing, across, along) : blockWindow(drawing, shown, across, along);
}
