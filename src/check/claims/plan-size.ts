import { type Claim, DRAWN, equal, list, type Proof, stated, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { across, along, centredFrame, frameOf, outside } from '../measure/frame.ts';
import { trueSize } from '../measure/true-size.ts';

const FILE = 'plan.svg';

export const proof: Proof = {
  claims: 'true to size, paths only, closed, as large as the layout, all of it shown, every part in its own colour',
  files: ['layout.json', 'plan.svg'],
  method: 'width, height and viewBox; frame of the ground',
  tolerance: '0.05 mm',
};

/** The plan is drawn true to size, closed, and as large as the layout says. */
export default function planSize(set: FileSet): Claim[] {
  const plan = set.plan();
  if (!plan.ok) return [unproven(FILE, 'the plan is true to size', plan.says)];
  const { svg, ground, groundFill, painted, open } = plan.value;
  const { x, y, width, height } = svg.view;
  const work = frameOf(ground.map((outline) => outline.frame));
  const view = { left: x, top: y, right: x + width, bottom: y + height };
  const all = frameOf([work, ...painted.map((piece) => piece.outline.frame)]);
  const claims: Claim[] = [
    trueSize(FILE, 'the plan is true to size', svg),
    stated(FILE, 'the plan shows the whole work', outside(all, view) <= 1e-9, outside(all, view), 0),
    equal(FILE, 'every path of the plan is closed', open === 0 ? 'all' : `${open} open`, 'all'),
    stated(FILE, 'nothing is painted outside the work', outside(all, work) <= DRAWN, outside(all, work), DRAWN),
  ];
  const strange = svg.strangers.filter((name) => name !== 'rect' && name !== 'line');
  claims.push(equal(FILE, 'the plan is drawn with paths only', strange.join(', ') || 'paths', 'paths'));
  const layout = set.layout();
  if (!layout.ok) return [...claims, unproven(FILE, 'the work is as large as the layout says', layout.says)];
  const stage = layout.value.layout.work;
  const due = centredFrame(stage.across, stage.along);
  const off = Math.max(Math.abs(outside(work, due)), Math.abs(outside(due, work)));
  claims.push(
    stated(
      FILE,
      'the work is as large as the layout says, about its own centre',
      off <= DRAWN &&
        ground.length === 1 &&
        Math.abs(Math.abs(ground[0]!.area) - across(due) * along(due)) <= DRAWN * (across(due) + along(due)),
      `${list([across(work), along(work)])}, off by ${list([off])}`,
      `${list([stage.across, stage.along])}, off by ${DRAWN} at most`,
    ),
  );
  claims.push(...colours(set, painted, groundFill));
  return claims;
}

/** Every part is painted in the colour that layout.json gives it. */
function colours(set: FileSet, painted: { part: string; fill: string }[], groundFill: string): Claim[] {
  const layout = set.layout();
  if (!layout.ok) return [];
  const { palette, colours: named } = layout.value;
  const due = (part: string) => palette[named[part] ?? '']?.toLowerCase();
  const wrong = [{ part: 'ground', fill: groundFill }, ...painted].find(
    ({ part, fill }) => fill.toLowerCase() !== due(part),
  );
  const measured = wrong ? `${wrong.part} is ${wrong.fill || 'not filled'}` : 'all parts';
  return [equal(FILE, 'every part has its own colour', measured, 'all parts')];
}
