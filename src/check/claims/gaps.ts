import Flatbush from 'flatbush';
import { type Claim, DRAWN, equal, type Proof, stated, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { loadClipping } from '../measure/clipping.ts';
import { flat } from '../measure/flat.ts';
import { isGap } from '../measure/pattern.ts';
import { overlaps } from '../measure/window.ts';
import type { Frame } from '../read/outline.ts';
import type { Painted } from '../read/plan.ts';

const FILE = 'plan.svg';

export const proof: Proof = {
  claims: 'what is painted over the gaps of bridges laps as stated',
  files: ['layout.json', 'plan.svg'],
  method: 'outlines over gaps clipped with the paint beside them',
  tolerance: '0.05 mm',
};

/** What is painted over the gaps of bridges laps over the paint on either side by as much as is said. */
export default async function gaps(set: FileSet): Promise<Claim[]> {
  const claim = 'paint over the gaps of bridges laps over both edges';
  const [plan, layout] = [set.plan(), set.layout()];
  if (!plan.ok) return [unproven(FILE, claim, plan.says)];
  if (!layout.ok) return [unproven(FILE, claim, layout.says)];
  const over = plan.value.painted.filter(isGap);
  const { gaps: way = 'open', lap = 0 } = layout.value.job;
  if (way === 'open')
    return [equal(FILE, 'gaps of bridges stay open', over.length === 0 ? 'they do' : 'painted', 'they do')];
  const { common } = await loadClipping();
  const near = neighbours(plan.value.painted.filter((piece) => !isGap(piece)));
  const laps = (gap: Painted): boolean => {
    const beside = near(gap.outline.frame).filter(({ part }) => part === gap.part);
    // A strip of the lap's width, less what may be off, must be left on two edges at least.
    const edges = common(
      [flat(gap.outline)],
      beside.map(({ outline }) => flat(outline)),
      Math.max(0, lap / 2 - DRAWN),
    );
    return edges.length >= 2;
  };
  const loose = over.find((gap) => !laps(gap));
  const says = loose ? `not the ${loose.part} piece at ${place(loose)}` : `all ${over.length}`;
  return [stated(FILE, claim, loose === undefined, says, `all, by ${lap} mm`)];
}

const place = ({ outline: { frame } }: Painted): string => `${Math.round(frame.left)}, ${Math.round(frame.top)}`;

/** Finds the pieces whose frames lie over a frame. */
function neighbours(pieces: readonly Painted[]): (frame: Frame) => Painted[] {
  if (pieces.length === 0) return () => [];
  const index = new Flatbush(pieces.length);
  for (const { outline } of pieces) {
    const { left, top, right, bottom } = outline.frame;
    index.add(left, top, right, bottom);
  }
  index.finish();
  return (frame) =>
    index
      .search(frame.left, frame.top, frame.right, frame.bottom)
      .map((at) => pieces[at]!)
      .filter(({ outline }) => overlaps(outline.frame, frame));
}
