import { Resvg } from '@resvg/resvg-js';
import { piecesBox } from '../../../src/geometry/measure.ts';
import type { Piece } from '../../../src/geometry/path.ts';
import { pathText } from '../../../src/write/path.ts';

/** A pixel is 0.1 mm wide. */
const PER_MM = 10;
/** Room round the windows, mm. */
const ROOM = 8;

/** What is kept (1) and what is cut (0), as resvg paints it, in rows. */
export interface Raster {
  wide: number;
  high: number;
  kept: Uint8Array;
}

export function rasterOf(windows: Piece[]): Raster {
  const box = piecesBox(windows);
  const [left, top] = [box.left - ROOM, box.top - ROOM];
  const [across, along] = [Math.ceil(box.right + ROOM - left), Math.ceil(box.bottom + ROOM - top)];
  const paths = windows.map((piece) => `<path d="${pathText(piece)}"/>`).join('');
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${across * PER_MM}" height="${along * PER_MM}" viewBox="${left} ${top} ${across} ${along}"><rect x="${left}" y="${top}" width="${across}" height="${along}" fill="#fff"/>${paths}</svg>`;
  const { width: wide, height: high, pixels } = new Resvg(svg).render();
  return { wide, high, kept: Uint8Array.from({ length: wide * high }, (_, at) => (pixels[4 * at]! >= 128 ? 1 : 0)) };
}

/** Areas, mm², of the parts of the sheet that hang together edge to edge, the one with the frame first. */
export function partsOf({ wide, kept }: Raster): number[] {
  const left = kept.slice();
  const areas: number[] = [];
  for (let seed = 0; seed < left.length; seed++) {
    if (left[seed] === 0) continue;
    let count = 0;
    const stack = [seed];
    left[seed] = 0;
    while (stack.length > 0) {
      const at = stack.pop()!;
      count++;
      const x = at % wide;
      const enter = (next: number) => {
        if (left[next] !== 1) return;
        left[next] = 0;
        stack.push(next);
      };
      if (x > 0) enter(at - 1);
      if (x < wide - 1) enter(at + 1);
      // Beyond the first and the last row nothing is 1.
      enter(at - wide);
      enter(at + wide);
    }
    areas.push(count / PER_MM ** 2);
  }
  return areas;
}

/** The sheet less a rim of so many mm along every edge of what is kept. */
export function pared({ wide, high, kept }: Raster, by: number): Raster {
  const reach = by * PER_MM;
  const left = kept.slice();
  const cut = (x: number, y: number) => x >= 0 && y >= 0 && x < wide && y < high && kept[y * wide + x] === 0;
  for (let y = 0; y < high; y++) {
    for (let x = 0; x < wide; x++) {
      if (!cut(x, y) || (cut(x - 1, y) && cut(x + 1, y) && cut(x, y - 1) && cut(x, y + 1))) continue;
      for (let v = Math.ceil(-reach); v <= reach; v++) {
        const u = Math.floor(Math.sqrt(reach * reach - v * v));
        const row = y + v;
        if (row >= 0 && row < high)
          left.fill(0, row * wide + Math.max(0, x - u), row * wide + Math.min(wide, x + u + 1));
      }
    }
  }
  return { wide, high, kept: left };
}
