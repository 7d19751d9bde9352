import { type Claim, equal, type Proof, stated, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { lookAtAlternate } from '../measure/alternating.ts';
import { fieldOf } from '../measure/field.ts';

const FILE = 'plan.svg';
const WHERE = { row: 'in every second row', column: 'in every second column', checker: 'in turn both ways' };

export const proof: Proof = {
  claims: 'every second repeat is another just where the layout says so; colours exchanged there',
  files: ['layout.json', 'plan.svg', 'template.svg'],
  method: 'pieces of one repeat compared with the template, place by place',
  tolerance: '0.05 mm',
};

/** Every second repeat is another where the layout says so, and only there. */
export default async function alternate(set: FileSet): Promise<Claim[]> {
  const [field, layout, template] = [await fieldOf(set), set.layout(), set.template()];
  const claim = 'every repeat is as the layout says';
  if (!field.ok) return [unproven(FILE, claim, field.says)];
  if (!layout.ok) return [unproven(FILE, claim, layout.says)];
  if (!template.ok) return [unproven(FILE, claim, template.says)];
  const { alternation } = layout.value;
  if (!alternation) {
    const { count, lost, odd } = field.value.repeating;
    const other = lost.length + odd.length;
    const measured = `${count} pieces of one repeat, ${other} of another`;
    return [stated(FILE, 'all repeats are alike', count > 0 && other === 0, measured, 'none of another')];
  }
  const { laid, right, exchanges } = lookAtAlternate(field.value, layout.value, template.value);
  const where = WHERE[alternation.by];
  const claims = [
    stated(FILE, `another repeat stands ${where}`, laid > 0 && right === laid, `${right} of ${laid} are`, 'all'),
  ];
  // A colour that reaches under the other is larger than the other is.
  if (alternation.other || layout.value.job.meeting?.way === 'overlap') return claims;
  const measured = exchanges ? 'exchanged' : 'not exchanged';
  return [...claims, equal(FILE, `colours are exchanged ${where}`, measured, 'exchanged')];
}
