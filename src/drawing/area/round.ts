import type { Point, Side } from '../../geometry/path.ts';

/** An arc of a circle as cubics of a quarter turn at most, from one angle on over a turn of either sense, radians. */
export function arcSides([x, y]: Point, radius: number, from: number, turn: number): Side[] {
  const count = Math.max(1, Math.ceil(Math.abs(turn) / (Math.PI / 2) - 1e-9));
  const step = turn / count;
  const k = (4 / 3) * Math.tan(step / 4);
  return Array.from({ length: count }, (_, i): Side => {
    const [a, b] = [from + i * step, from + (i + 1) * step];
    const at = (angle: number, aside: number): Point => [
      x + radius * (Math.cos(angle) - aside * Math.sin(angle)),
      y + radius * (Math.sin(angle) + aside * Math.cos(angle)),
    ];
    return { kind: 'curve', out: at(a, k), into: at(b, -k), to: at(b, 0) };
  });
}
