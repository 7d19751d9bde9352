import type { Region } from '../compose/drawing.ts';
import type { Pair } from '../fit/layout.ts';
import { boxHeight, boxWidth } from '../geometry/measure.ts';
import type { Box } from '../geometry/path.ts';
import type { Way } from '../job/job.ts';
import type { Motif } from '../motif/motif.ts';
import type { Area } from './area.ts';
import { roomSideOf } from './edges.ts';
import { cornerGuides, sideGuides } from './guide.ts';
import { oneCell } from './one-cell.ts';
import { type Axis, makePatch, type Placed } from './patch.ts';
import { boxOfPlaced, byName, placedOf, reachOf, single } from './placed.ts';
import type { ShapeBook } from './shape.ts';

/** A border, the first or the one inside it: its edges, its repeats and how it goes round. */
export interface Band extends Way {
  order: 'border' | 'inner';
  outer: Box;
  inner: Box;
  repeats: Pair;
  /** Rooms in which lettering stands. */
  rooms: Box[];
}

/** Nearer than this, mm, a piece lies in a corner. */
const TOUCH = 1e-5;

/** A border without a mirror across its run reverses at the centre of each side, unless it is told to run round. */
const reverses = (motif: Motif, run: Way['run']): boolean =>
  motif.lines.across.mirrors.length === 0 && run === 'reverse';

/** The four sides of a border; each in two halves where it reverses at the centre. */
export function sideAreas(band: Band, motif: Motif, regions: Region[], book: ShapeBook): Area[] {
  const { order, outer, inner, repeats, turn, run, rooms } = band;
  const cells = (start: number, end: number, count: number): Axis => ({
    start,
    pitch: (end - start) / count,
    repeats: true,
  });
  const [from, to] = turn === 'butt' ? [outer.left, outer.right] : [inner.left, inner.right];
  const across = cells(from, to, repeats.across);
  const along = cells(inner.top, inner.bottom, repeats.along);
  const sides = [
    ['near', across, single(inner.bottom, outer.bottom)],
    ['far', across, single(outer.top, inner.top)],
    ['left', single(outer.left, inner.left), along],
    ['right', single(inner.right, outer.right), along],
  ] as const;
  return sides.flatMap(([place, x, y]): Area[] => {
    const [low, high] = x.repeats ? [from, to] : [inner.top, inner.bottom];
    const guides = sideGuides(band, x.repeats ? 'across' : 'along', {
      from: low,
      to: high,
      step: x.repeats ? x.pitch : y.pitch,
    });
    const area = (placed: Placed[], half?: Area['half']): Area[] => {
      if (placed.length === 0) return [];
      return [
        { family: order, place, ...(half ? { half } : {}), name: motif.name, patch: makePatch(x, y, placed), guides },
      ];
    };
    const here = regions.filter(({ element }) => element === `${order}-${place}`);
    const whole = placedOf(
      here.filter((region) => !region.cut),
      book,
    );
    // Lettering may take the middle of a side, and parts of what stands beside it.
    const cut = placedOf(
      here.filter((region) => region.cut),
      book,
    );
    const beside = byName(cut, (piece) => `room ${roomSideOf(boxOfPlaced(piece, book), rooms)}`);
    const rest = [...beside].map(([at, placed]) =>
      oneCell({ family: `${order} edge`, name: motif.name, place: at, guides }, placed, reachOf(placed, book)),
    );
    if (!reverses(motif, run)) return [...area(whole), ...rest];
    // Seen from the middle of the work, every side's first half is the one to the left.
    const onLeft = place === 'far' || place === 'right' ? 1 : -1;
    const isFirst = ({ centre }: Placed) => onLeft * (centre[x.repeats ? 0 : 1] - (low + high) / 2) < 0;
    return [
      ...area(whole.filter(isFirst), 'first'),
      ...area(
        whole.filter((piece) => !isFirst(piece)),
        'second',
      ),
      ...rest,
    ];
  });
}

/** The four corners, each on its own. */
export function cornerAreas(
  { order, outer, inner, turn }: Band,
  motif: Motif,
  regions: Region[],
  book: ShapeBook,
): Area[] {
  const guides = cornerGuides({ outer, inner });
  const blocks: [string, Box][] = [
    ['left far', { left: outer.left, top: outer.top, right: inner.left, bottom: inner.top }],
    ['right far', { left: inner.right, top: outer.top, right: outer.right, bottom: inner.top }],
    ['right near', { left: inner.right, top: inner.bottom, right: outer.right, bottom: outer.bottom }],
    ['left near', { left: outer.left, top: inner.bottom, right: inner.left, bottom: outer.bottom }],
  ];
  const placed = placedOf(regions, book);
  return blocks.flatMap(([place, block]): Area[] => {
    const [cx, cy] = [block.left + boxWidth(block) / 2, block.top + boxHeight(block) / 2];
    const inBlock = placed.filter(
      ({ centre: [x, y] }) =>
        Math.abs(x - cx) <= boxWidth(block) / 2 + TOUCH && Math.abs(y - cy) <= boxHeight(block) / 2 + TOUCH,
    );
    if (inBlock.length === 0) return [];
    const patch = makePatch(single(block.left, block.right), single(block.top, block.bottom), inBlock);
    return [
      {
        family: order === 'border' ? 'corner' : 'inner-corner',
        place,
        ...(turn === 'block' ? {} : { blockless: true }),
        name: motif.name,
        patch,
        guides,
      },
    ];
  });
}
