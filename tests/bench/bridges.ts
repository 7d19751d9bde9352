import type { Piece } from '../../src/geometry/path.ts';
import { circle, rectangle } from '../../src/motif/shapes.ts';
import { bridgeWindows } from '../../src/stencil/bridges/bridge-windows.ts';
import { drawn, letter, rings, star } from '../stencil/bridges/shapes.ts';
import { median, type Row } from './row.ts';

const RUNS = 7;

async function timed(windows: Piece[], style: 'motif' | 'letter'): Promise<{ ms: number; bridges: number }> {
  const times: number[] = [];
  let bridges = 0;
  for (let run = 0; run < RUNS; run++) {
    const start = performance.now();
    bridges += (await bridgeWindows(windows, { bridge: 2, window: 1, style })).bridges.length;
    times.push(performance.now() - start);
  }
  return { ms: median(times), bridges: bridges / RUNS };
}

/** Bridges for one sheet unit: islands found, bridges chosen, cut and proved. */
export async function bench(): Promise<Row[]> {
  const net = drawn((pen) => {
    rectangle(pen, 0, 0, 100, 100);
    for (let n = 0; n < 16; n++) rectangle(pen, 24 * (n % 4) - 36, 24 * Math.floor(n / 4) - 36, 20, 20);
  });
  const units: [string, Piece[], 'motif' | 'letter', number][] = [
    ['ring', rings(0, 0, 30, 20), 'motif', 250],
    ['star of 8 in a disc', drawn((pen) => [circle(pen, 0, 0, 40), star(pen, 0, 0, 8, 30, 15)]), 'motif', 250],
    ['net of 16 squares', net, 'motif', 600],
    ['letter B, Libre Baskerville', await letter('Libre Baskerville', 'B', 80), 'letter', 150],
    ['letter 8, Barlow', await letter('Barlow', '8', 80), 'letter', 150],
  ];
  const rows: Row[] = [];
  for (const [name, windows, style, most] of units) {
    const { ms, bridges } = await timed(windows, style);
    rows.push({
      row: `bridges: ${name}`,
      figure: `${ms.toFixed(0)} ms, ${bridges} bridges`,
      limit: `under ${most} ms`,
      holds: ms < most,
    });
  }
  return rows;
}
