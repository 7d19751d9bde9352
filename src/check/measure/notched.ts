import { type Claim, DRAWN, stated } from '../claim.ts';
import type { Template } from '../read/template.ts';
import { Corners } from './corners.ts';
import { centre } from './finder.ts';
import { frameOf } from './frame.ts';

/** The notches of a template point at the middles of the four sides of its one edge. */
export function notched(file: string, { edges, notches }: Pick<Template, 'edges' | 'notches'>): Claim {
  const frame = frameOf(edges.map((outline) => outline.frame));
  const [x, y] = centre(frame);
  const middles = [
    [x, frame.top],
    [x, frame.bottom],
    [frame.left, y],
    [frame.right, y],
  ] as const;
  const points = new Corners(notches);
  const met = middles.filter(([u, v]) => edges.length === 1 && points.at(u, v, DRAWN).length > 0).length;
  return stated(
    file,
    'notches point at the middles of its sides',
    met === 4 && notches.length === 4,
    `${met} of ${notches.length}`,
    '4 of 4',
  );
}
