import type { Issue } from '../issue.ts';
import { nearestName } from '../motif/nearest.ts';
import { shown } from '../units/index.ts';
import type { Wishes } from './shape/shape.ts';

/** The colourway that a preview shows is one of the job's; a flight of stairs has no one floor to lie on. */
export function checkPreview({ preview, colourways = [], surface }: Wishes): Issue[] {
  const issues: Issue[] = [];
  const names = colourways.map(({ name }) => name);
  const { colourway, photo } = preview ?? {};
  if (colourway !== undefined && !names.some((name) => name.toLowerCase() === colourway.trim().toLowerCase()))
    issues.push({
      code: 'job/colourway-unknown',
      path: ['preview', 'colourway'],
      says:
        names.length > 0
          ? `there is no colourway ${shown(colourway)}; the job has ${names.join(', ')}`
          : `there is no colourway ${shown(colourway)}; the job has none`,
      hint: nearestName(colourway, names) ?? names[0] ?? 'leave the line out, or name colourways under `colourways`',
    });
  if (photo && surface === 'stairs')
    issues.push({
      code: 'job/not-here',
      path: ['preview', 'photo'],
      says: 'the work is laid into a photo of one flat floor, and stairs have many',
      hint: 'leave photo out',
    });
  return issues;
}
