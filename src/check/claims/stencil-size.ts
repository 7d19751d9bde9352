import { type Claim, equal, type Proof, stated, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { frameOf, outside } from '../measure/frame.ts';
import { trueSize } from '../measure/true-size.ts';

export const proof: Proof = {
  claims: 'every sheet true to size, paths closed and on it, as many windows and keys as listed',
  files: ['layout.json', 'stencil-*.svg'],
  method: 'width, height and viewBox; counts',
  tolerance: '0.05 mm',
};

/** Every sheet is drawn true to size, with closed paths that lie on it, as many as layout.json lists. */
export default function stencilSize(set: FileSet): Claim[] {
  return set.sheets().flatMap(({ entry, drawn }): Claim[] => {
    const { file } = entry;
    if (!drawn.ok) return [unproven(file, 'the sheet is true to size', drawn.says)];
    const { svg, windows, keys, open } = drawn.value;
    const { x, y, width, height } = svg.view;
    const frame = { left: x, top: y, right: x + width, bottom: y + height };
    const openings = [...windows.values(), ...keys.values()];
    const out = outside(frameOf(openings.flatMap((one) => one.outlines.map((outline) => outline.frame))), frame);
    const least = Math.min(
      ...openings.map((one) =>
        one.outlines.length === 0 ? 0 : Math.min(...one.outlines.map((o) => Math.abs(o.area))),
      ),
    );
    return [
      trueSize(file, 'the sheet is true to size', svg),
      equal(file, 'the sheet begins at its own corner', `${x}, ${y}`, '0, 0'),
      equal(file, 'every path of the sheet is closed', open === 0 ? 'all' : `${open} open`, 'all'),
      equal(file, 'the sheet is drawn with paths only', svg.strangers.join(', ') || 'paths', 'paths'),
      equal(
        file,
        'the sheet has its windows',
        numbers(windows),
        entry.windows === 0 ? 'none' : `1 to ${entry.windows}`,
      ),
      equal(file, 'the sheet has its keys', numbers(keys), entry.keys === 0 ? 'none' : `1 to ${entry.keys}`),
      stated(file, 'windows and keys lie on the sheet', out <= 0, Math.max(out, 0), 0),
      stated(file, 'windows and keys are open', least > 0, least, 'above 0 mm²'),
    ];
  });
}

/** `1 to 12`, or the first number that is missing. */
function numbers(openings: ReadonlyMap<number, unknown>): string {
  if (openings.size === 0) return 'none';
  for (let number = 1; number <= openings.size; number++)
    if (!openings.has(number)) return `${openings.size}, without number ${number}`;
  return `1 to ${openings.size}`;
}
