import { fail, type Issue } from '../issue.ts';
import type { Job, Range } from '../job/job.ts';
import type { Site } from '../site/site.ts';
import { writeLength } from '../units/index.ts';
import { buildLayout } from './build.ts';
import { poseProblem } from './pose.ts';
import type { Motifs } from './problem.ts';
import { explain } from './says.ts';
import { search } from './search.ts';

/** One limit of the job, let out. `hint` says what to type once it is known what was needed. */
interface Loosened {
  path: string[];
  job: Job;
  hint(found: { stretch: number; border: number; endGap: number; repeats: { across: number; along: number } }): string;
}

const wider = (range: Range, by: number): Range => ({ ...range, from: range.from / by, to: range.to * by });

/** The range with its nearer end moved just far enough to take the value in. */
function stretchedTo(range: Range, value: number, write: (value: number, up: boolean) => string): string {
  return value < range.from
    ? `${write(value, false)} to ${write(range.to, true)}`
    : `${write(range.from, false)} to ${write(value, true)}`;
}

const share = (value: number, up: boolean): string =>
  String((up ? Math.ceil : Math.floor)(value * 1000 - (up ? 1e-6 : -1e-6)) / 1000);

function loosenings(job: Job): Loosened[] {
  const length = (mm: number) => writeLength(mm, job.units, job.step);
  const { field, border, reserve } = job;
  const { across: _across, ...otherPitch } = field.pitch;
  return [
    {
      path: ['field', 'stretch'],
      job: { ...job, field: { ...field, stretch: wider(field.stretch, 1.25) } },
      hint: (found) => `stretch: ${stretchedTo(field.stretch, found.stretch, share)}`,
    },
    {
      path: ['field', 'landing'],
      job: { ...job, field: { ...field, landing: 'either' } },
      hint: () => 'landing: either',
    },
    {
      path: ['border', 'width'],
      job: { ...job, border: { ...border, width: wider(border.width, 1.6) } },
      hint: (found) => `width: ${stretchedTo(border.width, found.border, (mm) => length(mm))}`,
    },
    {
      path: ['end gap'],
      job: job.surface === 'runner' ? { ...job, endGap: { ...job.endGap, to: job.endGap.to + 150 } } : job,
      hint: (found) => `end gap: ${stretchedTo(job.endGap, found.endGap, (mm) => length(mm))}`,
    },
    ...(['across', 'along'] as const).map((way): Loosened => {
      const { [way]: _, ...repeats } = field.repeats;
      return {
        path: ['field', 'repeats'],
        job: { ...job, field: { ...field, repeats } },
        hint: (found) => `repeats: { ${way}: ${found.repeats[way]} }`,
      };
    }),
    {
      path: ['field', 'pitch'],
      job: { ...job, field: { ...field, pitch: otherPitch } },
      hint: () => 'leave the pitch out, or widen its range',
    },
    {
      path: ['border', 'stretch'],
      job: { ...job, border: { ...border, stretch: wider(border.stretch, 1.5) } },
      hint: () => `stretch: ${share(border.stretch.from / 1.5, false)} to ${share(border.stretch.to * 1.5, true)}`,
    },
    {
      path: ['reserve'],
      job: {
        ...job,
        reserve: {
          across: { ...reserve.across, to: reserve.across.to + 100 },
          along: { ...reserve.along, to: reserve.along.to + 100 },
        },
      },
      hint: () => `reserve: 0 to ${length(100)}`,
    },
  ];
}

/** Nothing fits, and what is known of it. */
export const nothingLands = (known = '', hint?: string) =>
  fail('fit/none', ['field'], `no layout lands within these limits${known}`, hint);

/** Nothing fits: which single limit, let out, would give a layout, and which. */
export function nearestThatFits(job: Job, site: Site, motifs: Motifs): { ok: false; issues: Issue[] } {
  const found = loosenings(job).flatMap((one) => {
    const problem = poseProblem(one.job, site, motifs);
    const candidate = search(problem, 1)[0];
    if (!candidate) return [];
    const layout = buildLayout(problem, candidate, 1);
    return [{ one, layout, says: explain(layout, job, motifs) }];
  });
  const best = found.sort((a, b) => a.layout.cost - b.layout.cost)[0];
  if (!best)
    return nothingLands(
      ', and letting out any one of them alone does not help',
      'widen two of: field.stretch, border.width, field.repeats, overall',
    );
  return fail(
    'fit/none',
    best.one.path,
    `no layout lands within these limits; the nearest that would: ${best.says}`,
    `under ${best.one.path.join('.')}, write ${best.one.hint(best.layout)}`,
  );
}
