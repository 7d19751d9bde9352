import { type Claim, DRAWN, list, stated, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { frameOf, outside } from '../measure/frame.ts';
import { isBorder, isCorner, isField } from '../measure/pattern.ts';
import { countRepeats } from '../measure/period.ts';
import type { LayoutFile } from '../read/layout.ts';
import type { Frame } from '../read/outline.ts';
import type { Painted, Plan } from '../read/plan.ts';

const FILE = 'plan.svg';
const SIDES = ['near', 'far', 'left', 'right'] as const;
type Side = (typeof SIDES)[number];

/** The border lies evenly round the work, whole repeats on every side, and the field lies evenly inside it. */
export default function border(set: FileSet): Claim[] {
  const [plan, layout] = [set.plan(), set.layout()];
  if (!plan.ok) return [unproven(FILE, 'the border is even on four sides', plan.says)];
  if (!layout.ok) return [unproven(FILE, 'the border is even on four sides', layout.says)];
  const work = frameOf(plan.value.ground.map((outline) => outline.frame));
  return [...strips(plan.value, layout.value, work), ...band(plan.value, layout.value, work)];
}

/** Distances of a frame from the four edges of the work: near, far, left, right. */
const margins = (frame: Frame, work: Frame): number[] => [
  work.bottom - frame.bottom,
  frame.top - work.top,
  frame.left - work.left,
  work.right - frame.right,
];

const spread = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);

/** The strip between the edge of the work and the field is as wide as border and reserve. */
function strips({ painted }: Plan, { layout }: LayoutFile, work: Frame): Claim[] {
  const field = painted.filter(isField);
  if (field.length === 0) return [unproven(FILE, 'the field lies evenly inside the work', 'no field is painted')];
  const found = margins(frameOf(field.map((piece) => piece.outline.frame)), work);
  const along = layout.border + layout.reserve.along;
  const across = layout.border + layout.reserve.across;
  const due = [along, along, across, across];
  // A motif drawn clear of its cell stands a little farther in, alike on opposite sides; it never stands farther out.
  const holds =
    spread(found.slice(0, 2)) <= DRAWN &&
    spread(found.slice(2)) <= DRAWN &&
    found.every((at, i) => at >= due[i]! - DRAWN);
  return [stated(FILE, 'the field lies evenly inside the work', holds, list(found), `${list(due)}, to ${DRAWN}`)];
}

function band(plan: Plan, file: LayoutFile, work: Frame): Claim[] {
  const { layout } = file;
  const pieces = plan.painted.filter((piece) => isBorder(piece) || isCorner(piece));
  if (layout.border === 0) {
    return [stated(FILE, 'there is no border', pieces.length === 0, `${pieces.length} pieces`, 'none')];
  }
  const sides = new Map(SIDES.map((side) => [side, pieces.filter((piece) => piece.element === `border-${side}`)]));
  const bare = SIDES.find((side) => sides.get(side)!.length === 0);
  if (bare) return [unproven(FILE, 'the border is even on four sides', `nothing is painted on the ${bare} side`)];
  const frames = SIDES.map((side) => frameOf(sides.get(side)!.map((piece) => piece.outline.frame)));
  const outer = SIDES.map((_, at) => margins(frames[at]!, work)[at]!);
  const inner = SIDES.map((_, at) => depth(frames[at]!, work, at));
  const even = Math.max(spread(outer), spread(inner)) <= DRAWN;
  const keeps = Math.min(...outer) >= -DRAWN && Math.max(...inner) <= layout.border + DRAWN;
  return [
    stated(
      FILE,
      'the border is even on four sides',
      even,
      `from ${list(outer)} to ${list(inner)}`,
      `alike to ${DRAWN}`,
    ),
    stated(FILE, 'the border keeps to its width', keeps, Math.max(...inner), layout.border),
    ...SIDES.map((side) => wholeRepeats(side, sides.get(side)!, file, work)),
    corners(pieces.filter(isCorner), layout.border, work),
  ];
}

/** How far a side's pieces reach in from their own edge of the work. */
const depth = (frame: Frame, work: Frame, at: number): number =>
  [work.bottom - frame.top, frame.bottom - work.top, frame.right - work.left, work.right - frame.left][at]!;

function wholeRepeats(side: Side, pieces: Painted[], { layout, taped }: LayoutFile, work: Frame): Claim {
  const way = side === 'near' || side === 'far' ? 'across' : 'along';
  const due = layout.borderRepeats[way];
  const claim = `whole border repeats on the ${side} side`;
  const low = (way === 'across' ? work.left : work.top) + layout.border;
  const high = (way === 'across' ? work.right : work.bottom) - layout.border;
  const isTaped = pieces.length === 1 && taped.some((part) => part.part === pieces[0]!.part);
  if (isTaped) {
    const { left, right, top, bottom } = pieces[0]!.outline.frame;
    const [from, to] = way === 'across' ? [left, right] : [top, bottom];
    const off = Math.max(Math.abs(from - low), Math.abs(to - high));
    const claim = `the band reaches from corner block to corner block on the ${side} side`;
    return stated(FILE, claim, off <= DRAWN, list([from, to]), `${list([low, high])}, to ${DRAWN}`);
  }
  const found = countRepeats(pieces, way, low, high, due);
  return stated(FILE, claim, due > 0 && found.count === due, found.says, `${due} whole`);
}

/** Four corner blocks, each inside its own square. */
function corners(pieces: Painted[], size: number, work: Frame): Claim {
  const found = { 'near left': [], 'near right': [], 'far left': [], 'far right': [] } as Record<string, Frame[]>;
  let out = 0;
  for (const { outline } of pieces) {
    const { left, right, top, bottom } = outline.frame;
    const across = left + right < work.left + work.right ? 'left' : 'right';
    const along = top + bottom < work.top + work.bottom ? 'far' : 'near';
    found[`${along} ${across}`]!.push(outline.frame);
    const block = {
      left: across === 'left' ? work.left : work.right - size,
      right: across === 'left' ? work.left + size : work.right,
      top: along === 'far' ? work.top : work.bottom - size,
      bottom: along === 'far' ? work.top + size : work.bottom,
    };
    out = Math.max(out, outside(outline.frame, block));
  }
  const counts = Object.values(found).map((frames) => frames.length);
  const alike = counts.every((count) => count === counts[0]);
  const measured = alike ? `${counts[0]} pieces each, ${out.toFixed(3)} mm out` : `${counts.join(', ')} pieces`;
  return stated(
    FILE,
    'every corner block lies in its corner',
    alike && out <= DRAWN,
    measured,
    `as many in each, ${DRAWN} mm out`,
  );
}
