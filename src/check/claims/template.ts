import { type Claim, DRAWN, equal, list, stated, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { Corners } from '../measure/corners.ts';
import { centre, Finder } from '../measure/finder.ts';
import { across, along, frameOf } from '../measure/frame.ts';
import { moveOutline, shift } from '../measure/move.ts';
import { isField } from '../measure/pattern.ts';
import { trueSize } from '../measure/true-size.ts';
import type { LayoutNumbers } from '../read/layout.ts';
import type { Outline } from '../read/outline.ts';
import type { Template } from '../read/template.ts';

const FILE = 'template.svg';
const SAME = 'the template is one repeat of the plan';
/** Places tried before the template is held to be another motif. */
const MOST = 400;

/** The template for those who trace: true to size, and one repeat as the plan has it. */
export default function template(set: FileSet): Claim[] {
  const found = set.template();
  if (!found.ok) return [unproven(FILE, 'the template is true to size', found.says)];
  const { svg, outlines, open } = found.value;
  const claims = [
    trueSize(FILE, 'the template is true to size', svg),
    equal(FILE, 'every path of the template is closed', open === 0 ? 'all' : `${open} open`, 'all'),
  ];
  const [plan, layout] = [set.plan(), set.layout()];
  if (!plan.ok) return [...claims, unproven(FILE, SAME, plan.says)];
  if (!layout.ok) return [...claims, unproven(FILE, SAME, layout.says)];
  claims.push(...edges(found.value, layout.value.layout.pitch));
  if (outlines.length === 0) return [...claims, unproven(FILE, SAME, 'it holds no repeat')];
  const field = plan.value.painted.filter(isField).map((piece) => piece.outline);
  if (hasNoWhole(layout.value.layout)) return [...claims, sameArea(outlines, field, layout.value.layout)];
  const off = bestFit(outlines, field);
  return [...claims, stated(FILE, SAME, off <= DRAWN, off, DRAWN)];
}

/** Both pieces of a lone repeat are halves, so the plan holds none that could be laid on the template. */
const hasNoWhole = ({ landing, repeats }: LayoutNumbers): boolean =>
  (landing.left === 'half' && repeats.across < 2) || (landing.near === 'half' && repeats.along < 2);

function sameArea(outlines: Outline[], field: Outline[], { repeats }: LayoutNumbers): Claim {
  const area = (all: Outline[]) => Math.abs(all.reduce((sum, outline) => sum + outline.area, 0));
  const due = area(outlines) * repeats.across * repeats.along;
  const found = area(field);
  return stated(
    FILE,
    SAME,
    Math.abs(found - due) <= 1e-3 * due,
    `${found.toFixed(1)} mm² in all`,
    `${due.toFixed(1)} mm², to 0.1 %`,
  );
}

/** The edge of the repeat is one pitch each way, and the notches point at the middles of its four sides. */
function edges({ edges, notches }: Template, pitch: { across: number; along: number }): Claim[] {
  const frame = frameOf(edges.map((outline) => outline.frame));
  const size = [across(frame), along(frame)];
  const off = Math.max(Math.abs(size[0]! - pitch.across), Math.abs(size[1]! - pitch.along));
  const [x, y] = centre(frame);
  const middles = [
    [x, frame.top],
    [x, frame.bottom],
    [frame.left, y],
    [frame.right, y],
  ] as const;
  const points = new Corners(notches);
  const met = middles.filter(([u, v]) => edges.length === 1 && points.at(u, v, DRAWN).length > 0).length;
  return [
    stated(
      FILE,
      'the template is one pitch each way',
      edges.length === 1 && off <= DRAWN,
      list(size),
      `${list([pitch.across, pitch.along])}, to ${DRAWN}`,
    ),
    stated(
      FILE,
      'notches point at the middles of its sides',
      met === 4 && notches.length === 4,
      `${met} of ${notches.length}`,
      '4 of 4',
    ),
  ];
}

/** Lays the template on the plan, its first outline on every one of the same size by turns, and takes the place where it fits best. */
function bestFit(outlines: Outline[], field: Outline[]): number {
  const finder = new Finder(field);
  const first = outlines[0]!;
  const wide = ({ frame }: Outline) => frame.right - frame.left;
  const high = ({ frame }: Outline) => frame.bottom - frame.top;
  const alike = field.filter(
    (other) => Math.abs(wide(other) - wide(first)) < 1 && Math.abs(high(other) - high(first)) < 1,
  );
  let best = Infinity;
  for (const place of alike.slice(0, MOST)) {
    const [x, y] = centre(first.frame);
    const [u, v] = centre(place.frame);
    let off = 0;
    for (const outline of outlines)
      off = Math.max(off, finder.nearest(moveOutline(outline, shift(u - x, v - y)))?.apart ?? Infinity);
    if (off < best) best = off;
    if (best <= DRAWN) return best;
  }
  return best;
}
