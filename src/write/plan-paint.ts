import type { Drawing } from '../compose/drawing.ts';
import type { Job } from '../job/job.ts';
import { formatMm } from './number.ts';
import { regionText } from './path.ts';
import { element } from './svg.ts';

/**
 * The painted floor alone: the ground, then one path a region. Regions of different parts do not overlap.
 * @param outline of the ground as path text, where it is not the whole box of the work
 */
export function paintGroup(drawing: Drawing, job: Pick<Job, 'palette' | 'colours'>, outline?: string): string {
  const { left, top, right, bottom } = drawing.work;
  const hex = (part: keyof Job['colours']) => job.palette[job.colours[part]]!;
  const ground =
    outline ?? `M${formatMm(left)} ${formatMm(top)}H${formatMm(right)}V${formatMm(bottom)}H${formatMm(left)}Z`;
  const regions = drawing.regions.map(({ element: of, part, pieces, fills, at }) =>
    element('path', {
      'data-element': fills ? `gap-${of}` : of,
      'data-part': part,
      fill: hex(part),
      d: regionText(pieces, at),
    }),
  );
  return element(
    'g',
    { id: 'paint' },
    [element('path', { id: 'ground', fill: hex('ground'), d: ground }), ...regions].join('\n'),
  );
}
