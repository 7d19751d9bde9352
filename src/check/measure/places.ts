import type { LayoutNumbers } from '../read/layout.ts';

/** A line of the work that a mark may stand for, mm from the datum of its guide line. */
interface Place {
  at: number;
  says: string;
}

/** Everything that is to be marked on a guide line, and how many marked pieces one repeat holds. */
export interface Due {
  places: Place[];
  /** Where pieces meet, in order; they are numbered from the left or the near end. */
  joints: { at: number; before: number }[];
}

const NEXT_TO_NOTHING = 1e-6;

/** Where a strip's pieces meet: every `pitch / each`, the first at `phase` of a repeat before the strip begins. */
function joints(begins: number, length: number, pitch: number, phase: number, each: number): Due['joints'] {
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
export function dueOn(line: string, layout: LayoutNumbers, each: number): Due | undefined {
  if (line === 'axis' || line === 'left-edge' || line === 'right-edge') return dueAlong(layout, each);
  if (line === 'across-left' || line === 'across-right') return dueAcross(layout, each, line === 'across-left');
  if (line === 'border-left' || line === 'border-right') return dueLongBorder(layout);
  if (/^border-(near|far)-(left|right)$/.test(line)) return dueShortBorder(layout, line.endsWith('left'));
  if (line === 'room') return dueRoom(layout);
  return undefined;
}

function dueAlong(layout: LayoutNumbers, each: number): Due {
  const { gaps, work, border, reserve, field, pitch, phase } = layout;
  const end = gaps.near + work.along;
  const begins = gaps.near + border + reserve.along;
  const places = [
    { at: gaps.near, says: 'work begins' },
    { at: begins, says: 'field begins' },
    { at: gaps.near + work.along / 2, says: 'mid-run' },
    { at: begins + field.along, says: 'field ends' },
    { at: end, says: 'work ends' },
  ];
  if (border > 0) {
    places.push({ at: gaps.near + border, says: 'inner edge of the border' });
    places.push({ at: end - border, says: 'inner edge of the border' });
  }
  if (gaps.far > 0) places.push({ at: end + gaps.far, says: 'the far limit' });
  return { places, joints: joints(begins, field.along, pitch.along, phase.along, each) };
}

/** Sideways from the axis; pieces are numbered from the left edge of the field. */
function dueAcross(layout: LayoutNumbers, each: number, left: boolean): Due {
  const { border, reserve, field, pitch, phase } = layout;
  const half = field.across / 2;
  const places = [
    { at: half, says: 'edge of the field' },
    { at: half + reserve.across + border, says: 'edge of the work' },
  ];
  if (border > 0) places.push({ at: half + reserve.across, says: 'inner edge of the border' });
  return { places, joints: fromMiddle(joints(-half, field.across, pitch.across, phase.across, each), left) };
}

const fromMiddle = (all: Due['joints'], left: boolean): Due['joints'] =>
  all
    .map(({ at, before }) => ({ at: left ? -at : at, before }))
    .filter(({ at }) => at > NEXT_TO_NOTHING)
    .sort((a, b) => a.at - b.at);

function dueLongBorder({ gaps, work, border, borderRepeats }: LayoutNumbers): Due {
  const length = work.along - 2 * border;
  const begins = gaps.near + border;
  const places = [
    { at: gaps.near, says: 'corner block begins' },
    { at: begins, says: 'corner block ends' },
    { at: begins, says: 'border repeats begin' },
    { at: begins + length, says: 'border repeats end' },
    { at: begins + length, says: 'corner block begins' },
    { at: gaps.near + work.along, says: 'corner block ends' },
  ];
  return { places, joints: joints(begins, length, length / borderRepeats.along, 0, 1) };
}

function dueShortBorder({ work, border, borderRepeats }: LayoutNumbers, left: boolean): Due {
  const length = work.across - 2 * border;
  const places = [
    { at: length / 2, says: 'border repeats end' },
    { at: length / 2, says: 'corner block begins' },
    { at: length / 2 + border, says: 'corner block ends' },
  ];
  return { places, joints: fromMiddle(joints(-length / 2, length, length / borderRepeats.across, 0, 1), left) };
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
