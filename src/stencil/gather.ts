import type { Drawing, Region } from '../compose/drawing.ts';
import type { Layout } from '../fit/layout.ts';
import { boxHeight, boxWidth, piecesBox } from '../geometry/measure.ts';
import type { Box } from '../geometry/path.ts';
import type { Motif } from '../motif/motif.ts';
import { cornerGuides, fieldGuides, type Guides, sideGuides } from './guide.ts';
import { type Axis, cellsBetween, makePatch, type Patch, type Placed } from './patch.ts';
import type { ShapeBook } from './shape.ts';

/** Which family of sheets an area belongs to; sheets are shared inside a family only. */
export type Family = 'field' | 'edge' | 'border' | 'corner';

/** Painted pieces of one colour that sheets of their own paint. */
export interface Area {
  family: Family;
  /** Which side, edge or corner it is, such as `near` or `left far`. Empty for the field. */
  place: string;
  motif: Motif;
  patch: Patch;
  guides: Guides;
}

/** An edge of the field nearer than this to a piece touches it, mm. */
const TOUCH = 1e-5;

/** All pieces of some regions where they are painted. */
function placedOf(regions: Region[], book: ShapeBook): Placed[] {
  return regions.flatMap(({ pieces, at }) => {
    const found = pieces.map((piece) => book.find(piece));
    const placed: Placed[] = [];
    for (let n = 0; n < at.length; n += 2) {
      for (const { shape, centre } of found) {
        placed.push({ shape, centre: [centre[0] + at[n]!, centre[1] + at[n + 1]!] });
      }
    }
    return placed;
  });
}

function axes({ field }: Drawing, { pitch, phase }: Layout): { x: Axis; y: Axis } {
  return {
    x: { start: field.left - phase.across * pitch.across, pitch: pitch.across, repeats: true },
    y: { start: field.bottom + phase.along * pitch.along, pitch: pitch.along, repeats: true },
  };
}

/** Whether all a region shows are whole pieces where the field's repeats have them too. */
function isWhole({ kinds, x, y }: Patch, placed: Placed[]): boolean {
  return placed.every(({ shape, centre }) =>
    kinds.some(
      (kind) => kind.shape === shape && cellsBetween(x, y, [x.start + kind.x, y.start + kind.y], centre) !== undefined,
    ),
  );
}

const EDGES = [
  ['left', 'left'],
  ['right', 'right'],
  ['near', 'bottom'],
  ['far', 'top'],
] as const;

/** The edges of the field that a region touches wherever it is painted. */
function edgesOf({ pieces, at }: Region, field: Box): string[] {
  const box = piecesBox(pieces);
  return EDGES.filter(([, side]) => {
    const shift = side === 'left' || side === 'right' ? 0 : 1;
    for (let n = shift; n < at.length; n += 2) if (Math.abs(box[side] + at[n]! - field[side]) > TOUCH) return false;
    return true;
  }).map(([name]) => name);
}

/** The band an edge takes pieces from: as deep as they reach. */
function bandOf(regions: Region[]): Box {
  const boxes = regions.map(({ pieces, at }) => {
    const box = piecesBox(pieces);
    const [xs, ys] = [at.filter((_, n) => n % 2 === 0), at.filter((_, n) => n % 2 === 1)];
    return {
      left: box.left + Math.min(...xs),
      right: box.right + Math.max(...xs),
      top: box.top + Math.min(...ys),
      bottom: box.bottom + Math.max(...ys),
    };
  });
  return {
    left: Math.min(...boxes.map((box) => box.left)),
    right: Math.max(...boxes.map((box) => box.right)),
    top: Math.min(...boxes.map((box) => box.top)),
    bottom: Math.max(...boxes.map((box) => box.bottom)),
  };
}

const single = (start: number, end: number): Axis => ({ start, pitch: end - start, repeats: false });

/** The field's whole repeats, then what its edges cut, edge by edge. */
export function fieldAreas(drawing: Drawing, layout: Layout, motif: Motif, regions: Region[], book: ShapeBook): Area[] {
  const { x, y } = axes(drawing, layout);
  const guides = fieldGuides(drawing, layout, motif);
  const uncut = placedOf(
    regions.filter((region) => !region.cut),
    book,
  );
  const pattern = makePatch(x, y, uncut);
  const byEdge = new Map<string, Region[]>();
  for (const region of regions.filter(({ cut }) => cut)) {
    const placed = placedOf([region], book);
    if (isWhole(pattern, placed)) {
      uncut.push(...placed);
      continue;
    }
    const key = edgesOf(region, drawing.field).join(' ');
    byEdge.set(key, [...(byEdge.get(key) ?? []), region]);
  }
  const areas: Area[] = [];
  if (uncut.length > 0) areas.push({ family: 'field', place: '', motif, patch: makePatch(x, y, uncut), guides });
  for (const [key, found] of byEdge) {
    const band = bandOf(found);
    const edges = key === '' ? [] : key.split(' ');
    const patch = makePatch(
      edges.includes('left') || edges.includes('right') ? single(band.left, band.right) : x,
      edges.includes('near') || edges.includes('far') ? single(band.top, band.bottom) : y,
      placedOf(found, book),
    );
    areas.push({ family: 'edge', place: edges.join(' '), motif, patch, guides });
  }
  return areas;
}

/** The four sides of the border between the corner blocks. */
export function borderAreas(
  drawing: Drawing,
  layout: Layout,
  motif: Motif,
  regions: Region[],
  book: ShapeBook,
): Area[] {
  const { outer, inner } = drawing.border;
  const run = (low: number, high: number, repeats: number): Axis => ({
    start: low,
    pitch: (high - low) / repeats,
    repeats: true,
  });
  const acrossRun = run(inner.left, inner.right, layout.borderRepeats.across);
  const alongRun = run(inner.top, inner.bottom, layout.borderRepeats.along);
  const sides = [
    ['border-near', 'near', acrossRun, single(inner.bottom, outer.bottom)],
    ['border-far', 'far', acrossRun, single(outer.top, inner.top)],
    ['border-left', 'left', single(outer.left, inner.left), alongRun],
    ['border-right', 'right', single(inner.right, outer.right), alongRun],
  ] as const;
  return sides.flatMap(([element, place, x, y]): Area[] => {
    const placed = placedOf(
      regions.filter((region) => region.element === element),
      book,
    );
    if (placed.length === 0) return [];
    const guides = sideGuides(drawing, layout, x.repeats ? 'across' : 'along');
    return [{ family: 'border', place, motif, patch: makePatch(x, y, placed), guides }];
  });
}

/** The corner blocks, each on its own. */
export function cornerAreas(drawing: Drawing, motif: Motif, regions: Region[], book: ShapeBook): Area[] {
  const { outer, inner } = drawing.border;
  const guides = cornerGuides(drawing);
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
    return [{ family: 'corner', place, motif, patch, guides }];
  });
}
