import type { Point } from '../geometry/path.ts';
import { fail, good, type Issue, type Result } from '../issue.ts';
import type { Job, MeasuredRoom } from '../job/job.ts';
import { readingDoubt, writeLength } from '../units/index.ts';
import { coverOf, sayCasings, sayOpposite, spreadOf } from './casing.ts';
import { frameOf } from './frame.ts';
import { isClear } from './largest.ts';
import { sayLeans } from './leans.ts';
import { type Placing, placeRoom } from './placing.ts';
import { axisAt, sayAxis } from './say-placing.ts';
import { saySurvey } from './say-survey.ts';
import type { Site } from './site.ts';
import { ENDS, outlineOf } from './walls.ts';

/** Work with square ends between two thresholds that need not be square to the axis. y in the frame of the work, mm. */
interface Ends {
  near: number;
  far: number;
}

const EDGES = [-0.5, 0.5];

/** How far square ends may reach: to the nearer end of each threshold. */
function endsOf({ room, middle }: Placing, width: number): Ends {
  const at = (wall: 'near' | 'far') => EDGES.map((share) => axisAt(room, wall, middle + share * width)[1]);
  return { near: Math.min(...at('near')), far: Math.max(...at('far')) };
}

/** The plain floor that a square end leaves at one end of a threshold, and how far the work begins from the threshold on the axis. */
function sayEnds({ room, middle }: Placing, width: number, ends: Ends, job: Job): string[] {
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
 * A runner between two openings of a room measured all round. Its length is the run that was read between the thresholds, if it was,
 * otherwise what the room gives. Issues: those of `placeRoom`; `site/in-the-way` (an obstacle, or a wall, lies on it).
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
    ...sayAxis(placing, job),
    ...sayLeans(placing.room, job),
    ...sayOpposite(near, far, squareTo(...given).into, job),
    ...sayEnds(placing, wide, ends, job),
    ...(field === undefined ? sayCasings(spreads, wide, job, 'work') : sayCasings(spreads, field, job)),
    ...sayRun(job, onTape(ends, job)),
  ];
  const across = cover === undefined ? {} : { cover };
  return good({ surface: 'runner', across, along: { space: job.site.run ?? onTape(ends, job) }, notes, placing });
}

const onTape = ({ near, far }: Ends, { step }: Job): number => Math.floor((near - far) / step + 1e-6) * step;

/** The run as read beside the one that the room gives. */
function sayRun(job: Job, computed: number): string[] {
  const { run } = job.site;
  const write = (mm: number): string => writeLength(mm, job.units, job.step);
  if (run === undefined) return [];
  if (Math.abs(run - computed) <= 2 * readingDoubt(run, job.step, job.system)) return [];
  return [
    `The run was read as ${write(run)}; square ends between the thresholds as the room has them come to ${write(computed)}. The run as read is taken; measure it again.`,
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
