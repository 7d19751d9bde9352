import type { Issue } from '../../issue.ts';
import type { System } from '../../units/index.ts';
import type { Wishes } from '../shape/shape.ts';
import type { Path } from '../tree.ts';
import { borderOf, measuredRoomOf, reserveOf } from '../wishes.ts';

const issue = (code: string, path: Path, says: string, hint: string): Issue => ({ code, path, says, hint });

const notHere = (path: Path, why: string, instead: string): Issue =>
  issue('job/not-here', path, `${path.join('.')} has no meaning for a whole floor: ${why}`, instead);

const ROOM: Record<System, string> = {
  inch: `room: { near: 9' 1/4", right: 7' 1/2", far: 9' 5/8", left: 7', diagonals: { near-left to far-right: 11' 5 1/8" } }`,
  metric: 'room: { across: 2.74 m, along: 2.13 m }',
};

const BESIDE = 'only in a room told by its four walls can it be placed';

/** What a whole floor needs, and what has no meaning for it. */
export function checkFloor(wishes: Wishes, system: System): Issue[] {
  const { site, overall, field } = wishes;
  const issues: Issue[] = [];
  if (site?.room === undefined)
    issues.push(issue('job/missing', ['site', 'room'], 'a whole floor needs its room, wall to wall', ROOM[system]));
  else if (!measuredRoomOf(wishes))
    for (const key of ['openings', 'obstacles', 'axis'] as const)
      if (site[key] !== undefined)
        issues.push(issue('job/missing', ['site', 'room'], `site.${key}: ${BESIDE}`, ROOM.inch));
  if (measuredRoomOf(wishes) && site?.openings !== undefined && !Array.isArray(site.openings))
    issues.push(
      issue(
        'job/openings',
        ['site', 'openings'],
        'in a room of four walls each opening is told by its casing, from a corner; here stands a width alone',
        'openings: [{ wall: near, starts: 40", ends: 72 1/2" }]',
      ),
    );
  for (const key of ['run', 'run at sides'] as const)
    if (site?.[key] !== undefined)
      issues.push(notHere(['site', key], 'it is measured from wall to wall', 'site.room, or surface: runner'));
  if (overall !== undefined)
    issues.push(notHere(['overall'], 'it is as large as its room', 'leave it out, or surface: rug'));
  if (field?.size !== undefined)
    issues.push(
      notHere(
        ['field', 'size'],
        'the pattern goes on to the walls',
        'leave it out; `reserve` leaves a plain strip at the walls',
      ),
    );
  if (field?.landing !== undefined)
    issues.push(
      notHere(['field', 'landing'], 'its edges are cut where the walls are, at half a repeat or more', 'leave it out'),
    );
  if (wishes['end gap'] !== undefined)
    issues.push(notHere(['end gap'], 'it has no ends', '`reserve` leaves a plain strip at the walls'));
  const border = borderOf(wishes).motif;
  if (border !== undefined && border.name !== 'none')
    issues.push(
      notHere(
        ['border'],
        'its pattern goes on to the walls',
        'border: none; surface: rug has a border round it, surface: room-border one along the walls',
      ),
    );
  if (wishes['inner border'] !== undefined)
    issues.push(notHere(['inner border'], 'it has no border', 'leave it out, or surface: rug'));
  if (wishes.lettering !== undefined)
    issues.push(notHere(['lettering'], 'it is laid from the middle out, where lettering would stand', 'surface: rug'));
  const { across, along } = reserveOf(wishes);
  if ([across, along].some((strip) => strip && strip.to - strip.from > 1e-9))
    issues.push(
      issue(
        'job/strip',
        ['reserve'],
        'the plain strip at the walls is one width, since the cuts are balanced on what it leaves',
        system === 'inch' ? 'reserve: 1"' : 'reserve: 25 mm',
      ),
    );
  return issues;
}
