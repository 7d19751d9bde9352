import type { Drawing, Region } from '../compose/drawing.ts';
import type { Job } from '../job/job.ts';
import { rectangleText } from './path.ts';
import { regionElements } from './region-paths.ts';
import { element } from './svg.ts';

type Colours = Pick<Job, 'palette' | 'colours'>;

/** The regions of some paint, each with what it is of. `id` begins the names of paths that are used again and again. */
export const paintRegions = (regions: readonly Region[], { palette, colours }: Colours, id: string): string[] =>
  regions.map(({ element: of, part, pieces, fills, at }, n) =>
    regionElements(
      `${id}-${n + 1}`,
      { 'data-element': fills ? `gap-${of}` : of, 'data-part': part, fill: palette[colours[part]]! },
      pieces,
      at,
    ),
  );

const written = new WeakMap<Drawing, { job: Colours; outline: string | undefined; group: string }>();

/**
 * The painted floor alone: the ground, then one path a region, or, for long ones, a group of paths and their uses. Regions of different parts do
 * not overlap. Written once, however many drawings of a job show it.
 * @param outline of the ground as path text, where it is not the whole box of the work
 */
export function paintGroup(drawing: Drawing, job: Colours, outline?: string): string {
  const known = written.get(drawing);
  if (known?.job === job && known.outline === outline) return known.group;
  const group = writeGroup(drawing, job, outline);
  written.set(drawing, { job, outline, group });
  return group;
}

function writeGroup(drawing: Drawing, job: Colours, outline?: string): string {
  const ground = outline ?? rectangleText(drawing.work);
  const regions = paintRegions(drawing.regions, job, 'paint');
  const fill = job.palette[job.colours.ground]!;
  return element('g', { id: 'paint' }, [element('path', { id: 'ground', fill, d: ground }), ...regions].join('\n'));
}
