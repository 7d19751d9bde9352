import { PDFDocument, PDFName } from '@cantoo/pdf-lib';
import star from '../../motifs/eight-point-star.ts';
import { compose } from '../../src/compose/compose.ts';
import type { Drawing } from '../../src/compose/drawing.ts';
import type { Job } from '../../src/job/job.ts';
import { lookText, matrixText, ringText } from '../../src/write/tiles/operators.ts';
import { pagesOf } from '../../src/write/tiles/pages.ts';
import { layersOf, type Printed } from '../../src/write/tiles/pages-drawn.ts';
import { UNITS_PER_MM } from '../../src/write/tiles/pdf-surface.ts';
import { writeTiles } from '../../src/write/tiles/tiles-pdf.ts';
import { tilesOf } from '../../src/write/tiles/tiling.ts';
import { makeLayout } from '../support/layout.ts';
import { median, type Row } from './row.ts';

const LIMIT = 2000;
const TIMES_FASTER = 10;
const PAGES = 40;

/** A plan of stars that takes 5 by 8 pages of letter paper. */
async function printed(): Promise<Printed> {
  const settings = Object.fromEntries(Object.entries(star.parameters).map(([name, one]) => [name, one.default]));
  const layout = makeLayout({ repeats: { across: 24, along: 48 }, pitch: { across: 38, along: 39 } });
  const drawing: Drawing = await compose(
    layout,
    { field: { settings }, border: { settings: {}, corner: { settings: {} } } },
    { field: star },
  );
  const print: Job['print'] = { paper: 'letter', overlap: 12.7, sheets: true, plan: true, tiles: 'pdf', measured: 254 };
  return { job: { title: 'Stars', units: 'in', system: 'inch', print } as Job, layout, drawing, sheets: [] };
}

/** The plain way: every page draws every outline of the plan anew. */
async function writtenPlainly(one: Printed): Promise<number> {
  const pages = pagesOf(one.job, one.layout, one.sheets)!;
  const [spread] = pages.spreads;
  const [layers] = layersOf(pages, one);
  const file = await PDFDocument.create({ updateMetadata: false });
  for (const tile of tilesOf(spread!.tiling)) {
    const { node } = file.addPage([612, 792]);
    const lines = [matrixText(UNITS_PER_MM, -tile.box.left * UNITS_PER_MM, 792 + tile.box.top * UNITS_PER_MM, true)];
    for (const { look, regions } of layers!) {
      lines.push(lookText(look));
      for (const { pieces, at } of regions)
        for (let n = 0; n < at.length; n += 2)
          for (const ring of pieces.flat()) lines.push(ringText(ring, true, [at[n]!, at[n + 1]!]));
      lines.push('S');
    }
    node.set(PDFName.of('Contents'), file.context.register(file.context.flateStream(lines.join('\n'))));
  }
  return (await file.save({ useObjectStreams: false, addDefaultPage: false })).length;
}

async function timed(runs: number, work: () => Promise<number>): Promise<{ bytes: number; ms: number }> {
  const times: number[] = [];
  let bytes = 0;
  for (let run = -1; run < runs; run++) {
    const began = performance.now();
    bytes = await work();
    if (run >= 0) times.push(performance.now() - began);
  }
  return { bytes, ms: median(times) };
}

/** Pages over which a plan is printed, and the same beside drawing every outline on every page. */
export async function bench(): Promise<Row[]> {
  const one = await printed();
  const { tiling } = pagesOf(one.job, one.layout, one.sheets)!.spreads[0]!;
  const count = tiling.rows * tiling.columns;
  const quick = await timed(7, async () => (await writeTiles(one))!.length);
  const plain = await timed(2, () => writtenPlainly(one));
  return [
    {
      row: `tiles: ${count} pages of a plan of 1,152 stars`,
      figure: `${quick.ms.toFixed(0)} ms, ${(quick.bytes / 1000).toFixed(0)} kB`,
      limit: `${LIMIT} ms, ${PAGES} pages`,
      holds: quick.ms <= LIMIT && count === PAGES,
    },
    {
      row: 'tiles: the same beside every outline drawn on every page',
      figure: `${(plain.ms / quick.ms).toFixed(1)} × faster, ${(plain.bytes / quick.bytes).toFixed(0)} × smaller`,
      limit: `at least ${TIMES_FASTER} ×`,
      holds: plain.ms / quick.ms >= TIMES_FASTER && plain.bytes / quick.bytes >= TIMES_FASTER,
    },
  ];
}
