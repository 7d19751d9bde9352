import { good, type Result } from '../issue.ts';
import type { Job, Range, Stairs, Step } from '../job/job.ts';
import { facesOf, paintedFaces } from '../stairs/faces.ts';
import { isMisfit, panelRoom } from '../stairs/room.ts';
import { writeLength } from '../units/index.ts';
import type { Site } from './site.ts';

/** A flight of stairs: one panel that fits on every step. The steps have been found to agree when the job was read. */
export function stairsSite(job: Job): Result<Site> {
  const { stairs, site } = job;
  if (!stairs || !site.steps) throw new Error('a flight without its steps');
  const across = roomFor(site.steps, 'across', stairs, job.overall.across);
  const along = roomFor(site.steps, 'along', stairs);
  return good({
    surface: 'stairs',
    across: { size: across },
    along: { size: along },
    notes: notes(job, site.steps, stairs),
  });
}

/** The sizes that the panel may have, within those that the job has for it. */
function roomFor(steps: Step[], way: 'across' | 'along', stairs: Stairs, told?: Range): Range {
  const room = panelRoom(steps, way, stairs);
  if (isMisfit(room)) throw new Error(`no panel fits on step ${room.face.step}`);
  if (!told) return room;
  const [from, to] = [Math.max(room.from, told.from), Math.min(room.to, told.to)];
  const wish = told.wish ?? to;
  return { from, to, wish: Math.min(to, Math.max(from, wish)) };
}

function notes(job: Job, steps: Step[], stairs: Stairs): string[] {
  const length = (mm: number) => writeLength(mm, job.units, job.step);
  const faces = paintedFaces(steps, stairs);
  const span = (way: 'across' | 'along') => {
    const all = faces.map((face) => face[way]);
    const [least, most] = [Math.min(...all), Math.max(...all)].map(length);
    return least === most ? least! : `${least} to ${most}`;
  };
  const high = stairs.painted === 'risers' ? 'high' : 'deep';
  const count = `${faces.length} ${faces.length === 1 ? stairs.painted.slice(0, -1) : stairs.painted}`;
  const same =
    'One panel, the same on all of them, stands on the centre line of the flight; what a step has more is left plain, evenly at both sides.';
  const both = facesOf(steps, 'riser').length > 0 && facesOf(steps, 'tread').length > 0;
  return [
    `${count}, ${span('across')} wide and ${span('along')} ${high}. ${same}`,
    ...(both && stairs.painted === 'treads'
      ? ['The treads take the count and the pitch across of the risers, so that the two patterns run on in line.']
      : []),
  ];
}
