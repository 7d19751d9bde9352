import type { Drawing, Region } from '../compose/drawing.ts';
import type { Layout, Pair } from '../fit/layout.ts';
import type { Box } from '../geometry/path.ts';
import type { Motif } from '../motif/motif.ts';
import type { Area } from './area.ts';
import { edgesOf, roomSideOf } from './edges.ts';
import { fieldGuides } from './guide.ts';
import { type Axis, cellsBetween, makePatch, type Patch, type Placed } from './patch.ts';
import { boxOfPlaced, byName, placedOf, reachOf, single } from './placed.ts';
import type { ShapeBook } from './shape.ts';

/** Repeats of a field, or what stands inside them. */
export interface FieldWork {
  family: 'field' | 'inset';
  /** What it is called in what is said about it. */
  name: string;
  /** The motif of the field, which the guide lines belong to. */
  host: Motif;
  regions: Region[];
  /** Rooms in which something else stands; they may cut pieces like an edge. */
  rooms: Box[];
  /** So many repeats each way make one cell of the pattern: two where repeats alternate. */
  every: Pair;
}

/** Cells of `every` repeats, from a line between repeats on. */
function axes({ field }: Drawing, { pitch, phase }: Layout, every: Pair): { x: Axis; y: Axis } {
  return {
    x: { start: field.left - phase.across * pitch.across, pitch: pitch.across * every.across, repeats: true },
    y: { start: field.bottom + phase.along * pitch.along, pitch: pitch.along * every.along, repeats: true },
  };
}

const isKind = ({ kinds, x, y }: Patch, { shape, centre }: Placed): boolean =>
  kinds.some(
    (kind) => kind.shape === shape && cellsBetween(x, y, [x.start + kind.x, y.start + kind.y], centre) !== undefined,
  );

/** The field's whole pieces, then what its edges and the rooms in it cut, edge by edge. */
export function fieldAreas(drawing: Drawing, layout: Layout, work: FieldWork, book: ShapeBook): Area[] {
  const { family, name, host, regions, rooms, every } = work;
  const { x, y } = axes(drawing, layout, every);
  const guides = fieldGuides(drawing, layout, host);
  const placed = (cut: boolean) =>
    placedOf(
      regions.filter((region) => region.cut === cut),
      book,
    );
  const whole = placed(false);
  // Of a repeat that is cut, the pieces no edge comes near are whole, and so are those it only touches.
  const touched = placed(true).filter((piece) => {
    const box = boxOfPlaced(piece, book);
    if (edgesOf(box, drawing.field) || roomSideOf(box, rooms)) return true;
    whole.push(piece);
    return false;
  });
  const pattern = makePatch(x, y, whole);
  const cut = touched.filter((piece) => {
    if (!isKind(pattern, piece)) return true;
    whole.push(piece);
    return false;
  });
  const areas: Area[] = [];
  if (whole.length > 0) areas.push({ family, place: '', every, name, patch: makePatch(x, y, whole), guides });
  const byEdge = byName(cut, (piece) => {
    const box = boxOfPlaced(piece, book);
    return edgesOf(box, drawing.field) || `room ${roomSideOf(box, rooms)}`;
  });
  for (const [place, pieces] of byEdge) {
    const band = reachOf(pieces, book);
    const patch = makePatch(
      /left|right/.test(place) ? single(band.left, band.right) : x,
      /near|far/.test(place) ? single(band.top, band.bottom) : y,
      pieces,
    );
    areas.push({ family: `${family} edge`, place, every, name, patch, guides });
  }
  return areas;
}
