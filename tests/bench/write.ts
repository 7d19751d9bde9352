import checkerboard from '../../motifs/checkerboard.ts';
import diamond from '../../motifs/diamond.ts';
import star from '../../motifs/eight-point-star.ts';
import { compose } from '../../src/compose/compose.ts';
import type { Drawing } from '../../src/compose/drawing.ts';
import type { Motif } from '../../src/motif/motif.ts';
import { regionText } from '../../src/write/path.ts';
import { makeLayout } from '../support/layout.ts';
import { median, type Row } from './row.ts';

const LIMIT = 300;
const RUNS = 21;

const composeMany = (motif: Motif, count: number): Promise<Drawing> =>
  compose(
    makeLayout({ repeats: { across: count, along: count }, pitch: { across: 98.425, along: 103.1875 } }),
    {
      field: {
        settings: Object.fromEntries(Object.entries(motif.parameters).map(([name, one]) => [name, one.default])),
      },
      border: { settings: {}, corner: { settings: {} } },
    },
    { field: motif },
  );

/** Path text of whole fields, from the drawing to bytes ready for a file. */
export async function bench(): Promise<Row[]> {
  const rows: Row[] = [];
  for (const [motif, count] of [
    [star, 150],
    [diamond, 316],
    [checkerboard, 316],
  ] as const) {
    const { regions } = await composeMany(motif, count);
    const write = (): number =>
      regions.reduce((sum, { pieces, at }) => sum + Buffer.from(regionText(pieces, at), 'latin1').length, 0);
    for (let run = 0; run < 5; run++) write();
    const times: number[] = [];
    let bytes = 0;
    for (let run = 0; run < RUNS; run++) {
      const began = performance.now();
      bytes = write();
      times.push(performance.now() - began);
    }
    const speed = bytes / 1e6 / (median(times) / 1000);
    rows.push({
      row: `write: path text of ${(count * count).toLocaleString('en')} repeats of ${motif.name}`,
      figure: `${speed.toFixed(0)} MB/s (${(bytes / 1e6).toFixed(1)} MB)`,
      limit: `at least ${LIMIT} MB/s`,
      holds: speed >= LIMIT,
    });
  }
  return rows;
}
