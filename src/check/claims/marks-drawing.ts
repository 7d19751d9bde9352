import { type Claim, equal, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { reading } from '../read/read.ts';
import { readSvg } from '../read/svg.ts';

const FILE = 'marks.svg';

/** The drawing of the marks shows every reading of marks.csv. */
export default function marksDrawing(set: FileSet): Claim[] {
  const text = set.text(FILE);
  const svg = text.ok ? reading(() => readSvg(text.value)) : text;
  if (!svg.ok) return [unproven(FILE, 'the drawing of the marks can be read', svg.says)];
  const marks = set.marks();
  if (!marks.ok) return [unproven(FILE, 'the drawing shows every mark', marks.says)];
  const labels = svg.value.paths.flatMap((path) => path.attributes['data-label'] ?? []);
  const lacking = marks.value.find((row) => row.line !== 'check' && !labels.some((label) => label.includes(row.tape)));
  return [
    equal(FILE, 'the drawing shows every mark', lacking ? `not ${lacking.tape} of ${lacking.line}` : 'all', 'all'),
  ];
}
