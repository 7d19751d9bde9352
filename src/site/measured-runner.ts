import type { Point } from '../geometry/path.ts';
import { fail, good, type Issue, type Result } from '../issue.ts';
import type { Job, MeasuredRoom } from '../job/job.ts';
import { readingDoubt, writeLength } from '../units/index.ts';
import { coverOf, sayOpposite, spreadOf } from './casing.ts';
import { frameOf } from './frame.ts';
import { isClear } from './largest.ts';
import { sayLeans } from './leans.ts';
import { type Ends, type Placing, placeRoom } from './placing.ts';
import { sayRuns } from './runs.ts';
import { sayObstacles } from './say-obstacles.ts';
import { axisAt, sayAxis } from './say-placing.ts';
import { saySurvey } from './say-survey.ts';
import type { Site } from './site.ts';
import { ENDS, outlineOf } from './walls.ts';

const EDGES = [-0.5, 0.5];

/** How far square ends may reach: to the nearer end of each threshold. */
function endsOf({ room, middle }: Placing, width: number): Ends {
  const at = (wall: 'near' | 'far') => EDGES.map((share) => axisAt(room, wall, middle + share * width)[1]);
  return { near: Math.min(...at('near')), far: Math.max(...at('far')) };
}

/** The plain floor that a square end leaves at one end of a threshold, and how far the work begins from the threshold on the axis. */
export function sayEnds({ room, middle }: Placing, width: number, ends: Ends, job: Job): string[] {
  const write = (mm: number): string => writeLength(mm, job.units, job.step);
  return (['near', 'far'] as const).flatMap((wall) => {
    const [left, right] = EDGES.map((share) => Math.abs(axisAt(room, wall, middle + share * width)[1] - ends[wall]));
    const most = Math.max(left!, right!);
    if (most < job.step / 2) return [];
    const begins = wall === 'near' ? 'begins' : 'ends';
    return [
      `The ${wall} threshold is not square to the axis: ${write(most)} of plain floor is left at its ${left! > right! ? 'left' : 'right'}. On the axis the work ${begins} ${write(most / 2)} from it; measure from there.`,
    ];
  });
}

const squareTo = (a: Point, b: Point): ReturnType<typeof frameOf> => frameOf(Math.atan2(b[1] - a[1], b[0] - a[0]));

/**
 * A runner between two openings of a room measured all round. Its length is what square ends between the thresholds come to in the room,
 * or the run that was read, if that is less. Issues: those of `placeRoom`; `site/in-the-way` (an obstacle, or a wall, lies on it).
 */
export function measuredRunner(job: Job, measured: MeasuredRoom): Result<Site> {
  const placed = placeRoom({ ...measured, axis: measured.axis ?? { way: 'openings' } }, job, 'near');
  if (!placed.ok) return placed;
  const placing = placed.value;
  const { openings, into, middle, survey } = placing;
  const [near, far] = (['near', 'far'] as const).map((wall) => openings.find((one) => one.wall === wall));
  if (!near || !far)
    return fail(
      'site/openings',
      ['site', 'openings'],
      'a runner in a room of four walls needs an opening in the near wall and one in the far wall',
      '[{ wall: near, starts: 40", ends: 72" }, { wall: far, starts: 42", ends: 72" }]',
    );
  const spreads = [near, far].map((one) => spreadOf(one, into, middle));
  const fixed = job.overall.across ?? job.field.size.across;
  const cover = fixed ? undefined : coverOf(spreads, job.system);
  const field = cover ?? job.field.size.across?.to;
  const beside = 2 * (job.border.width.to + job.reserve.across.to);
  const wide = job.overall.across?.to ?? field! + beside;
  const ends = endsOf(placing, wide);
  const issue = inTheWay(placing, wide, ends);
  if (issue) return { ok: false, issues: [issue] };
  const given = ENDS.near.map((corner) => survey.room[corner]) as [Point, Point];
  const notes = [
    ...saySurvey(survey, job),
    ...sayObstacles(placing, job),
    ...sayAxis(placing, job),
    ...sayLeans(placing.room, job),
    ...sayOpposite(near, far, squareTo(...given).into, job),
    ...(job.site.runs ? sayRuns(job.site.runs, job) : []),
    ...sayRun(job, placing),
  ];
  const across = cover === undefined ? {} : { cover };
  const space = Math.min(job.site.run ?? Number.POSITIVE_INFINITY, onTape(ends, job));
  return good({ surface: 'runner', across, along: { space }, notes, placing: { ...placing, ends } });
}

const onTape = ({ near, far }: Ends, { step }: Job): number => Math.floor((near - far) / step + 1e-6) * step;

/** The run as read at the centre beside what the room has there, from threshold to threshold on the axis. */
function sayRun(job: Job, { room, middle }: Placing): string[] {
  const run = job.site.runs?.centre ?? job.site.run;
  const write = (mm: number): string => writeLength(mm, job.units, job.step);
  if (run === undefined) return [];
  const there = axisAt(room, 'near', middle)[1] - axisAt(room, 'far', middle)[1];
  if (Math.abs(run - there) <= 2 * readingDoubt(run, job.step, job.system)) return [];
  return [
    `The run was read as ${write(run)}; the room as it was measured has ${write(there)} from threshold to threshold on the axis. The shorter is taken; measure again.`,
  ];
}

function inTheWay(
  { room, blocked, obstacles, middle }: Placing,
  width: number,
  { near, far }: Ends,
): Issue | undefined {
  const work = { left: middle - width / 2, right: middle + width / 2, top: far, bottom: near };
  const wall = !isClear(work, outlineOf(room), []);
  const at = blocked.findIndex((outline) => !isClear(work, outlineOf(room), [outline]));
  if (!wall && at < 0) return undefined;
  return {
    code: 'site/in-the-way',
    path: wall ? ['site', 'axis'] : ['site', 'obstacles', at],
    says: `${wall ? 'a wall' : `the ${obstacles[at]!.name}`} lies in the way of the runner`,
    hint: wall ? 'axis: opening to opening' : 'overall: { across: 30" }, narrow enough to pass it, or another axis',
  };
}
