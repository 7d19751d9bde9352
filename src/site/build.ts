import { bad, good, type Issue, type Result } from '../issue.ts';
import type { Job, MeasuredRoom, Range, Surface } from '../job/job.ts';
import { writeLength } from '../units/index.ts';
import { floorSite } from './floor.ts';
import { hasFreeEnds } from './free-ends.ts';
import { isClear } from './largest.ts';
import { lieOf } from './lie.ts';
import { measuredRunner } from './measured-runner.ts';
import { type Placing, placeRoom } from './placing.ts';
import { roomBorderSite } from './room-border.ts';
import { runnerSite } from './runner.ts';
import { sayPlacing } from './say-placing.ts';
import type { Extent, Site } from './site.ts';
import { stairsSite } from './stairs.ts';
import { outlineOf } from './walls.ts';

type Way = 'across' | 'along';
const WAYS: Way[] = ['across', 'along'];

const SITES: Record<Surface, (job: Job) => Result<Site>> = {
  runner: runnerOrMeasured,
  rug: rugSite,
  'floor-cloth': (job) => good(clothSite(job)),
  floor: floorSite,
  'room-border': roomBorderSite,
  stairs: stairsSite,
};

/**
 * What the place allows the work to be.
 * Issues: `site/run` (a runner without its run), `site/room` (a rug larger than its room), and those of `placeRoom`.
 */
export const buildSite = (job: Job): Result<Site> => SITES[job.surface](job);

function runnerOrMeasured(job: Job): Result<Site> {
  const { run, measured } = job.site;
  if (hasFreeEnds(job)) return measured ? measuredSite(job, withAxis(measured)) : good(runnerSite(job));
  if (measured) return measuredRunner(job, measured);
  const issue = {
    code: 'site/run',
    path: ['site', 'run'],
    says: 'a runner needs its length from threshold to threshold',
  };
  return run === undefined ? bad({ ...issue, hint: `run: 19' 7 3/8"` }) : good(runnerSite(job, run));
}

/** A runner that ends freely is laid from opening to opening where both are there. */
function withAxis(measured: MeasuredRoom): MeasuredRoom {
  const both = (['near', 'far'] as const).every((wall) => measured.openings.some((opening) => opening.wall === wall));
  return both && !measured.axis ? { ...measured, axis: { way: 'openings' } } : measured;
}

/** The largest the work may become, as far as the job says; the least, where only its field is fixed. */
function reach(job: Job, way: Way): number | undefined {
  const overall = job.overall[way];
  if (overall) return overall.to;
  const field = job.field.size[way];
  return field && field.from + 2 * (job.border.width.from + job.reserve[way].from);
}

function rugSite(job: Job): Result<Site> {
  const { room, measured } = job.site;
  if (measured) return measuredSite(job, measured);
  if (!room) return good({ surface: 'rug', across: {}, along: {}, notes: [] });
  const issues = WAYS.map((way) => tooLarge(job, room[way], way, 'the room has')).filter(
    (issue) => issue !== undefined,
  );
  if (issues.length > 0) return bad(...issues);
  return good({ surface: 'rug', across: { space: room.across }, along: { space: room.along }, notes: [] });
}

/** A rug in a room of four walls: centred on the largest true rectangle, or where the job wants it. What is left beside it is told once its size is chosen. */
function measuredSite(job: Job, measured: MeasuredRoom): Result<Site> {
  const { place } = job.site;
  const placed = placeRoom(measured, job, undefined, place?.way === 'wall' ? place.wall : undefined);
  if (!placed.ok) return placed;
  const placing = placed.value;
  const issues = place === undefined || place.way === 'centred' ? tooWide(job, placing) : notThere(job, placing);
  return issues.length > 0 ? bad(...issues) : good(siteIn(job, placing));
}

const siteIn = (job: Job, placing: Placing): Site => ({
  surface: job.surface,
  across: {},
  along: {},
  notes: sayPlacing(placing, job, job.site.place),
  placing,
});

const onTape = (mm: number, { step }: Job): number => Math.floor(mm / step + 1e-6) * step;

function tooWide(job: Job, { largest: { left, right, top, bottom } }: Placing): Issue[] {
  const space = { across: onTape(right - left, job), along: onTape(bottom - top, job) };
  const largest = 'the largest true rectangle in the room, on this axis and clear of what is in it, has';
  return WAYS.map((way) => tooLarge(job, space[way], way, largest)).filter((issue) => issue !== undefined);
}

/** Rounds in which the largest size that fits is closed in on: to a hundredth of a step for any room. */
const ROUNDS = 24;

/** A rug on a wall or under a table that reaches a wall or an obstacle at the largest that the job allows. */
function notThere(job: Job, placing: Placing): Issue[] {
  const [across, along] = WAYS.map((way) => reach(job, way)) as [number, number];
  const { room, blocked } = placing;
  const fits = (share: number): boolean =>
    isClear(lieOf(placing, job.site.place, share * across, share * along), outlineOf(room), blocked);
  if (fits(1)) return [];
  let [low, high] = [0, 1];
  for (let round = 0; round < ROUNDS; round++) {
    const share = (low + high) / 2;
    if (fits(share)) low = share;
    else high = share;
  }
  const write = (mm: number): string => writeLength(onTape(mm, job), job.units, job.step);
  const size = (share: number): string => `${write(share * across)} by ${write(share * along)}`;
  return [
    {
      code: 'site/in-the-way',
      path: ['site', 'place'],
      says: `the rug may be ${size(1)}; where it is to lie it would reach a wall, or what it must stay clear of`,
      hint:
        low * Math.min(across, along) > job.step
          ? `no more than ${size(low)} there, or place: centred`
          : 'place: centred',
    },
  ];
}

function tooLarge(job: Job, space: number, way: Way, there: string): Issue | undefined {
  const size = reach(job, way);
  if (size === undefined || size <= space) return undefined;
  const write = (mm: number): string => writeLength(mm, job.units, job.step);
  const { overall } = job;
  const path = overall[way] ? ['overall', way] : ['field', 'size', way];
  const from = overall[way] && overall[way].from < space ? `${write(overall[way].from)} to ` : '';
  return {
    code: 'site/room',
    path,
    says: `the ${job.surface} may be ${write(size)} ${way}, with its border; ${there} ${write(space)}`,
    hint: overall[way] ? `${way}: ${from}${write(space)}` : `a smaller field, or a narrower border`,
  };
}

/** A cloth of one size is its own limit; one that may still be cut to several has none. */
function clothSite(job: Job): Site {
  const exact = (range: Range | undefined): Extent => (range && range.from === range.to ? { space: range.from } : {});
  return { surface: 'floor-cloth', across: exact(job.overall.across), along: exact(job.overall.along), notes: [] };
}
