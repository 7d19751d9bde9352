import { Resvg } from '@resvg/resvg-js';
import { cornerCount, isStraight, type Outline } from '../../../src/check/read/outline.ts';

const PER_MM = 10;
/** Parts below this are crumbs, mm². */
const CRUMB = 0.2;

function pathData(outlines: readonly Outline[]): string {
  return outlines
    .map((outline) => {
      const { corners, handles } = outline;
      const n = cornerCount(outline);
      let d = `M${corners[0]} ${corners[1]}`;
      for (let i = 0; i < n; i++) {
        const j = (i + 1) % n;
        const to = `${corners[2 * j]} ${corners[2 * j + 1]}`;
        d += isStraight(outline, i) ? `L${to}` : `C${handles.slice(4 * i, 4 * i + 4).join(' ')} ${to}`;
      }
      return `${d}Z`;
    })
    .join('');
}

/** How many parts of the film no flood over resvg's picture reaches: openings black on white, with a stroke of `stroke` mm round them. */
function dryParts(outlines: readonly Outline[], stroke: number, room: number): number {
  const frames = outlines.map(({ frame }) => frame);
  const [left, top] = [Math.min(...frames.map((f) => f.left)) - room, Math.min(...frames.map((f) => f.top)) - room];
  const width = Math.ceil((Math.max(...frames.map((f) => f.right)) + room - left) * PER_MM);
  const height = Math.ceil((Math.max(...frames.map((f) => f.bottom)) + room - top) * PER_MM);
  const view = `${left} ${top} ${width / PER_MM} ${height / PER_MM}`;
  const line = stroke > 0 ? ` stroke="#000" stroke-width="${stroke}" stroke-linejoin="round"` : '';
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="${view}"><rect x="${left}" y="${top}" width="100%" height="100%" fill="#fff"/><path d="${pathData(outlines)}" fill-rule="evenodd"${line}/></svg>`;
  const { pixels } = new Resvg(svg, { font: { loadSystemFonts: false } }).render();
  const isFilm = (at: number) => pixels[4 * at]! >= 128;
  const reached = new Uint8Array(width * height);
  const flood = (start: number): number => {
    const heap = [start];
    reached[start] = 1;
    let size = 0;
    while (heap.length > 0) {
      const at = heap.pop()!;
      size++;
      const x = at % width;
      for (const to of [x > 0 ? at - 1 : -1, x < width - 1 ? at + 1 : -1, at - width, at + width]) {
        if (to < 0 || to >= reached.length || reached[to] || !isFilm(to)) continue;
        reached[to] = 1;
        heap.push(to);
      }
    }
    return size;
  };
  for (let x = 0; x < width; x++)
    for (const at of [x, (height - 1) * width + x]) if (!reached[at] && isFilm(at)) flood(at);
  for (let y = 0; y < height; y++)
    for (const at of [y * width, y * width + width - 1]) if (!reached[at] && isFilm(at)) flood(at);
  let parts = 0;
  for (let at = 0; at < reached.length; at++)
    if (!reached[at] && isFilm(at) && flood(at) > CRUMB * PER_MM * PER_MM) parts++;
  return parts;
}

/** What `floodSheet` is to find, by pixels that resvg painted, ten to the millimetre. */
export const floodPicture = (openings: readonly (readonly Outline[])[], bridge: number) => ({
  loose: dryParts(openings.flat(), 0, 1.5 * bridge),
  pared: dryParts(openings.flat(), Math.max(0, bridge - 3 / PER_MM), 1.5 * bridge),
});
