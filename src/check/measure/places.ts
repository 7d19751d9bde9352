import type { LayoutFile, LayoutNumbers } from '../read/layout.ts';
import { motifSaid } from '../read/motif-said.ts';
import type { Frame } from '../read/outline.ts';
import { saysOf } from './lettered.ts';
import type { Way } from './symmetry.ts';

/** A line of the work that a mark may stand for, mm from the datum of its guide line. */
export interface Place {
  at: number;
  says: string;
  /** It may be left out. */
  optional?: true;
}

/** Everything that is to be marked on a guide line, and how many marked pieces one repeat holds. */
export interface Due {
  places: Place[];
  /** Where pieces meet, in order; they are numbered from the left or the near end. */
  joints: { at: number; before: number }[];
}

const NEXT_TO_NOTHING = 1e-6;

/** Where a strip's pieces meet: every `pitch / each`, the first at `phase` of a repeat before the strip begins. */
export function joints(begins: number, length: number, pitch: number, phase: number, each: number): Due['joints'] {
  const first = Math.floor(phase * each + 1e-9) + 1;
  const found: Due['joints'] = [];
  for (let n = first; ; n++) {
    const at = (n / each - phase) * pitch;
    if (at >= length - NEXT_TO_NOTHING || found.length > 100_000) return found;
    if (at > NEXT_TO_NOTHING) found.push({ at: begins + at, before: found.length + 1 });
  }
}

/**
 * What a guide line has to mark, worked out from the layout's numbers alone.
 * @param each marked pieces in one repeat across or along, such as 2 for the squares of a checkerboard
 * @returns undefined for a line that the layout says nothing of, such as the width of an opening
 */
export function dueOn(line: string, file: LayoutFile, each: number): Due | undefined {
  if (line === 'axis' || line === 'left-edge' || line === 'right-edge') return dueAlong(file, each);
  if (line === 'across-left' || line === 'across-right') return dueAcross(file, each, line === 'across-left');
  if (line === 'room') return dueRoom(file.layout);
  const [, place = 'centre', edge] = /^(?:(near|far)-)?lettering-(left|right)$/.exec(line) ?? [];
  if (edge) return dueLettering(file, place, edge);
  const [, order, side, half] = /^(inner-border|border)-(left|right|near|far)(?:-(left|right))?$/.exec(line) ?? [];
  const band = order && bandOf(order, file);
  if (!band) return undefined;
  const isLong = side === 'left' || side === 'right';
  if (isLong === (half !== undefined)) return undefined;
  return isLong ? dueLongBorder(file.layout, band) : dueShortBorder(file.layout, band, half === 'left');
}

function dueAlong(file: LayoutFile, each: number): Due {
  const { gaps, work, border, reserve, field, pitch, phase } = file.layout;
  const end = gaps.near + work.along;
  const begins = gaps.near + border + reserve.along;
  const middle = gaps.near + work.along / 2;
  const places: Place[] = [
    { at: gaps.near, says: 'work begins' },
    { at: begins, says: 'field begins' },
    { at: middle, says: 'mid-run' },
    { at: begins + field.along, says: 'field ends' },
    { at: end, says: 'work ends' },
    ...kindsFrom(file, 'along').map(({ at, says }) => ({ at: begins + at, says })),
  ];
  for (const { at, says } of strips(file.layout, 'along')) {
    places.push({ at: gaps.near + at, says }, { at: end - at, says });
  }
  if (file.medallion) {
    const half = (file.medallion.repeats.along * pitch.along) / 2;
    places.push({ at: middle - half, says: 'room of the medallion begins' });
    places.push({ at: middle + half, says: 'room of the medallion ends' });
  }
  places.push(...letteringPlaces(file));
  if (gaps.far > 0) places.push({ at: end + gaps.far, says: 'the far limit' });
  return { places, joints: joints(begins, field.along, pitch.along, phase.along, each) };
}

/** Edges of the rooms of lettering, middles and base lines. */
const letteringPlaces = ({ layout: { gaps, work }, lettering = [] }: LayoutFile): Place[] =>
  lettering.flatMap((line) => {
    const words = saysOf(line);
    const at = (y: number) => gaps.near + work.along / 2 - y;
    return [
      { at: at(line.room.bottom), says: `room of ${words} begins` },
      { at: at(line.base), says: `base line of ${words}${line.arc === 0 ? '' : ' at the axis'}` },
      { at: at((line.reach.top + line.reach.bottom) / 2), says: `middle of ${words}` },
      { at: at(line.room.top), says: `room of ${words} ends` },
    ];
  });

/** From the axis to where the letters end, and to the edge of their room. */
function dueLettering({ lettering }: LayoutFile, place: string, edge: string): Due | undefined {
  const line = lettering?.find((one) => one.place === place);
  if (!line) return undefined;
  const out = ({ left, right }: Frame) => (edge === 'left' ? -left : right);
  const places = [
    { at: out(line.reach), says: `end of ${saysOf(line)}` },
    { at: out(line.room), says: `edge of the room of ${saysOf(line)}` },
  ];
  return { places, joints: [] };
}

