import { DRAWN } from '../claim.ts';
import type { FloorEntry, WallName } from '../read/floor.ts';
import type { LayoutNumbers } from '../read/layout.ts';
import { endsOf, met } from './floor-room.ts';

/** What a wall leaves of the last repeat, worked out from where the lines between repeats run. */
export interface MeasuredCut {
  centre: number;
  least: number;
  most: number;
  whole: boolean;
}

/** Lines between repeats (or their pieces, `each` to a repeat) on the way to a wall, from the centre line outwards, mm. */
export function linesTo(layout: LayoutNumbers, wall: WallName, each: number): number[] {
  const way = wall === 'left' || wall === 'right' ? 'across' : 'along';
  const back = wall === 'left' || wall === 'near' ? -1 : 1;
  const { field, pitch, phase } = layout;
  const unit = pitch[way] / each;
  const found: number[] = [];
  const first = -field[way] / 2 - phase[way] * pitch[way];
  for (let n = 0; n <= Math.ceil(field[way] / unit) + each && n < 100_000; n++) found.push(back * (first + n * unit));
  return found.filter((at) => at > -1e-6).sort((a, b) => a - b);
}

export function measureCut(layout: LayoutNumbers, floor: FloorEntry, wall: WallName, each: number): MeasuredCut {
  const ends = endsOf(floor.pattern, wall);
  const [least, most] = [Math.min(...ends), Math.max(...ends)];
  const lines = linesTo(layout, wall, each);
  const line = lines.filter((at) => at < least - DRAWN).at(-1) ?? Number.NaN;
  const next = lines.find((at) => at > line) ?? Infinity;
  const whole = Math.abs(least - next) <= DRAWN && Math.abs(most - next) <= DRAWN;
  return { centre: met(floor.pattern, wall).out - line, least: least - line, most: most - line, whole };
}
