import type { Issue } from '../issue.ts';
import type { System } from '../units/index.ts';
import type { MeasuredRoom, Surface, Wall } from './job.ts';
import type { Wishes } from './shape/shape.ts';
import { checkFloor } from './surface/floor.ts';
import { checkRoomBorder, needsField, notRoomBorder } from './surface/room-border.ts';
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
  const { surface } = wishes;
  if (surface === undefined) return needsField(wishes);
  const own = OWN[surface] ?? checkRectangle;
  const foreign = surface === 'room-border' ? [] : notRoomBorder(wishes, SURFACE_WORDS[surface].inText);
  return [...needsField(wishes), ...foreign, ...own(wishes, system), ...placeOnly(wishes)];
}

/** Only a rug is told where it lies, and only in a room of four walls. */
function placeOnly(wishes: Wishes): Issue[] {
  const { surface, site } = wishes;
  if (site?.place === undefined || surface === undefined) return [];
  if (surface !== 'rug')
    return [
      issue(
        'job/not-here',
        ['site', 'place'],
        `site.place has no meaning for ${SURFACE_WORDS[surface].inText}`,
        'surface: rug, or leave it out',
      ),
    ];
  if (measuredRoomOf(wishes) || site.place.way === 'centred') return [];
  return [missing(['site', 'room'], 'the four walls are missing, from which site.place is measured', WALLS_EXAMPLE)];
}

const WALLS_EXAMPLE = `room: { near: 12' 1/4", right: 10' 0 1/4", far: 12' 1/2", left: 10', diagonals: { near-left to far-right: 15' 7 1/2" } }`;

/** What a runner, a rug and a floor cloth need. */
function checkRectangle(wishes: Wishes, system: System): Issue[] {
  const { site, overall, field } = wishes;
  const surface = wishes.surface as Surface;
  const notHere = (path: Path, instead: string): Issue =>
    issue('job/not-here', path, `${path.join('.')} has no meaning for ${SURFACE_WORDS[surface].inText}`, instead);
  const issues: Issue[] = [];
  if (surface === 'runner' && site?.run === undefined && overall?.along !== undefined) return checkFreeRunner(wishes);
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

/** A runner that lies in a hall with its ends free needs a width; a room only where it is placed in it. */
function checkFreeRunner(wishes: Wishes): Issue[] {
  const { site, overall, field } = wishes;
  const issues: Issue[] = [];
  const measured = measuredRoomOf(wishes);
  const isWide = overall?.across !== undefined || field?.size?.across !== undefined;
  if (!isWide && (measured || site?.openings === undefined))
    issues.push(
      missing(['overall', 'across'], 'a runner with free ends needs a width of its own', 'across: 30" to 34"'),
    );
  for (const key of ['end gap', 'site'] as const) {
    if (key === 'end gap' ? wishes[key] === undefined : site?.['run at sides'] === undefined) continue;
    const path = key === 'site' ? ['site', 'run at sides'] : [key];
    const says = `${path.join('.')} has no meaning for a runner with free ends; overall.along is its length`;
    issues.push(issue('job/not-here', path, says, 'site.run in place of overall.along, or leave it out'));
  }
  if (site?.room !== undefined && !measured)
    issues.push(
      issue('job/not-here', ['site', 'room'], 'a runner lies in a room told by its four walls', 'leave it out'),
    );
  issues.push(...checkRoom(wishes));
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
  const isRunner = wishes.surface === 'runner';
  if (site?.openings !== undefined && !Array.isArray(site.openings) && (measured || !isRunner))
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
    const told = (['openings', 'obstacles', 'axis'] as const).filter(
      (key) => site?.[key] !== undefined && (key !== 'openings' || Array.isArray(site.openings)),
    );
    if (told.length > 0)
      issues.push(
        issue(
          'job/missing',
          ['site', 'room'],
          `the four walls are missing, from which ${told.map((key) => `site.${key}`).join(' and ')} ${told.length > 1 ? 'are' : 'is'} measured`,
          WALLS_EXAMPLE,
        ),
      );
  }
  return issues;
}
