import type { Point } from '../../geometry/path.ts';

/** Numbers that each command takes (SVG 1.1, section 8.3). */
const TAKES: Record<string, number> = { M: 2, L: 2, H: 1, V: 1, C: 6, S: 4, Q: 4, T: 2, A: 7, Z: 0 };
const NUMBER = /\s*,?\s*([+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?)/iy;
const FLAG = /\s*,?\s*([01])/y;

/** Where the sides of a path begin and end, and the middles of its straight ones: what is measured from. What cannot be read ends it. */
export function pathPoints(d: string): Point[] {
  const found: Point[] = [];
  let [at, start]: [Point, Point] = [
    [0, 0],
    [0, 0],
  ];
  const lineTo = (to: Point): void => {
    if (to[0] !== at[0] || to[1] !== at[1]) found.push([(at[0] + to[0]) / 2, (at[1] + to[1]) / 2]);
  };
  for (const [, letter, text] of d.matchAll(/([MLHVCSQTAZ])([^MLHVCSQTAZ]*)/gi)) {
    const name = letter!.toUpperCase();
    const many = TAKES[name]!;
    if (name === 'Z') {
      lineTo(start);
      at = start;
      continue;
    }
    let [read, from] = [0, 0];
    for (;;) {
      const values: number[] = [];
      while (values.length < many) {
        const one = name === 'A' && (values.length === 3 || values.length === 4) ? FLAG : NUMBER;
        one.lastIndex = from;
        const number = one.exec(text!);
        if (!number) break;
        from = one.lastIndex;
        values.push(Number(number[1]));
      }
      if (values.length < many) break;
      const [ox, oy] = letter === name ? [0, 0] : at;
      const [x, y] = [values.at(-2)!, values.at(-1)!];
      const to: Point = name === 'H' ? [y + ox, at[1]] : name === 'V' ? [at[0], y + oy] : [x + ox, y + oy];
      const isMove = name === 'M' && read === 0;
      if (isMove) start = to;
      else if ('MLHV'.includes(name)) lineTo(to);
      found.push(to);
      at = to;
      read += 1;
    }
  }
  return found;
}
