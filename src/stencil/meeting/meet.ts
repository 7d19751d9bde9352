import type { Standing } from '../../compose/finish.ts';
import type { Drawn, Part } from '../../motif/motif.ts';
import type { Tools } from '../bridges/bridge-windows.ts';
import { gapped } from './gap.ts';
import { type Meeting, paintOrder } from './meeting.ts';
import { memberOf } from './neighbours.ts';
import { overlapped } from './overlap.ts';

/** Units that stand side by side, each as it is where colours meet as the job has them meet. */
export function meet(
  standing: Standing[],
  { way, by }: Meeting,
  colours: Record<Part, string>,
  tools: Tools,
): Drawn[][] {
  if (way === 'edge to edge' || by === 0) return standing.map(({ drawn }) => drawn);
  const members = standing.flatMap(({ drawn, at, every }) =>
    drawn.flatMap(({ part, pieces }) => pieces.map((piece) => memberOf(colours[part], piece, at, every))),
  );
  if (new Set(members.map(({ colour }) => colour)).size < 2) return standing.map(({ drawn }) => drawn);
  const found =
    way === 'gap'
      ? gapped(members, by, tools)
      : overlapped(members, by, paintOrder(colours), tools).map((piece) => [piece]);
  let at = 0;
  return standing.map(({ drawn }) =>
    drawn
      .map(({ part, pieces }): Drawn => ({ part, pieces: pieces.flatMap(() => found[at++]!) }))
      .filter(({ pieces }) => pieces.length > 0),
  );
}
