import { colourwaysOf } from '../../src/colour/ways.ts';
import { drawJob } from '../../src/pipeline.ts';
import { writeContactSheet } from '../../src/write/colourways/contact-sheet.ts';
import { renderPng } from '../../src/write/png.ts';
import { median, type Row } from './row.ts';

const COUNT = 12;
const LIMIT = 2000;
const RUNS = 5;
const COLOURS = ['bone', 'ink', 'rust'];

const job = `evenfield: 1
units: mm
surface: floor-cloth
overall: { across: 2500, along: 4000 }
field: { motif: eight-point-star, repeats: { across: 25, along: 40 }, stretch: 0.9 to 1.1 }
border: none
palette: { bone: '#efe8d6', ink: '#23303f', rust: '#a2492a' }
colourways: [${Array.from({ length: COUNT - 1 }, (_, at) => `{ name: Way ${at + 2}, colours: { field: ${COLOURS[at % 3]}, alternate: ${COLOURS[(at + 1) % 3]} } }`).join(', ')}]
`;

/** A contact sheet of twelve colourways of a thousand repeats, from the drawing to the picture. */
export async function bench(): Promise<Row[]> {
  const drawn = await drawJob(job, 'bench.job.yaml');
  if (!drawn.ok) throw new Error(JSON.stringify(drawn.issues));
  const { drawing } = drawn.value;
  const times: number[] = [];
  for (let run = 0; run < RUNS; run++) {
    const began = performance.now();
    const sheet = await writeContactSheet(drawing, drawn.value.job, colourwaysOf(drawing, drawn.value.job));
    await renderPng(sheet, 2000);
    times.push(performance.now() - began);
  }
  const ms = median(times);
  const row = `colourways: a sheet of ${COUNT} of 1,000 repeats, SVG and picture`;
  return [{ row, figure: `${ms.toFixed(0)} ms`, limit: `under ${LIMIT} ms`, holds: ms < LIMIT }];
}
