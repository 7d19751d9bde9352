import type { Colourway } from '../../colour/ways.ts';
import type { Drawing } from '../../compose/drawing.ts';
import type { Job } from '../../job/job.ts';
import { loadLettering } from '../label.ts';
import { renderPng } from '../png.ts';
import { writeCloseViews } from './close.ts';
import { writeContactSheet } from './contact-sheet.ts';
import { sayNames, sheetNames } from './names.ts';
import { writeWaysPdf } from './ways-pdf.ts';

/** Long side of the pictures, in pixels. */
const PICTURE = 2000;

/** Every file of the colourways of a job, by name, and what there is to say of them in plain lines. */
export async function writeWaysFiles(
  drawing: Drawing,
  job: Job,
  ways: readonly Colourway[],
): Promise<{ files: Map<string, string | Uint8Array>; says: string[] }> {
  const sheet = await writeContactSheet(drawing, job, ways);
  const close = await writeCloseViews(drawing, job, ways);
  const names = ways.map(({ name }) => name);
  return {
    files: new Map<string, string | Uint8Array>([
      ['colourways.svg', sheet],
      ['colourways.png', await renderPng(sheet, PICTURE)],
      ['colourways-close.svg', close],
      ['colourways-close.png', await renderPng(close, PICTURE)],
      ['colourways.pdf', await writeWaysPdf(drawing, job, ways)],
    ]),
    says: sayNames(sheetNames(await loadLettering(), names, 'Colourway')),
  };
}
