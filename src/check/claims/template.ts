import { type Claim, DRAWN, equal, list, type Proof, stated, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { fieldOf } from '../measure/field.ts';
import { across, along, frameOf } from '../measure/frame.ts';
import { notched } from '../measure/notched.ts';
import { trueSize } from '../measure/true-size.ts';
import type { Template } from '../read/template.ts';

const FILE = 'template.svg';
const SAME = 'the template is one repeat of the plan';
/** Farther than this from the pieces of the plan, mm, it is another motif that is laid there. */
const ASTRAY = 0.6;

export const proof: Proof = {
  claims: 'true to size, one pitch each way, notches at the middles, one repeat of the plan',
  files: ['layout.json', 'plan.svg', 'template.svg'],
  method: 'outlines laid on the plan',
  tolerance: '0.05 mm',
};

/** The template for those who trace: true to size, and one repeat as the plan has it. */
export default async function template(set: FileSet): Promise<Claim[]> {
  const found = set.template();
  if (!found.ok) return [unproven(FILE, 'the template is true to size', found.says)];
  const { svg, outlines, open } = found.value;
  const claims = [
    trueSize(FILE, 'the template is true to size', svg),
    equal(FILE, 'every path of the template is closed', open === 0 ? 'all' : `${open} open`, 'all'),
  ];
  const [field, layout] = [await fieldOf(set), set.layout()];
  if (!field.ok) return [...claims, unproven(FILE, SAME, field.says)];
  if (!layout.ok) return [...claims, unproven(FILE, SAME, layout.says)];
  claims.push(...edges(found.value, layout.value.layout.pitch));
  if (outlines.length === 0) return [...claims, unproven(FILE, SAME, 'it holds no repeat')];
  const off = Math.min(Infinity, ...field.value.symmetry.lay(found.value, ASTRAY).map((place) => place.off));
  return [...claims, stated(FILE, SAME, off <= DRAWN, off, DRAWN)];
}

/** The edge of the repeat is one pitch each way, and the notches point at the middles of its four sides. */
function edges(template: Template, pitch: { across: number; along: number }): Claim[] {
  const { edges } = template;
  const frame = frameOf(edges.map((outline) => outline.frame));
  const size = [across(frame), along(frame)];
  const off = Math.max(Math.abs(size[0]! - pitch.across), Math.abs(size[1]! - pitch.along));
  return [
    stated(
      FILE,
      'the template is one pitch each way',
      edges.length === 1 && off <= DRAWN,
      list(size),
      `${list([pitch.across, pitch.along])}, to ${DRAWN}`,
    ),
    notched(FILE, template),
  ];
}
