import svgpath from 'svgpath';
import type { Point, Ring, Side } from '../../src/geometry/path.ts';

/** SVG path text as rings, read by svgpath; throws where svgpath finds fault. Knows lines, cubics and closing only. */
export function readRings(text: string): Ring[] {
  const rings: { start: Point; sides: Side[] }[] = [];
  const path = svgpath(text);
  const { err } = path as unknown as { err: string };
  if (err) throw new Error(err);
  let closed = true;
  path
    .abs()
    .unshort()
    .iterate((segment, _index, x, y) => {
      const [letter, ...n] = segment as [string, ...number[]];
      const sides = rings[rings.length - 1]?.sides;
      switch (letter) {
        case 'M':
          if (!closed) throw new Error('a ring is left open');
          closed = false;
          rings.push({ start: [n[0]!, n[1]!], sides: [] });
          break;
        case 'L':
          sides!.push({ kind: 'line', to: [n[0]!, n[1]!] });
          break;
        case 'H':
          sides!.push({ kind: 'line', to: [n[0]!, y] });
          break;
        case 'V':
          sides!.push({ kind: 'line', to: [x, n[0]!] });
          break;
        case 'C':
          sides!.push({ kind: 'curve', out: [n[0]!, n[1]!], into: [n[2]!, n[3]!], to: [n[4]!, n[5]!] });
          break;
        case 'Z':
          closed = true;
          break;
        default:
          throw new Error(`unexpected ${letter}`);
      }
    });
  if (!closed) throw new Error('the last ring is left open');
  return rings;
}
