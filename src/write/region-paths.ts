import type { Piece } from '../geometry/path.ts';
import { shortMicrons, toMicrons } from './number.ts';
import { placedText, ringTexts, rowWriter } from './path.ts';
import { type Attributes, element } from './svg.ts';

/** A region whose text would be longer than this, in characters, is written by stretches of its rows. */
const LONG = 256 * 1024;
/** Columns to a stretch. */
const STRETCH = 32;

/** Repeats side by side that are painted in several rows: their path at y = 0, and where it is used, µm. */
interface Stretch {
  xs: number[];
  ys: number[];
}

/** The placements of a region, row by row, each row cut where every 32nd column ends; stretches that are alike come once. */
function stretchesOf(at: Float64Array): Stretch[] {
  const rows = new Map<number, number[]>();
  const columns = new Set<number>();
  for (let i = 0; i < at.length; i += 2) {
    const [x, y] = [toMicrons(at[i]!), toMicrons(at[i + 1]!)];
    columns.add(x);
    const row = rows.get(y);
    if (row) row.push(x);
    else rows.set(y, [x]);
  }
  const order = new Map([...columns].sort((a, b) => a - b).map((x, n) => [x, Math.floor(n / STRETCH)]));
  const found = new Map<string, Stretch>();
  for (const [y, xs] of rows) {
    xs.sort((a, b) => a - b);
    for (let from = 0, to = 0; from < xs.length; from = to) {
      const stretch = order.get(xs[from]!)!;
      while (to < xs.length && order.get(xs[to]!) === stretch) to++;
      const own = xs.slice(from, to);
      const key = own.join(' ');
      const known = found.get(key);
      if (known) known.ys.push(y);
      else found.set(key, { xs: own, ys: [y] });
    }
  }
  return [...found.values()];
}

/**
 * A region as SVG. Usually one path; where that would be long, the paths of stretches of its rows, each written once and used in every row that
 * has it (SVG 1.1, 5.6). Every point is the same to the micrometre either way.
 * @param id begins the names of those paths; nothing else in the document may have it
 */
export function regionElements(id: string, attributes: Attributes, pieces: readonly Piece[], at: Float64Array): string {
  const rings = ringTexts(pieces);
  const length = rings.reduce((sum, { tail }) => sum + tail.length + 16, 0) * (at.length / 2);
  if (length <= LONG) return element('path', { ...attributes, d: placedText(rings, at) });
  const paths: string[] = [];
  const uses: string[] = [];
  const single: number[] = [];
  const row = rowWriter(rings);
  for (const { xs, ys } of stretchesOf(at)) {
    if (ys.length === 1) {
      for (const x of xs) single.push(x / 1000, ys[0]! / 1000);
      continue;
    }
    const name = `${id}-${paths.length + 1}`;
    paths.push(element('path', { id: name, d: row(xs, 0) }));
    for (const y of ys) uses.push(element('use', { 'xlink:href': `#${name}`, y: shortMicrons(y) }));
  }
  const alone =
    single.length > 0 ? [element('path', { ...attributes, d: placedText(rings, Float64Array.from(single)) })] : [];
  if (paths.length === 0) return alone.join('');
  const group = { ...attributes, 'xmlns:xlink': 'http://www.w3.org/1999/xlink' };
  return [element('g', group, ['', element('defs', {}, paths.join('\n')), ...uses, ''].join('\n')), ...alone].join(
    '\n',
  );
}
