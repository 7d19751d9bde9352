import type { Layout } from '../fit/layout.ts';
import type { Box } from '../geometry/path.ts';
import type { Job } from '../job/job.ts';
import { type Face, frontOf, paintedFaces } from './faces.ts';

/** One step of the flight with its panel, on the centre line of the flight: x 0 on the line, y down, 0 at the foot of the lowest step. Lengths in mm. */
export interface PlacedStep extends Face {
  outline: Box;
  panel: Box;
  /** Plain strips: at each side, below (in front, the nosing among it) and above (behind). */
  margins: { sides: number; below: number; above: number };
}

/** Every painted step of a job's flight, from the bottom up, one standing on the other. None for a job without stairs. */
export function placeFlight(job: Job, layout: Pick<Layout, 'work'>): PlacedStep[] {
  const { stairs } = job;
  if (!stairs) return [];
  const { across, along } = layout.work;
  let foot = 0;
  return paintedFaces(job.site.steps ?? [], stairs).map((face): PlacedStep => {
    const front = frontOf(face, stairs);
    const rest = face.along - front - along;
    const below = front + (stairs.stands === 'middle' ? rest / 2 : 0);
    const outline = { left: -face.across / 2, top: foot - face.along, right: face.across / 2, bottom: foot };
    const bottom = foot - below;
    foot -= face.along;
    return {
      ...face,
      outline,
      panel: { left: -across / 2, top: bottom - along, right: across / 2, bottom },
      margins: { sides: (face.across - across) / 2, below, above: face.along - along - below },
    };
  });
}
