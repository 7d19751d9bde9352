import { type Claim, DRAWN, equal, list, type Proof, stated, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { centre } from '../measure/finder.ts';
import { across, along, frameOf } from '../measure/frame.ts';
import { moveOutline, placing, shift } from '../measure/move.ts';
import { notched } from '../measure/notched.ts';
import { farthestApart } from '../measure/same-outlines.ts';
import { trueSize } from '../measure/true-size.ts';
import type { Outline } from '../read/outline.ts';

const FILE = 'template.svg';

export const proof: Proof = {
  claims: 'template of a room border: true to size, one pitch by the width, one repeat of the plan',
  files: ['layout.json', 'plan.svg', 'template.svg'],
  method: 'outline laid on the plan in its four turns',
  tolerance: '0.05 mm',
};

/** The template of a border round a room: true to size, one repeat of it. */
export default function roomTemplate(set: FileSet): Claim[] {
  const layout = set.layout();
  if (!layout.ok || layout.value.job.surface !== 'room-border') return [];
  const room = layout.value.roomBorder;
  if (!room || room.walls.every(({ repeats }) => repeats === 0)) return [];
  const [template, plan] = [set.template(), set.plan()];
  if (!template.ok) return [unproven(FILE, 'the template is true to size', template.says)];
  const { svg, outlines, edges, open } = template.value;
  const frame = frameOf(edges.map((outline) => outline.frame));
  const size = [across(frame), along(frame)];
  const pitches = room.walls.filter(({ repeats }) => repeats > 0).map(({ pitch }) => pitch);
  const isRepeat = pitches.some(
    (pitch) => Math.abs(size[0]! - pitch) <= DRAWN && Math.abs(size[1]! - room.width) <= DRAWN,
  );
  return [
    trueSize(FILE, 'the template is true to size', svg),
    equal(FILE, 'every path of the template is closed', open === 0 ? 'all' : `${open} open`, 'all'),
    stated(
      FILE,
      'the template is one pitch long and as wide as the border',
      edges.length === 1 && isRepeat,
      list(size),
      `${list([pitches[0]!, room.width])}, to ${DRAWN}`,
    ),
    notched(FILE, template.value),
    ...(plan.ok
      ? [
          oneOfPlan(
            outlines,
            plan.value.painted.map(({ outline }) => outline),
          ),
        ]
      : [unproven(FILE, 'the template is one repeat of the plan', plan.says)]),
  ];
}

/** Somewhere on the plan, turned as one of the walls, lies what the template shows. */
function oneOfPlan(outlines: readonly Outline[], painted: readonly Outline[]): Claim {
  const claim = 'the template is one repeat of the plan';
  if (outlines.length === 0) return unproven(FILE, claim, 'it holds no repeat');
  let best = Number.POSITIVE_INFINITY;
  for (let turn = 0; turn < 4 && best > DRAWN; turn++) {
    const turned = outlines.map((outline) => moveOutline(outline, placing(turn, 0, 0)));
    const [u, v] = centre(turned[0]!.frame);
    for (const piece of painted) {
      const [x, y] = centre(piece.frame);
      const placed = turned.map((outline) => moveOutline(outline, shift(x - u, y - v)));
      best = Math.min(best, farthestApart(placed, nearest(placed, painted)));
      if (best <= DRAWN) break;
    }
  }
  return stated(FILE, claim, best <= DRAWN, best, DRAWN);
}

/** Of the painted pieces those about whose centres the placed ones lie. */
const nearest = (placed: readonly Outline[], painted: readonly Outline[]): Outline[] =>
  placed.flatMap((outline) => {
    const [x, y] = centre(outline.frame);
    return (
      painted.find(({ frame }) => {
        const [u, v] = centre(frame);
        return Math.hypot(u - x, v - y) <= 2 * DRAWN;
      }) ?? []
    );
  });
