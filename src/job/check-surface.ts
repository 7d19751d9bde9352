import type { Issue } from '../issue.ts';
import type { System } from '../units/index.ts';
import type { Surface } from './job.ts';
import type { Wishes } from './shape/shape.ts';
import type { Path } from './tree.ts';

const issue = (code: string, path: Path, says: string, hint: string): Issue => ({ code, path, says, hint });

const missing = (path: Path, says: string, hint: string): Issue => issue('job/missing', path, says, hint);

const SURFACE: Record<Surface, string> = { runner: 'a runner', rug: 'a rug', 'floor-cloth': 'a floor cloth' };

const SIZE: Record<System, { across: string; along: string }> = {
  inch: { across: `4' to 5'`, along: `7'` },
  metric: { across: '120 to 150 cm', along: '210 cm' },
};

/** What a surface needs, and what another surface would need. */
export function checkSurface(wishes: Wishes, system: System): Issue[] {
  const { surface, site, overall, field } = wishes;
  if (surface === undefined) return [];
  const notHere = (path: Path, instead: string): Issue =>
    issue('job/not-here', path, `${path.join('.')} has no meaning for ${SURFACE[surface]}`, instead);
  const issues: Issue[] = [];
  if (surface === 'runner') {
    if (site?.run === undefined)
      issues.push(missing(['site', 'run'], 'a runner needs its length from threshold to threshold', `run: 19' 7 3/8"`));
    if (site?.openings === undefined && overall?.across === undefined && field?.size?.across === undefined)
      issues.push(
        missing(
          ['site', 'openings'],
          'a runner needs the widths of its openings, or a width of its own',
          'openings: 32"',
        ),
      );
    if (site?.room !== undefined) issues.push(notHere(['site', 'room'], 'surface: rug, or leave it out'));
    if (overall?.along !== undefined)
      issues.push(
        notHere(['overall', 'along'], 'leave it out: a runner is as long as site.run; `end gap` leaves its ends plain'),
      );
    return issues;
  }
  const usual = SIZE[system];
  const need = `${SURFACE[surface]} needs its size over everything`;
  const open = (['across', 'along'] as const).filter((way) => !overall?.[way] && !field?.size?.[way]);
  if (open.length === 2 && overall === undefined)
    issues.push(missing(['overall'], need, `overall: { across: ${usual.across}, along: ${usual.along} }`));
  else for (const way of open) issues.push(missing(['overall', way], need, `${way}: ${usual[way]}`));
  for (const key of ['run', 'openings'] as const)
    if (site?.[key] !== undefined) issues.push(notHere(['site', key], 'surface: runner, or leave it out'));
  if (surface === 'floor-cloth' && site?.room !== undefined)
    issues.push(notHere(['site', 'room'], 'surface: rug, or leave it out'));
  if (wishes['end gap'] !== undefined)
    issues.push(notHere(['end gap'], 'leave it out; `reserve` leaves a plain strip'));
  return issues;
}