/** Sideways from the axis; pieces are numbered from the left edge of the field. */
function dueAcross(file: LayoutFile, each: number, left: boolean): Due {
  const { work, field, pitch, phase } = file.layout;
  const half = field.across / 2;
  const places: Place[] = [
    { at: half, says: 'edge of the field' },
    { at: work.across / 2, says: 'edge of the work' },
    ...kindsFrom(file, 'across')
      .map(({ at, says }) => ({ at: (left ? -1 : 1) * (at - half), says }))
      .filter(({ at }) => at > NEXT_TO_NOTHING),
  ];
  for (const { at, says } of strips(file.layout, 'across')) places.push({ at: work.across / 2 - at, says });
  if (file.medallion) {
    places.push({ at: (file.medallion.repeats.across * pitch.across) / 2, says: 'edge of the room of the medallion' });
  }
  return { places, joints: fromMiddle(joints(-half, field.across, pitch.across, phase.across, each), left) };
}

/** Edges of what lies between the edge of the work and the field, from the edge of the work inwards. */
function strips({ border, inner }: LayoutNumbers, way: Way): Place[] {
  const places: Place[] = border > 0 ? [{ at: border, says: 'inner edge of the border' }] : [];
  if (!inner) return places;
  const outer = border + inner.offset[way];
  return [
    ...places,
    { at: outer, says: 'outer edge of the inner border' },
    { at: outer + inner.width, says: 'inner edge of the inner border' },
  ];
}

/** What is said of the lines at which rows or columns begin where repeats alternate, from the beginning of the field. */
export function kindsFrom({ layout, alternation, motifs }: LayoutFile, way: Way): Place[] {
  if (!alternation || alternation.by === (way === 'across' ? 'row' : 'column')) return [];
  const { field, pitch, phase } = layout;
  const kinds = alternation.other
    ? [`of ${motifSaid(alternation.other.name)}`, `of ${motifSaid(motifs?.field?.name ?? '')}`]
    : ['in exchanged colours', 'in its own colours'];
  const name = way === 'across' ? 'column' : 'row';
  const begins = alternation.by === 'checker' ? ' begins' : '';
  const places: Place[] = [];
  for (let number = 1; number <= 100_000; number++) {
    const at = (number - 1 - phase[way]) * pitch[way];
    if (at >= field[way] - NEXT_TO_NOTHING) break;
    if (at > NEXT_TO_NOTHING) places.push({ at, says: `${name} ${number}${begins} ${kinds[number % 2]}` });
  }
  return places;
}

export const fromMiddle = (all: Due['joints'], left: boolean): Due['joints'] =>
  all
    .map(({ at, before }) => ({ at: left ? -at : at, before }))
    .filter(({ at }) => at > NEXT_TO_NOTHING)
    .sort((a, b) => a.at - b.at);

/** A border as it is marked. `offset`: from the edge of the work to its outer edge. */
interface Band {
  width: number;
  repeats: Record<Way, number>;
  offset: Record<Way, number>;
  /** What is said of the ends of its sides. */
  ends: { near: string; far: string };
  through: boolean;
}

function bandOf(order: string, { layout, border, inner }: LayoutFile): Band | undefined {
  const turn = (order === 'border' ? border : inner)?.turn ?? 'block';
  const corner = turn === 'block' ? 'corner block' : 'corner';
  const through = turn === 'butt';
  const ends = through ? { near: 'near side', far: 'far side' } : { near: corner, far: corner };
  if (order === 'border') {
    const { border: width, borderRepeats: repeats } = layout;
    return width > 0 ? { width, repeats, offset: { across: 0, along: 0 }, ends, through } : undefined;
  }
  if (!layout.inner) return undefined;
  const { width, repeats } = layout.inner;
  const offset = {
    across: layout.border + layout.inner.offset.across,
    along: layout.border + layout.inner.offset.along,
  };
  return { width, repeats, offset, ends, through };
}

function dueLongBorder({ gaps, work }: LayoutNumbers, { width, repeats, offset, ends }: Band): Due {
  const length = work.along - 2 * (offset.along + width);
  const begins = gaps.near + offset.along + width;
  const places: Place[] = [
    { at: begins - width, says: `${ends.near} begins` },
    { at: begins, says: `${ends.near} ends` },
    { at: begins, says: 'border repeats begin' },
    { at: begins + length / 2, says: 'the border reverses', optional: true },
    { at: begins + length, says: 'border repeats end' },
    { at: begins + length, says: `${ends.far} begins` },
    { at: begins + length + width, says: `${ends.far} ends` },
  ];
  return { places, joints: joints(begins, length, length / repeats.along, 0, 1) };
}

function dueShortBorder({ work }: LayoutNumbers, { width, repeats, offset, ends, through }: Band, left: boolean): Due {
  const length = work.across - 2 * (offset.across + (through ? 0 : width));
  const corner = through
    ? []
    : [
        { at: length / 2, says: `${ends.far} begins` },
        { at: length / 2 + width, says: `${ends.far} ends` },
      ];
  const places: Place[] = [{ at: length / 2, says: 'border repeats end' }, ...corner];
  return { places, joints: fromMiddle(joints(-length / 2, length, length / repeats.across, 0, 1), left) };
}

function dueRoom({ gaps, overall }: LayoutNumbers): Due {
  const places = [
    { at: gaps.left, says: 'edge of the work' },
    { at: gaps.left + overall.across / 2, says: 'the axis' },
    { at: gaps.left + overall.across, says: 'edge of the work' },
    { at: gaps.left + overall.across + gaps.right, says: 'the right wall' },
  ];
  return { places, joints: [] };
}
