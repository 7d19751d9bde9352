import { bad, good, type Issue, type Result } from '../issue.ts';
import type { Job, MeasuredRoom, Range, Surface } from '../job/job.ts';
import { writeLength } from '../units/index.ts';
import { floorSite } from './floor.ts';
import { measuredRunner } from './measured-runner.ts';
import { centredOn, placeRoom } from './placing.ts';
import { roomBorderSite } from './room-border.ts';
import { runnerSite } from './runner.ts';
import { sayClearances, sayPlacing } from './say-placing.ts';
import type { Extent, Site } from './site.ts';
import { stairsSite } from './stairs.ts';

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
  if (measured) return measuredRunner(job, measured);
  const issue = {
    code: 'site/run',
    path: ['site', 'run'],
    says: 'a runner needs its length from threshold to threshold',
  };
  return run === undefined ? bad({ ...issue, hint: `run: 19' 7 3/8"` }) : good(runnerSite(job, run));
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

/** A rug centred on the largest true rectangle. Its margins are told at the largest that the job allows; the fit may choose a smaller one. */
function measuredSite(job: Job, measured: MeasuredRoom): Result<Site> {
  const placed = placeRoom(measured, job);
  if (!placed.ok) return placed;
  const placing = placed.value;
  const { left, right, top, bottom } = placing.largest;
  const down = (mm: number): number => Math.floor(mm / job.step + 1e-6) * job.step;
  const space = { across: down(right - left), along: down(bottom - top) };
  const largest = 'the largest true rectangle in the room, on this axis and clear of what is in it, has';
  const issues = WAYS.map((way) => tooLarge(job, space[way], way, largest)).filter((issue) => issue !== undefined);
  if (issues.length > 0) return bad(...issues);
  const [across, along] = WAYS.map((way) => reach(job, way) ?? space[way]) as [number, number];
  const notes = [...sayPlacing(placing, job), ...sayClearances(placing, centredOn(placing, across, along), job)];
  return good({ surface: 'rug', across: {}, along: {}, notes, placing });
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
    says: `the rug may be ${write(size)} ${way}, with its border; ${there} ${write(space)}`,
    hint: overall[way] ? `${way}: ${from}${write(space)}` : `a smaller field, or a narrower border`,
  };
}

/** A cloth of one size is its own limit; one that may still be cut to several has none. */
function clothSite(job: Job): Site {
  const exact = (range: Range | undefined): Extent => (range && range.from === range.to ? { space: range.from } : {});
  return { surface: 'floor-cloth', across: exact(job.overall.across), along: exact(job.overall.along), notes: [] };
}
