import { SOFT } from './ink.ts';
import type { Sketch } from './sketch.ts';
import { wrap } from './wrap.ts';

/** Readings one under the other, each with what it is the reading of. Returns where the list ends, mm of the page. */
export function drawCheckList(
  sketch: Sketch,
  { left, top, room }: { left: number; top: number; room: number },
  list: readonly { reading: string; says: string }[],
): number {
  const small = 0.84 * sketch.size;
  let y = top;
  for (const { reading, says } of list) {
    sketch.label(reading, [left, y], 'start');
    y += 5;
    for (const line of wrap(says, room - 4, (words) => sketch.width(words, small))) {
      sketch.label(line, [left + 4, y], 'start', { size: small, fill: SOFT });
      y += 4.4;
    }
    y += 1.6;
  }
  return y;
}
