import { atLeast, type Claim, equal, type Proof, stated, unproven } from '../claim.ts';
import type { FileSet, Sheet } from '../file-set.ts';
import { flat } from '../measure/flat.ts';
import { floodSheet } from '../measure/flood.ts';
import { leastGap, type Polygon } from '../measure/gap.ts';
import { BRIDGE_SLACK, lookAtKept } from '../measure/kept.ts';
import type { Opening } from '../read/stencil.ts';

/** Overlaps below this come from chords, not from the drawing, mm². */
const NO_AREA = 0.1;

export const proof: Proof = {
  claims: 'the kept sheet is one piece, also pared; no bridge or window too narrow; nothing overlaps',
  files: ['layout.json', 'stencil-*.svg'],
  method: 'clipping, and a flood over a picture of the sheet',
  tolerance: '0.1 mm² of overlap; pixels of 0.1 mm',
};

/** Every sheet holds together: nothing overlaps, nothing falls out, no bridge and no window is too narrow. */
export default async function stencilSound(set: FileSet): Promise<Claim[]> {
  const layout = set.layout();
  const claims: Claim[] = [];
  for (const sheet of set.sheets()) {
    if (layout.ok) claims.push(...(await sound(sheet, layout.value.job.bridge, layout.value.job.window)));
  }
  return claims;
}

async function sound({ entry: { file }, drawn }: Sheet, bridge: number, window: number): Promise<Claim[]> {
  if (!drawn.ok) return [unproven(file, 'the kept sheet is in one piece', drawn.says)];
  const polygons = ({ outlines }: Opening): Polygon[] =>
    outlines.map((outline) => ({ points: flat(outline), frame: outline.frame }));
  const windows = [...drawn.value.windows.values()].map(polygons);
  const keys = [...drawn.value.keys.values()].flatMap(polygons);
  const { x, y, width, height } = drawn.value.svg.view;
  const sheet = { left: x, top: y, right: x + width, bottom: y + height };
  const kept = await lookAtKept(sheet, windows, keys, bridge, window);
  const openings = [...drawn.value.windows.values(), ...drawn.value.keys.values()].map(({ outlines }) => outlines);
  const flooded = floodSheet(openings, bridge);
  const { gap } = leastGap([...windows.flat(), ...keys], 2 * bridge);
  const rim = Math.min(2 * bridge, ...[...windows.flat(), ...keys].map(({ frame }) => rimOf(frame, sheet)));
  return [
    stated(
      file,
      'no two windows overlap',
      kept.overlap <= NO_AREA,
      `${Math.max(0, kept.overlap).toFixed(2)} mm²`,
      `${NO_AREA} mm²`,
    ),
    equal(file, 'the kept sheet is in one piece', kept.pieces, 1),
    equal(file, 'the kept sheet stays in one piece when pared by half a bridge', kept.pared, 1),
    equal(file, 'a flood over a picture of the sheet leaves no part dry', flooded.loose, 0),
    equal(file, 'nor over one pared by nearly half a bridge', flooded.pared, 0),
    atLeast(file, 'no bridge is narrower than the least bridge', Math.min(gap, rim), bridge - BRIDGE_SLACK),
    equal(
      file,
      'no window is narrower than the least window',
      kept.narrow < 0 ? 'none' : `window-${kept.narrow + 1}`,
      'none',
    ),
  ];
}

type Frame = Polygon['frame'];
const rimOf = (frame: Frame, sheet: Frame): number =>
  Math.min(frame.left - sheet.left, frame.top - sheet.top, sheet.right - frame.right, sheet.bottom - frame.bottom);
