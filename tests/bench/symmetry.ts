import { allMotifs } from '../../src/motif/library.ts';
import { drawMotif } from '../../src/motif/record.ts';
import { fillSettings } from '../../src/motif/settings.ts';
import { friezeGroup } from '../../src/motif/symmetry/frieze.ts';
import { linesOf } from '../../src/motif/symmetry/lines.ts';
import { planeGroup } from '../../src/motif/symmetry/plane.ts';
import type { Row } from './row.ts';

const LIMIT = 2000;

/** The group and the lines of every motif at its own ratio, once and from a cold start, as a person meets it. */
export async function bench(): Promise<Row[]> {
  const drawings = allMotifs().map((motif) => {
    const settings = fillSettings(motif, {});
    if (!settings.ok) throw new Error(`${motif.name} refuses its own defaults`);
    const cell = { across: 300, along: motif.kind === 'border' ? 300 / motif.ratio : 300 * motif.ratio };
    return { motif, cell, drawn: drawMotif(motif, cell, settings.value) };
  });
  let operations = 0;
  let slowest = { name: '', ms: 0 };
  const start = performance.now();
  for (const { motif, cell, drawn } of drawings) {
    const began = performance.now();
    const found = motif.kind === 'border' ? friezeGroup(drawn, cell) : planeGroup(drawn, cell, motif.lattice);
    linesOf(drawn, cell, motif.lattice);
    operations += found.operations.length;
    const ms = performance.now() - began;
    if (ms > slowest.ms) slowest = { name: motif.name, ms };
  }
  const ms = performance.now() - start;
  return [
    {
      row: `symmetry: group and lines of all ${drawings.length} motifs`,
      figure: `${ms.toFixed(0)} ms, ${operations} operations; ${slowest.name} ${slowest.ms.toFixed(0)} ms`,
      limit: `under ${LIMIT} ms`,
      holds: ms < LIMIT,
    },
  ];
}
