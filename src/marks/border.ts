import type { Layout, Pair } from '../fit/layout.ts';
import type { Job, Way } from '../job/job.ts';
import type { Motif } from '../motif/motif.ts';
import { joints } from './joints.ts';
import { marksAt, type Place } from './place.ts';
import type { GuideLine } from './schedule.ts';
import { datumsOf } from './words.ts';

/** A border as it is marked: the first one, or the one inside it. Lengths in mm. */
export interface Band extends Way {
  /** Begins the names of its lines. */
  name: 'border' | 'inner-border';
  width: number;
  repeats: Pair;
  /** From the edge of the work to the outer edge of the border. */
  offset: Pair;
  motif?: Motif | undefined;
}

/** The border and the inner border, where there are any. */
export function bandsOf(layout: Layout, job: Job, motifs?: { border?: Motif; inner?: Motif }): Band[] {
  const { border, inner } = layout;
  const bands: Band[] = [];
  if (border > 0) {
    const { turn, run } = job.border;
    const offset = { across: 0, along: 0 };
    bands.push({
      name: 'border',
      width: border,
      repeats: layout.borderRepeats,
      offset,
      motif: motifs?.border,
      turn,
      run,
    });
  }
  if (inner && job.inner) {
    const { width, repeats } = inner;
    const { turn, run } = job.inner;
    const offset = { across: border + inner.offset.across, along: border + inner.offset.along };
    bands.push({ name: 'inner-border', width, repeats, offset, motif: motifs?.inner, turn, run });
  }
  return bands;
}

/** A border without a mirror across its run reverses at the centre of each side, unless it runs round. */
const reverses = ({ motif, run }: Band): boolean =>
  motif !== undefined && motif.lines.across.mirrors.length === 0 && run === 'reverse';

const wordsOf = ({ name }: Band): string => name.replace('-', ' ');

/** What the ends of a side meet: corner blocks, other corners, or the sides that run through. */
function meets({ turn }: Band, end: 'near' | 'far'): string {
  if (turn === 'butt') return `${end} side`;
  return turn === 'block' ? 'corner block' : 'corner';
}

const between = (before: number) => `between border repeats ${before} and ${before + 1}`;

/** A long side, mm from the near limit like every other mark along. */
function sidePlaces({ gaps, work }: Layout, band: Band): Place[] {
  const { width, repeats, offset } = band;
  const length = work.along - 2 * (offset.along + width);
  const begins = gaps.near + offset.along + width;
  const [near, far] = [meets(band, 'near'), meets(band, 'far')];
  const turns = (before: number) => (reverses(band) && 2 * before === repeats.along ? ', the border reverses' : '');
  return [
    { at: begins - width, for: `${near} begins` },
    { at: begins, for: `${near} ends, border repeats begin` },
    ...joints(length, length / repeats.along).map(({ at, before }) => ({
      at: begins + at,
      for: between(before) + turns(before),
    })),
    { at: begins + length, for: `border repeats end, ${far} begins` },
    { at: begins + length + width, for: `${far} ends` },
  ];
}

/** Half of a short side, mm from the axis outwards. Repeats are counted from the left. */
function endPlaces({ work }: Layout, band: Band, side: 1 | -1): Place[] {
  const { width, repeats, offset, turn } = band;
  const through = turn === 'butt';
  const length = work.across - 2 * (offset.across + (through ? 0 : width));
  const places: Place[] = [];
  for (const { at, before } of joints(length, length / repeats.across)) {
    const out = side * (at - length / 2);
    if (out > 1e-6) places.push({ at: out, for: between(before) });
  }
  if (through) return [...places, { at: length / 2, for: 'border repeats end' }];
  const corner = meets(band, 'far');
  places.push({ at: length / 2, for: `border repeats end, ${corner} begins` });
  places.push({ at: length / 2 + width, for: `${corner} ends` });
  return places;
}

/** Marks for a border whose repeats are stencilled one after another. A band masked with tape needs only its two edges. */
export function borderLines(layout: Layout, job: Job, band: Band): GuideLine[] {
  const { name, motif, repeats } = band;
  if (motif?.made === 'tape' || !(repeats.across > 0 && repeats.along > 0)) return [];
  const words = wordsOf(band);
  const { near } = datumsOf(job);
  const beside = name === 'border' ? 'edge' : `edge of the ${words}`;
  const squared = layout.gaps.near > 0 || name !== 'border' ? `${near}, squared across to the ` : `${near}, at the `;
  const reversing = reverses(band) ? ' The border reverses at the axis.' : '';
  const long = (['left', 'right'] as const).map(
    (side): GuideLine => ({
      name: `${name}-${side}`,
      says: `Along the ${side} ${words}, from near to far.`,
      datum: `${squared}${side} ${beside}`,
      runs: 'along',
      marks: marksAt(sidePlaces(layout, band), job.step),
    }),
  );
  const short = (['near', 'far'] as const).flatMap((end) =>
    (['left', 'right'] as const).map(
      (side): GuideLine => ({
        name: `${name}-${end}-${side}`,
        says: `Along the ${end} ${words}, from the axis to the ${side}.${reversing}`,
        datum: 'the axis',
        runs: side,
        marks: marksAt(endPlaces(layout, band, side === 'left' ? -1 : 1), job.step),
      }),
    ),
  );
  return [...long, ...short];
}
