import checkerboard from '../../motifs/checkerboard.ts';
import diamond from '../../motifs/diamond.ts';
import star from '../../motifs/eight-point-star.ts';
import { compose } from '../../src/compose/compose.ts';
import type { Region } from '../../src/compose/drawing.ts';
import type { Motif } from '../../src/motif/motif.ts';
import { pathText, regionText } from '../../src/write/path.ts';
import { makeLayout } from '../support/layout.ts';
import { median, type Row } from './row.ts';

const LIMIT = 300;
const TIMES_FASTER = 4;
const RUNS = 21;

async function regionsOf(motif: Motif, count: number): Promise<Region[]> {
  const settings = Object.fromEntries(Object.entries(motif.parameters).map(([name, one]) => [name, one.default]));
  const { regions } = await compose(
    makeLayout({ repeats: { across: count, along: count }, pitch: { across: 98.425, along: 103.1875 } }),
    { field: { settings }, border: { settings: {}, corner: { settings: {} } } },
    { field: motif },
  );
  return regions;
}

/** Bytes ready for a file: nothing is left to be put together later. */
const bytesOf = (text: string): number => Buffer.from(text, 'latin1').length;

const written = (regions: Region[]): number =>
  regions.reduce((sum, { pieces, at }) => sum + bytesOf(regionText(pieces, at)), 0);

/** The plain way: every number of every placement formatted anew. */
function writtenPlainly(regions: Region[]): number {
  let bytes = 0;
  for (const { pieces, at } of regions) {
    let text = '';
    for (let i = 0; i < at.length; i += 2) for (const piece of pieces) text += pathText(piece, [at[i]!, at[i + 1]!]);
    bytes += bytesOf(text);
  }
  return bytes;
}

/** Bytes written and the median of the milliseconds that took, the first few runs left out. */
function timed(runs: number, work: () => number): { bytes: number; ms: number } {
  const times: number[] = [];
  let bytes = 0;
  for (let run = -3; run < runs; run++) {
    const began = performance.now();
    bytes = work();
    if (run >= 0) times.push(performance.now() - began);
  }
  return { bytes, ms: median(times) };
}

const speed = ({ bytes, ms }: { bytes: number; ms: number }): number => bytes / 1000 / ms;

/** Path text of whole fields, from the drawing to bytes, and the same beside formatting every number of every placement. */
export async function bench(): Promise<Row[]> {
  const fields = [
    ['stars', await regionsOf(star, 150)],
    ['diamonds', await regionsOf(diamond, 316)],
    ['squares', await regionsOf(checkerboard, 316)],
  ] as const;
  const [whole, ...shorter] = fields.map(([name, regions]) => ({ name, ...timed(RUNS, () => written(regions)) }));

  const stars = fields[0][1];
  const quick = timed(7, () => written(stars));
  const plain = timed(3, () => writtenPlainly(stars));
  const ratio = plain.ms / plain.bytes / (quick.ms / quick.bytes);
  return [
    {
      row: 'write: path text of 22,500 stars',
      figure: `${speed(whole!).toFixed(0)} MB/s (${shorter.map((one) => `${one.name} ${speed(one).toFixed(0)}`).join(', ')})`,
      limit: `at least ${LIMIT} MB/s`,
      holds: speed(whole!) >= LIMIT,
    },
    {
      row: 'write: a byte of stars beside formatting every number anew',
      figure: `${ratio.toFixed(1)} × (${speed(quick).toFixed(0)} / ${speed(plain).toFixed(0)} MB/s)`,
      limit: `at least ${TIMES_FASTER} ×`,
      holds: ratio >= TIMES_FASTER,
    },
  ];
}
