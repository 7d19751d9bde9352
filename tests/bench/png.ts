import { Resvg } from '@resvg/resvg-js';
import { PNG } from 'pngjs';
import star from '../../motifs/eight-point-star.ts';
import { compose } from '../../src/compose/compose.ts';
import { regionText } from '../../src/write/path.ts';
import { renderPng } from '../../src/write/png.ts';
import { makeLayout } from '../support/layout.ts';
import { median, type Row } from './row.ts';

const LONG_SIDE = 2400;
const LIMIT = 1;

/** A picture of a plan of 1,152 stars, beside the same picture drawn, read as pixels and packed by pngjs. */
export async function bench(): Promise<Row[]> {
  const settings = Object.fromEntries(Object.entries(star.parameters).map(([name, one]) => [name, one.default]));
  const { regions } = await compose(
    makeLayout({ repeats: { across: 24, along: 48 }, pitch: { across: 38, along: 39 } }),
    { field: { settings }, border: { settings: {}, corner: { settings: {} } } },
    { field: star },
  );
  const d = regions.map(({ pieces, at }) => regionText(pieces, at)).join('');
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="1000mm" height="2000mm" viewBox="0 0 1000 2000"><path d="${d}"/></svg>`;
  const times: [own: number, plain: number][] = [];
  for (let run = -1; run < 5; run++) {
    const began = performance.now();
    await renderPng(svg, LONG_SIDE);
    const between = performance.now();
    const { width, height, pixels } = new Resvg(svg, { fitTo: { mode: 'height', value: LONG_SIDE } }).render();
    const png = new PNG({ width, height });
    png.data = Buffer.from(pixels);
    PNG.sync.write(png);
    if (run >= 0) times.push([between - began, performance.now() - between]);
  }
  const [own, plain] = [median(times.map(([one]) => one)), median(times.map(([, other]) => other))];
  return [
    {
      row: 'png: a plan of 1,152 stars, 2,400 pixels high, beside resvg and pngjs',
      figure: `${(plain / own).toFixed(1)} × faster (${own.toFixed(0)} / ${plain.toFixed(0)} ms)`,
      limit: `at least ${LIMIT} ×`,
      holds: plain / own >= LIMIT,
    },
  ];
}
