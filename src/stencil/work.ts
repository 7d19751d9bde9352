import type { Motifs } from '../compose/compose.ts';
import type { Drawing, Region } from '../compose/drawing.ts';
import type { Layout, Pair } from '../fit/layout.ts';
import type { Box } from '../geometry/path.ts';
import type { Alternation, Job, Way } from '../job/job.ts';
import { type Motif, PARTS, type Part } from '../motif/motif.ts';
import type { Area } from './area.ts';
import { type Band, cornerAreas, sideAreas } from './edging-areas.ts';
import { fieldAreas } from './field-areas.ts';
import { fieldGuides } from './guide.ts';
import { LETTERING, type Words } from './issues.ts';
import { paintOrder } from './meeting/meeting.ts';
import { oneCell } from './one-cell.ts';
import type { Placed } from './patch.ts';
import { placedOf, reachOf } from './placed.ts';
import type { ShapeBook } from './shape.ts';

/** What cutting needs of a job. */
export interface CutJob extends Words, Pick<Job, 'colours'> {
  field?: { alternation?: Alternation };
  border?: Partial<Way>;
  inner?: Partial<Way>;
  medallion?: { repeats: Pair };
}

type Group = 'field' | 'inset' | 'medallion' | 'border' | 'corner' | 'inner' | 'inner-corner' | 'lettering';

/** What a motif of the job paints, made with sheets or with tape as that motif is; and the lettering. */
export interface Element {
  group: Group;
  /** What it is called in what is said about it. */
  name: string;
  motif?: Motif;
  /** Where the job names the motif. */
  path: string[];
  /** What makes its shapes larger. */
  larger: string;
  /** A second motif that paints the same element by turns with the first, and where the job names it. */
  other?: { motif: Motif; path: string[] };
}

const LARGER: Record<Group, string> = {
  field: 'larger repeats',
  inset: 'larger repeats',
  border: 'a wider border',
  corner: 'a wider border',
  inner: 'a wider inner border',
  'inner-corner': 'a wider inner border',
  medallion: 'a medallion in the room of more repeats',
  lettering: 'taller letters',
};

/** Every element of a job, in the order it is painted. */
export function elementsOf(job: Pick<CutJob, 'border' | 'inner'>, motifs: Partial<Motifs>): Element[] {
  const elements: Element[] = [];
  const add = (group: Group, motif: Motif | undefined, path: string[], other?: Element['other']): void => {
    if (!motif) return;
    elements.push({ group, name: motif.name, motif, path, larger: LARGER[group], ...(other ? { other } : {}) });
  };
  const other = motifs.other && { motif: motifs.other, path: ['field', 'alternate', 'with'] };
  const ownCorner = (way: Partial<Way> | undefined) => way?.turn !== undefined && way.turn !== 'block';
  const addBorder = (name: 'border' | 'inner border', side: Motif | undefined, corner: Motif | undefined): void => {
    const own = ownCorner(name === 'border' ? job.border : job.inner);
    add(name === 'border' ? 'border' : 'inner', side, [name, 'motif']);
    add(name === 'border' ? 'corner' : 'inner-corner', own ? side : corner, [name, own ? 'motif' : 'corner']);
  };
  add('field', motifs.field, ['field', 'motif'], other);
  add('inset', motifs.inset, ['field', 'inset']);
  addBorder('border', motifs.border, motifs.corner);
  addBorder('inner border', motifs.inner, motifs.innerCorner);
  add('medallion', motifs.medallion, ['medallion', 'motif']);
  elements.push({ group: 'lettering', name: LETTERING, path: ['lettering'], larger: LARGER.lettering });
  return elements;
}

/** Lettering is never masked, and an element of two motifs only where both are. */
export const isTaped = ({ motif, other }: Element): boolean =>
  motif?.made === 'tape' && (other === undefined || other.motif.made === 'tape');

/** The element of `elementsOf` that painted a region. */
function groupOf({ element, part }: Pick<Region, 'element' | 'part'>): Group {
  if (element === 'field') return part === 'inset' ? 'inset' : 'field';
  if (element.startsWith('border-')) return 'border';
  if (element === 'inner-corner') return element;
  return element.startsWith('inner-') ? 'inner' : (element as Group);
}

