import type { Issue } from '../issue.ts';
import type { System } from '../units/index.ts';
import type { MeasuredRoom, Surface, Wall } from './job.ts';
import type { Wishes } from './shape/shape.ts';
import { checkFloor } from './surface/floor.ts';
import { checkRoomBorder } from './surface/room-border.ts';
import { checkStairs } from './surface/stairs.ts';
import { SURFACE_WORDS } from './surface-words.ts';
import type { Path } from './tree.ts';
import { measuredRoomOf } from './wishes.ts';

const issue = (code: string, path: Path, says: string, hint: string): Issue => ({ code, path, says, hint });

const missing = (path: Path, says: string, hint: string): Issue => issue('job/missing', path, says, hint);

const SIZE: Record<System, { across: string; along: string }> = {
  inch: { across: `4' to 5'`, along: `7'` },
  metric: { across: '120 to 150 cm', along: '210 cm' },
};

type Check = (wishes: Wishes, system: System) => Issue[];

/** Surfaces that have a check of their own; the others share one. */
const OWN: Partial<Record<Surface, Check>> = {
  floor: checkFloor,
  'room-border': checkRoomBorder,
  stairs: checkStairs,
};

/** What a surface needs, and what another surface would need. */
export function checkSurface(wishes: Wishes, system: System): Issue[] {
  const { surface, site, overall, field } = wishes;
  if (surface === undefined) return [];
  const own = OWN[surface];
  if (own) return own(wishes, system);
  const notHere = (path: Path, instead: string): Issue =>
    issue('job/not-here', path, `${path.join('.')} has no meaning for ${SURFACE_WORDS[surface].inText}`, instead);
  const issues: Issue[] = [];
  if (surface === 'runner') {
    const measured = measuredRoomOf(wishes);
    if (measured) issues.push(...checkThresholds(wishes, measured));
    else {
      if (site?.run === undefined)
        issues.push(
          missing(['site', 'run'], 'a runner needs its length from threshold to threshold', `run: 19' 7 3/8"`),
        );
      if (site?.openings === undefined && overall?.across === undefined && field?.size?.across === undefined)
        issues.push(
          missing(
            ['site', 'openings'],
            'a runner needs the widths of its openings, or a width of its own',
            'openings: 32"',
          ),
        );
      for (const key of ['room', 'obstacles', 'axis'] as const)
        if (site?.[key] !== undefined) issues.push(notHere(['site', key], 'surface: rug, or leave it out'));
      if (Array.isArray(site?.openings))
        issues.push(
          issue(
            'job/openings',
            ['site', 'openings'],
            'a list of measured casings goes with a room told by its four walls; without it openings are told by their widths',
            'openings: { near: 32 1/2", far: 30" }',
          ),
        );
    }
    if (overall?.along !== undefined)
      issues.push(
        notHere(['overall', 'along'], 'leave it out: a runner is as long as site.run; `end gap` leaves its ends plain'),
      );
    return issues;
  }
  const usual = SIZE[system];
  const need = `${SURFACE_WORDS[surface].inText} needs its size over everything`;
  const open = (['across', 'along'] as const).filter((way) => !overall?.[way] && !field?.size?.[way]);
  if (open.length === 2 && overall === undefined)
    issues.push(missing(['overall'], need, `overall: { across: ${usual.across}, along: ${usual.along} }`));
  else for (const way of open) issues.push(missing(['overall', way], need, `${way}: ${usual[way]}`));
  for (const key of ['run', 'run at sides'] as const)
    if (site?.[key] !== undefined) issues.push(notHere(['site', key], 'surface: runner, or leave it out'));
  if (surface === 'floor-cloth') {
    for (const key of ['openings', 'room', 'obstacles', 'axis'] as const)
      if (site?.[key] !== undefined)
        issues.push(notHere(['site', key], `surface: ${key === 'openings' ? 'runner' : 'rug'}, or leave it out`));
  } else issues.push(...checkRoom(wishes));
  if (wishes['end gap'] !== undefined)
    issues.push(notHere(['end gap'], 'leave it out; `reserve` leaves a plain strip'));
  return issues;
}

/** A runner in a room of four walls lies between an opening in the near wall and one in the far wall. */
function checkThresholds({ site }: Wishes, { openings }: MeasuredRoom): Issue[] {
  const has = (wall: Wall) => openings.some((opening) => opening.wall === wall);
  if (has('near') && has('far')) return [];
  const says =
    site?.openings === undefined || Array.isArray(site.openings)
      ? 'a runner in a room of four walls needs an opening in the near wall and one in the far wall'
      : 'in a room of four walls each opening is told by its casing, from a corner; here stand widths alone';
  const hint = 'openings: [{ wall: near, starts: 40", ends: 72" }, { wall: far, starts: 42", ends: 72" }]';
  return [
    site?.openings === undefined
      ? missing(['site', 'openings'], says, hint)
      : issue('job/openings', ['site', 'openings'], says, hint),
  ];
}

/** What goes with a room of four walls, and what that room needs. */
function checkRoom(wishes: Wishes): Issue[] {
  const { site } = wishes;
  const measured = measuredRoomOf(wishes);
  const issues: Issue[] = [];
  if (site?.openings !== undefined && !Array.isArray(site.openings))
    issues.push(
      measured
        ? issue(
            'job/openings',
            ['site', 'openings'],
            'in a room of four walls each opening is told by its casing, from a corner; here stands a width alone',
            'openings: [{ wall: near, starts: 40", ends: 72 1/2" }]',
          )
        : issue(
            'job/not-here',
            ['site', 'openings'],
            'site.openings has no meaning for a rug',
            'surface: runner, or leave it out',
          ),
    );
  if (!measured) {
    const wall = `room: { near: 12' 1/4", right: 10' 0 1/4", far: 12' 1/2", left: 10', diagonals: { near-left to far-right: 15' 7 1/2" } }`;
    const told = (['openings', 'obstacles', 'axis'] as const).filter(
      (key) => site?.[key] !== undefined && (key !== 'openings' || Array.isArray(site.openings)),
    );
    if (told.length > 0)
      issues.push(
        issue(
          'job/missing',
          ['site', 'room'],
          `the four walls are missing, from which ${told.map((key) => `site.${key}`).join(' and ')} ${told.length > 1 ? 'are' : 'is'} measured`,
          wall,
        ),
      );
  }
  return issues;
}
