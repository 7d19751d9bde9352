import type { Layout } from '../fit/layout.ts';
import type { Motifs } from '../fit/problem.ts';
import type { Point } from '../geometry/path.ts';
import type { Job, Lettering } from '../job/job.ts';
import { blocksAbout } from './block.ts';
import type { Drawing } from './drawing.ts';
import { sidesOf } from './sides.ts';

/** Where lettering stands, and what can make way for it. Lengths in mm. */
export interface Place {
  centre: Point;
  /** Widths and heights of the rooms that can be cleared about the centre, smallest first; never empty. */
  across: number[];
  along: number[];
  /** Height of the capitals where nothing else is said. */
  usual: number;
  /** In plain words. */
  says: string;
}

/** What of a job decides about the room for its lettering. */
export type Lettered = Pick<Job, 'lettering' | 'units' | 'step'> & { border: Pick<Job['border'], 'turn' | 'run'> };

/** Share of the border's width that capitals take in it where nothing is said. */
const IN_BORDER = 0.6;

function inField({ pitch, phase, repeats, field }: Layout, { field: motif }: Motifs): Place {
  const rooms = (way: 'across' | 'along'): number[] => {
    const half = repeats[way] / 2;
    const blocks = blocksAbout(phase[way] + half, motif.lines[way], half);
    return blocks.length > 0 ? blocks.map((block) => 2 * block * pitch[way]) : [field[way]];
  };
  return { centre: [0, 0], across: rooms('across'), along: rooms('along'), usual: pitch.along / 2, says: 'the field' };
}

/**
 * Rooms of a plain band, which has no repeats: each half is a length that the tape shows. What is left of the band at either end is half as long as it is
 * wide, or nothing.
 */
function inBand(length: number, width: number, step: number): number[] {
  const count = Math.max(0, Math.floor((length - width) / (2 * step) + 1e-9));
  return [...Array.from({ length: count }, (_, n) => 2 * step * (n + 1)), length];
}

function inBorder(
  name: 'near' | 'far',
  drawing: Drawing,
  layout: Layout,
  job: Lettered,
  motifs: Motifs,
): Place | undefined {
  const { border } = motifs;
  const width = layout.border;
  if (!border || width <= 0) return undefined;
  const { turn, run } = job.border;
  const side = sidesOf(drawing.border.outer, width, turn === 'butt').find((one) => one.name === name)!;
  const count = layout.borderRepeats.across;
  const turned = run === 'reverse' && border.lines.across.mirrors.length === 0;
  const blocks = border.made === 'tape' ? [] : blocksAbout(count / 2, border.lines.across, count / 2, turned);
  const across = blocks.map((half) => (2 * half * side.length) / count);
  return {
    centre: side.middle,
    across: border.made === 'tape' || across.length === 0 ? inBand(side.length, width, job.step) : across,
    along: [width],
    usual: IN_BORDER * width,
    says: `the ${name} border`,
  };
}

/** Where a line of lettering stands; nothing in a border that is not there. */
export function placeOf(
  { place }: Lettering,
  drawing: Drawing,
  layout: Layout,
  job: Lettered,
  motifs: Motifs,
): Place | undefined {
  return place === 'centre' ? inField(layout, motifs) : inBorder(place, drawing, layout, job, motifs);
}
