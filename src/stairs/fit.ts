import { fitLayouts } from '../fit/fit.ts';
import type { Fit, Layout } from '../fit/layout.ts';
import type { Motifs } from '../fit/problem.ts';
import { fail, type Result } from '../issue.ts';
import type { Job, Range } from '../job/job.ts';
import type { Site } from '../site/site.ts';
import { stairsSite } from '../site/stairs.ts';
import { writeLength } from '../units/index.ts';
import { facesOf } from './faces.ts';

const exactly = (value: number): Range => ({ from: value, to: value });

/** How much wider the strips on treads are tried where nothing fits. */
const WIDER = [1.5, 2, 3, 4, 6];

/**
 * The best layouts for the panel of a flight. Where treads are painted and the risers are measured too, the risers are fitted first
 * and all that counts across is taken from them: panel, border, reserve, repeats; so both land on the same lines.
 * Issues: those of `fitLayouts`, and `fit/treads` where the treads cannot take what the risers have.
 */
export function fitStairs(job: Job, site: Site, motifs: Motifs, most: number, why = true): Result<Fit> {
  const steps = job.site.steps ?? [];
  const { stairs } = job;
  if (stairs?.painted !== 'treads' || facesOf(steps, 'riser').length === 0)
    return fitLayouts(job, site, motifs, most, why);
  const risers: Job = { ...job, stairs: { ...stairs, painted: 'risers' } };
  const below = stairsSite(risers);
  if (!below.ok) return below;
  const first = fitLayouts(risers, below.value, motifs, 1, why);
  if (!first.ok) return first;
  const layout = first.value.layouts[0]!;
  const fitTreads = (wished: Job, along: Site['along'], count: number) =>
    fitLayouts(
      pinAcross(wished, layout),
      { ...site, across: { ...site.across, size: exactly(layout.overall.across) }, along },
      motifs,
      count,
      false,
    );
  const found = fitTreads(job, site.along, most);
  if (found.ok || !why) return found;
  const length = (mm: number) => writeLength(mm, job.units, job.step);
  const { repeats, pitch } = layout;
  const { margin } = stairs;
  const helps = WIDER.map((by) => margin.treads.to * by).find((to) => {
    const wider: Job = { ...job, stairs: { ...stairs, margin: { ...margin, treads: { from: 0, to } } } };
    const room = stairsSite(wider);
    return room.ok && fitTreads(wider, room.value.along, 1).ok;
  });
  return fail(
    'fit/treads',
    ['stairs', 'margin', 'treads'],
    `the treads take the ${repeats.across} repeats of ${length(pitch.across)} across that the risers have, and along no count of repeats lands within these limits`,
    helps !== undefined
      ? `treads: 0 to ${length(helps)}`
      : 'a wider stretch of the field, or another count across for both, such as repeats: { across: … }',
  );
}

/** The job with everything that counts across as a layout has it. */
function pinAcross(job: Job, { repeats, pitch, border, reserve }: Layout): Job {
  // The reserve of a layout holds the inner border and the strip inside it, that of a job does not.
  const inner = job.inner ? job.inner.width + job.inner.gap : 0;
  return {
    ...job,
    field: {
      ...job.field,
      repeats: { ...job.field.repeats, across: exactly(repeats.across) },
      pitch: { ...job.field.pitch, across: exactly(pitch.across) },
    },
    border: { ...job.border, width: exactly(border) },
    reserve: { ...job.reserve, across: exactly(reserve.across - inner) },
  };
}
