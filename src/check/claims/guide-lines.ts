import { type Claim, equal, stated, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { fieldOf } from '../measure/field.ts';
import { guideLines, lineInside } from '../measure/guide-lines.ts';

const FILE = 'marks.csv';
const CLAIM = 'lines between repeats run between the pieces of the plan';

/** The lines that part the repeats, snapped through the marks, cut no piece of the field as it is drawn. */
export default function guides(set: FileSet): Claim[] {
  const [rows, plan, layout] = [set.marks(), set.plan(), set.layout()];
  if (!rows.ok) return [unproven(FILE, CLAIM, rows.says)];
  if (!plan.ok) return [unproven(FILE, CLAIM, plan.says)];
  if (!layout.ok) return [unproven(FILE, CLAIM, layout.says)];
  const between = rows.value.filter(
    (row) => /^between /.test(row.for) && /^(axis|across-left|across-right)$/.test(row.line),
  );
  const lines = guideLines(between, layout.value.layout);
  // The axis itself is a line between repeats only where a repeat ends on it.
  lines.x = lines.x.filter((x) => x !== 0);
  if (lines.x.length + lines.y.length === 0) return [equal(FILE, CLAIM, 'no lines', 'no lines')];
  const crossed = fieldOf(plan.value).pieces.filter(
    ({ outline: { frame } }) =>
      lineInside(lines.x, frame.left, frame.right) || lineInside(lines.y, frame.top, frame.bottom),
  ).length;
  const measured = `${lines.x.length + lines.y.length} lines cross ${crossed} pieces`;
  return [stated(FILE, CLAIM, crossed === 0, measured, 'no piece')];
}
