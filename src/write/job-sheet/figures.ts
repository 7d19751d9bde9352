import type { Layout } from '../../fit/layout.ts';
import type { Job } from '../../job/job.ts';
import type { Motif } from '../../motif/motif.ts';
import { halves, upper } from '../../words.ts';
import type { Block } from './block.ts';
import type { Readings } from './reading.ts';

const by = (one: string, other: string): string => `${one} × ${other}`;

/** The numbers that fix the work, large enough to read standing. */
export function figures(layout: Layout, job: Job, field: Motif, { length }: Readings): Block {
  const { overall, repeats, pitch, border, inner, gaps } = layout;
  const reserve = inner?.offset ?? layout.reserve;
  const per = { across: field.counts?.across ?? 1, along: field.counts?.along ?? 1 };
  const { each, many } = field.counts ?? { each: 'repeat', many: 'repeats' };
  const rows: [string, string][] = [
    ['Overall, across × along', by(length(overall.across), length(overall.along))],
    ['Field', by(length(layout.field.across), length(layout.field.along))],
    [upper(many), by(halves(repeats.across * per.across), halves(repeats.along * per.along))],
    [`Each ${each}`, by(length(pitch.across / per.across), length(pitch.along / per.along))],
  ];
  if (border > 0) rows.push(['Border', length(border)]);
  if (reserve.across > 0 || reserve.along > 0) {
    rows.push([
      'Reserve',
      reserve.across === reserve.along ? length(reserve.along) : by(length(reserve.across), length(reserve.along)),
    ]);
  }
  if (inner && job.inner) {
    rows.push(['Inner border', length(inner.width)]);
    if (job.inner.gap > 0) rows.push(['Reserve inside it', length(job.inner.gap)]);
  }
  if (job.surface === 'runner' && (gaps.near > 0 || gaps.far > 0)) {
    const same = Math.abs(gaps.near - gaps.far) < 1e-6;
    rows.push([
      same ? 'End gaps' : 'End gaps, near, far',
      same ? length(gaps.near) : `${length(gaps.near)}, ${length(gaps.far)}`,
    ]);
  }
  return { kind: 'numbers', items: rows.map(([name, value]) => ({ name, value })) };
}
