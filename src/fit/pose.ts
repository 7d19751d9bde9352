import type { Job, Range, Way } from '../job/job.ts';
import { LEAST_CUT } from '../job/shape/lengths.ts';
import type { Motif } from '../motif/motif.ts';
import { hasFreeEnds } from '../site/free-ends.ts';
import type { Site } from '../site/site.ts';
import { boundPitches } from './pitches.ts';
import type { AxisProblem, Edging, FitProblem, Motifs } from './problem.ts';
import { tapeOf } from './tape.ts';
import { alternating, type Way as FitWay, hasRoom, together, waysTable } from './ways.ts';

/** A field of more repeats than this in one direction is refused. */
export const MOST_REPEATS = 10_000;

const fixed = (value: number): Range => ({ from: value, to: value });

/** What holds where the job is silent: a repeat between 2 and 18 in (5 and 45 cm), 6 in (15 cm) if nothing speaks against it. */
export const DEFAULT_PITCH = {
  inch: { from: 2 * 25.4, to: 18 * 25.4, wish: 6 * 25.4 },
  metric: { from: 50, to: 450, wish: 150 },
};

/** Where the job says nothing of the pitch but how many repeats there are, or what the other way leaves. */
export const OPEN_PITCH: Range = { from: LEAST_CUT, to: Number.POSITIVE_INFINITY };

function halvesOf(repeats: Range | undefined): { from: number; to: number } {
  if (!repeats) return { from: 1, to: 2 * MOST_REPEATS };
  return { from: Math.max(1, Math.ceil(repeats.from * 2)), to: Math.floor(repeats.to * 2) };
}

function kept(ways: FitWay[][], wish: Job['field']['landing'], direction: 'across' | 'along'): FitWay[][] {
  const landing = typeof wish === 'string' ? wish : (wish[direction] ?? 'either');
  return landing === 'either' ? ways : ways.map((list) => list.filter((way) => way.edge === landing));
}

/** Size of one direction, from the job first and the site second. */
function sizeOf(job: Job, site: Site, direction: 'across' | 'along'): { overall?: Range; field?: Range } {
  const field = job.field.size[direction];
  if (field) return { field };
  const overall = site[direction].size ?? job.overall[direction];
  if (overall) return { overall };
  const { cover, space } = site[direction];
  if (cover !== undefined) return { field: fixed(cover) };
  return { overall: fixed(space ?? 0) };
}

/** Only the ends of a runner, inside its run. */
const hasGaps = (job: Job, direction: 'across' | 'along'): boolean =>
  direction === 'along' && job.surface === 'runner' && !hasFreeEnds(job);

/** One that has no mirror across its run looks another way at its ends than at its start. */
const runsOneWay = (motif: Motif): boolean => motif.lines.across.mirrors.length === 0;

function edgingOf(motif: Motif | undefined, { turn, run, stretch }: Way & { stretch: Range }): Edging {
  return {
    ratio: !motif ? 'none' : motif.made === 'tape' ? 'plain' : motif.ratio,
    stretch,
    even: motif !== undefined && motif.made === 'sheet' && runsOneWay(motif) && run === 'reverse',
    butt: turn === 'butt',
  };
}

/** The strip between border and field, the second border and the strip inside it among them. */
const withInner = (reserve: Range, inner: Job['inner']): Range => {
  const more = inner ? inner.width + inner.gap : 0;
  const { from, to, wish } = reserve;
  return { from: from + more, to: to + more, ...(wish === undefined ? {} : { wish: wish + more }) };
};

/** The ways the field lands, with what is laid over it: alternate repeats, and a medallion that takes a whole number of repeats' room. */
export function waysOf(job: Job, { field, other }: Motifs, direction: 'across' | 'along'): FitWay[][] {
  const { alternation } = job.field;
  const turns = alternation && alternation.by !== (direction === 'across' ? 'row' : 'column');
  const lines = other ? together(field.lines[direction], other.lines[direction]) : field.lines[direction];
  const table = waysTable(turns ? alternating(lines) : lines);
  const room = job.medallion?.repeats[direction];
  return room === undefined ? table : table.map((ways, halves) => ways.filter((way) => hasRoom(way, halves, room)));
}

/** Puts job, site and motifs into the numbers of the search, with every default filled in. */
export function poseProblem(job: Job, site: Site, motifs: Motifs): FitProblem {
  const { field } = motifs;
  const { inner } = job;
  const axis = (direction: 'across' | 'along'): AxisProblem => {
    const space = site[direction].space;
    return {
      ...sizeOf(job, site, direction),
      endGap: hasGaps(job, direction) ? job.endGap : fixed(0),
      mayDiffer: hasGaps(job, direction),
      reserve: withInner(job.reserve[direction], inner),
      halves: halvesOf(job.field.repeats[direction]),
      pitch: job.field.pitch[direction] ?? OPEN_PITCH,
      pieces: field.counts?.[direction] ?? 1,
      ways: kept(waysOf(job, motifs, direction), job.field.landing, direction),
      ...(space === undefined ? {} : { space }),
      datum: direction === 'across' ? 'middle' : 'end',
    };
  };
  const across = axis('across');
  const along = axis('along');
  const bounded =
    job.field.repeats.across ?? job.field.repeats.along ?? job.field.pitch.across ?? job.field.pitch.along;
  if (!bounded) across.pitch = DEFAULT_PITCH[job.system];
  return boundPitches({
    tape: tapeOf(job.system, job.step),
    across,
    along,
    stretch: job.field.stretch,
    ratio: field.ratio,
    border: motifs.border ? job.border.width : fixed(0),
    edging: edgingOf(motifs.border, job.border),
    ...(inner && motifs.inner
      ? { inner: { ...edgingOf(motifs.inner, inner), width: inner.width, gap: inner.gap } }
      : {}),
  });
}
