import { type Claim, DRAWN, equal, type Proof, stated, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { fromBoundary } from '../measure/edges.ts';
import { type Field, fieldOf } from '../measure/field.ts';
import { guideLines, lineInside } from '../measure/guide-lines.ts';
import type { Way } from '../measure/symmetry.ts';
import type { LayoutNumbers } from '../read/layout.ts';

const FILE = 'marks.csv';
const CLAIM = 'lines between repeats run where repeats of the plan meet';

export const proof: Proof = {
  claims: 'lines snapped through the marks run where repeats meet and cut no piece',
  files: ['layout.json', 'marks.csv', 'plan.svg', 'template.svg'],
  method: 'lines of marks.csv laid over the outlines of the plan',
  tolerance: '0.05 mm',
};

/** The lines that part the repeats, snapped through the marks, run where two repeats meet as they are drawn, or cut no piece. */
export default async function guides(set: FileSet): Promise<Claim[]> {
  const [rows, field, layout] = [set.marks(), await fieldOf(set), set.layout()];
  if (!rows.ok) return [unproven(FILE, CLAIM, rows.says)];
  if (!field.ok) return [unproven(FILE, CLAIM, field.says)];
  if (!layout.ok) return [unproven(FILE, CLAIM, layout.says)];
  const between = rows.value.filter(
    (row) => /^between /.test(row.for) && /^(axis|along-near|along-far|across-left|across-right)$/.test(row.line),
  );
  const lines = guideLines(between, layout.value.layout);
  // The axis itself is a line between repeats only where a repeat ends on it.
  lines.x = lines.x.filter((x) => x !== 0);
  // Nor is the centre line across a floor.
  if (layout.value.floor) lines.y = lines.y.filter((y) => y !== 0);
  const all = lines.x.length + lines.y.length;
  if (all === 0) return [equal(FILE, CLAIM, 'no lines', 'no lines')];
  const numbers = layout.value.layout;
  const astray = [
    ...lines.x.filter((x) => !parts(field.value, numbers, 'across', x)),
    ...lines.y.filter((y) => !parts(field.value, numbers, 'along', y)),
  ].length;
  return [stated(FILE, CLAIM, astray === 0, `${all - astray} of ${all} lines`, `all, to ${DRAWN} mm`)];
}

function parts(field: Field, numbers: LayoutNumbers, way: Way, at: number): boolean {
  if (fromBoundary(field, numbers, way, at) <= DRAWN) return true;
  return field.pieces.every(({ outline: { frame } }) =>
    way === 'across' ? !lineInside([at], frame.left, frame.right) : !lineInside([at], frame.top, frame.bottom),
  );
}
