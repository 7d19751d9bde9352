import { fileSet } from '../../../src/check/file-set.ts';
import { type Flooded, floodSheet } from '../../../src/check/measure/flood.ts';
import { readStencil } from '../../../src/check/read/stencil.ts';
import { piecesBox } from '../../../src/geometry/measure.ts';
import type { Piece } from '../../../src/geometry/path.ts';
import { writeStencil } from '../../../src/write/stencil.ts';
import { tidySvg } from '../../../src/write/tidy.ts';

/** What floods over pictures of the written sheet do not reach: nothing but the file is read. */
export async function floodedOf(windows: Piece[], bridge: number): Promise<Flooded> {
  const { left, top, right, bottom } = piecesBox(windows);
  const outline = { left: left - 20, top: top - 20, right: right + 20, bottom: bottom + 20 };
  const sheet = { file: 'stencil-ink-1.svg', colour: 'ink', says: 'one unit', outline, windows, keys: [], passes: [] };
  const written = new Map([[sheet.file, await tidySvg(writeStencil(sheet))]]);
  const read = fileSet(written).drawn(sheet.file, readStencil);
  if (!read.ok) throw new Error(read.says);
  return floodSheet(
    [...read.value.windows.values()].map(({ outlines }) => outlines),
    bridge,
  );
}
