import type { Schedule } from '../../marks/schedule.ts';
import type { RoomOutline } from '../../site/walls-outline.ts';
import { drawCheckList } from '../check-list.ts';
import { linesText } from '../path.ts';
import type { Sketch } from '../sketch.ts';
import { element } from '../svg.ts';
import { outlineBeyond } from './ground.ts';

const TALL = 92;

/** The room with its corners numbered, and the list of its checks. Returns where it ends, mm of the page. */
export function drawRoomChecks(
  sketch: Sketch,
  outline: RoomOutline,
  { checks }: Schedule,
  { left, top, room }: { left: number; top: number; room: number },
  tape: (mm: number) => string,
): number {
  const { box, walls } = outline;
  const scale = Math.max((box.bottom - box.top) / TALL, (box.right - box.left) / (room - 14));
  const [middle, centre] = [left + room / 2, top + (box.bottom - box.top) / scale / 2];
  const at = ([x, y]: readonly [number, number]): [number, number] => [middle + x / scale, centre + y / scale];
  const corners = outlineBeyond(outline, 0).map(at);
  sketch.add(element('path', { d: linesText(corners, true), fill: '#fbf7ee', 'stroke-width': 0.35 }), ...corners);
  // A corner is called after the wall that ends there.
  outlineBeyond(outline, -3.4 * scale).forEach((point, wall) => {
    sketch.label(`${wall === 0 ? walls.length : wall}`, at(point), 'middle', { size: 0.84 * sketch.size });
  });
  const below = top + (box.bottom - box.top) / scale + 6;
  const list = checks.map(({ reads, says }) => ({ reading: tape(reads), says }));
  return drawCheckList(sketch, { left, top: below, room }, list);
}