/** An element's regions of one colour. */
export interface Work extends Element {
  regions: Region[];
  /** The gaps that bridges leave in the others. */
  fills: boolean;
}

/** Everything that is painted through sheets, colour by colour. */
export function sheetWork(drawing: Drawing, job: CutJob, motifs: Partial<Motifs>): Map<string, Work[]> {
  const elements = elementsOf(job, motifs).filter((element) => !isTaped(element));
  const regionsOf = (part: Part, group: Group, fills: boolean) =>
    drawing.regions.filter(
      (region) => region.part === part && groupOf(region) === group && (region.fills ?? false) === fills,
    );
  const colours = new Map<string, Work[]>(paintOrder(job.colours).map((colour) => [colour, []]));
  for (const fills of [false, true]) {
    for (const part of PARTS) {
      for (const element of elements) {
        const regions = regionsOf(part, element.group, fills);
        if (regions.length === 0) continue;
        const work = colours.get(job.colours[part]) ?? [];
        const known = work.find((one) => one.group === element.group && one.fills === fills);
        if (known) known.regions.push(...regions);
        else work.push({ ...element, regions, fills });
        colours.set(job.colours[part], work);
      }
    }
  }
  return new Map([...colours].filter(([, work]) => work.length > 0));
}

/** Everything that areas are worked out from. `host`: the motif of the field, which the guide lines there belong to. */
export interface Floor {
  drawing: Drawing;
  layout: Layout;
  job: CutJob;
  host: Motif;
  book: ShapeBook;
}

/** The room of a medallion in the middle of the field. */
function roomOf({ job: { medallion }, layout: { pitch } }: Floor): Box[] {
  if (!medallion) return [];
  const { across, along } = medallion.repeats;
  const [right, bottom] = [(across * pitch.across) / 2, (along * pitch.along) / 2];
  return [{ left: -right, top: -bottom, right, bottom }];
}

const ONE: Pair = { across: 1, along: 1 };
const EVERY: Record<Alternation['by'], Pair> = {
  row: { across: 1, along: 2 },
  column: { across: 2, along: 1 },
  checker: { across: 2, along: 2 },
};

function bandOf(order: Band['order'], { drawing, layout, job }: Floor): Band | undefined {
  const edges = order === 'border' ? drawing.border : drawing.innerBorder;
  const repeats = order === 'border' ? layout.borderRepeats : layout.inner?.repeats;
  const { turn = 'block', run = 'reverse' } = (order === 'border' ? job.border : job.inner) ?? {};
  return edges && repeats && { order, ...edges, repeats, turn, run, rooms: drawing.lettering ?? [] };
}

/**
 * The ways an element's pieces can be sorted into areas: one, or two where repeats alternate: in cells of two repeats, or of one
 * with every second one left out.
 */
export function areasOf(floor: Floor, { group, name, motif, regions }: Work): Area[][] {
  const { drawing, layout, job, host, book } = floor;
  const rooms = [...roomOf(floor), ...(drawing.lettering ?? [])];
  switch (group) {
    case 'field':
    case 'inset': {
      const by = group === 'field' ? job.field?.alternation?.by : undefined;
      return [...(by ? [EVERY[by]] : []), ONE].map((every) =>
        fieldAreas(drawing, layout, { family: group, name, host, regions, rooms, every }, book),
      );
    }
    case 'medallion':
    case 'lettering': {
      const guides = fieldGuides(drawing, layout, host);
      const cell = (placed: Placed[], room: Box) => oneCell({ family: group, name, place: '', guides }, placed, room);
      const [room] = roomOf(floor);
      if (group === 'medallion' && room) return [[cell(placedOf(regions, book), room)]];
      return [
        regions.map((region) => {
          const placed = placedOf([region], book);
          return cell(placed, reachOf(placed, book));
        }),
      ];
    }
    default: {
      const inner = group === 'inner' || group === 'inner-corner';
      const band = bandOf(inner ? 'inner' : 'border', floor);
      if (!band || !motif) return [];
      const areas = group === 'border' || group === 'inner' ? sideAreas : cornerAreas;
      return [areas(band, motif, regions, book)];
    }
  }
}
