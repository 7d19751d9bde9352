import { mitreCuts } from '../cloth/mitre.ts';
import type { ClothPlan } from '../cloth/plan.ts';
import type { Box, Point } from '../geometry/path.ts';
import type { Cloth, Size } from '../job/job.ts';
import { FAINT, INK, RED } from './ink.ts';
import type { Sketch } from './sketch.ts';

export const boxOf = ({ across, along }: Size): Box => ({
  left: -across / 2,
  top: -along / 2,
  right: across / 2,
  bottom: along / 2,
});

const dashes = (size: number, ...shares: number[]): string =>
  shares.map((share) => (share * size).toFixed(3)).join(' ');

/** The cloth from its cut edge inwards: where it is trimmed after priming, where the corners are cut off, where it is folded, its finished edge and its centre lines. */
export function drawCloth(sketch: Sketch, plan: ClothPlan, cloth: Cloth, ground: string): void {
  const { size } = sketch;
  const [finished, hemmed, cut] = [boxOf(plan.finished), boxOf(plan.hemmed), boxOf(plan.cut)];
  sketch.rectangle(cut, { 'data-line': 'cut', fill: '#fbf7ec', 'stroke-width': size * 0.1 });
  // With a hem, its fold lines draw the edge.
  const edge = cloth.hem > 0 ? { stroke: 'none' } : { 'stroke-width': size * 0.06 };
  sketch.rectangle(finished, { 'data-line': 'finished', fill: ground, ...edge });
  sketch.rectangle(hemmed, {
    'data-line': 'trimmed',
    fill: 'none',
    'stroke-dasharray': dashes(size, 0.7, 0.35),
    'stroke-width': size * 0.08,
  });
  if (cloth.hem > 0) {
    for (const [side, from, to] of folds(finished, hemmed))
      sketch.path([from, to], {
        'data-line': 'fold',
        'data-side': side,
        'stroke-dasharray': dashes(size, 1.1, 0.3, 0.15, 0.3),
        'stroke-width': size * 0.09,
      });
    if (cloth.corners === 'mitred') drawMitres(sketch, plan.finished, cloth.hem);
  }
  const centre = {
    'data-line': 'centre',
    stroke: RED,
    'stroke-dasharray': dashes(size, 1.5, 0.3, 0.25, 0.3),
    'stroke-width': size * 0.05,
  };
  sketch.path(
    [
      [0, cut.bottom],
      [0, cut.top],
    ],
    centre,
  );
  sketch.path(
    [
      [cut.left, 0],
      [cut.right, 0],
    ],
    centre,
  );
}

/** Every fold runs from trimmed edge to trimmed edge along the finished edge. */
const folds = (finished: Box, hemmed: Box): [side: string, from: Point, to: Point][] => [
  ['left', [finished.left, hemmed.bottom], [finished.left, hemmed.top]],
  ['right', [finished.right, hemmed.bottom], [finished.right, hemmed.top]],
  ['near', [hemmed.left, finished.bottom], [hemmed.right, finished.bottom]],
  ['far', [hemmed.left, finished.top], [hemmed.right, finished.top]],
];

/** What is cut away at the corners is hatched. */
function drawMitres(sketch: Sketch, finished: Size, hem: number): void {
  for (const [from, to] of mitreCuts(finished, hem)) {
    const side = Math.sign(from[0]);
    const corner: Point = [side * (finished.across / 2 + hem), Math.sign(from[1]) * (finished.along / 2 + hem)];
    const share = (a: Point, b: Point, t: number): Point => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];
    for (const t of [0.25, 0.5, 0.75])
      sketch.path([share(from, corner, t), share(to, corner, t)], {
        stroke: FAINT,
        'stroke-width': sketch.size * 0.04,
      });
    sketch.path([from, to], { 'data-line': 'mitre', stroke: INK, 'stroke-width': sketch.size * 0.1 });
  }
}

/** An arrow that shows which way the roll runs, beside the cloth. */
export function drawRollWay(sketch: Sketch, plan: ClothPlan, at: number): void {
  const { size } = sketch;
  const reach = 4 * size;
  const tip = 0.6 * size;
  const along = plan.way === 'along';
  const place = (on: number, off: number): Point => (along ? [at + off, on] : [on, at + off]);
  sketch.path([place(-reach, 0), place(reach, 0)]);
  for (const end of [-1, 1])
    sketch.path([place(end * (reach - tip), -tip / 2), place(end * reach, 0), place(end * (reach - tip), tip / 2)]);
  if (along) sketch.label('along the roll', [at + size, 0], 'middle', { turn: -Math.PI / 2, size: 0.85 * size });
  else sketch.label('along the roll', [0, at + size], 'middle', { size: 0.85 * size });
}
