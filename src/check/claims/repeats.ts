import { type Claim, DRAWN, stated, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { fieldOf } from '../measure/field.ts';
import { across, along, centredFrame, frameOf, outside } from '../measure/frame.ts';
import { shift } from '../measure/move.ts';
import { type Agreement, agreement, agrees, type Pattern, saysAgreement } from '../measure/pattern.ts';
import type { LayoutNumbers } from '../read/layout.ts';
import type { Painted } from '../read/plan.ts';

const FILE = 'plan.svg';
type Way = 'across' | 'along';

/** The field repeats at the pitch, and is as large as its repeats. */
export default function repeats(set: FileSet): Claim[] {
  const [plan, layout] = [set.plan(), set.layout()];
  if (!plan.ok) return [unproven(FILE, 'pieces repeat at the pitch', plan.says)];
  if (!layout.ok) return [unproven(FILE, 'pieces repeat at the pitch', layout.says)];
  const numbers = layout.value.layout;
  const { pieces: field, pattern } = fieldOf(plan.value);
  const inside = frameOf(field.map((piece) => piece.outline.frame));
  const due = centredFrame(numbers.field.across, numbers.field.along);
  const claims = [
    stated(FILE, 'the field keeps inside its edges', outside(inside, due) <= DRAWN, outside(inside, due), DRAWN),
  ];
  for (const way of ['across', 'along'] as const) {
    const found = repeat(field, pattern, numbers, way);
    claims.push(stated(FILE, `pieces repeat at the pitch, ${way}`, agrees(found), saysAgreement(found), DRAWN));
    claims.push(asWide(found, numbers, way, way === 'across' ? across(inside) : along(inside)));
  }
  return claims;
}

/** Moves every piece that is not at an edge of halves by one pitch, as far as that stays inside the field. */
function repeat(field: Painted[], pattern: Pattern, numbers: LayoutNumbers, way: Way): Agreement {
  const pitch = numbers.pitch[way];
  const half = numbers.field[way] / 2;
  const whole = numbers.landing[way === 'across' ? 'left' : 'far'] === 'whole';
  const from = whole ? -half - DRAWN : -half + DRAWN;
  const to = (whole ? half + DRAWN : half - DRAWN) - pitch;
  const sources = field.filter(({ outline: { frame } }) => {
    const [low, high] = way === 'across' ? [frame.left, frame.right] : [frame.top, frame.bottom];
    return low >= from && high <= to;
  });
  return agreement(sources, pattern, way === 'across' ? shift(pitch, 0) : shift(0, pitch));
}

/** Where pieces reach the edges of the field, it measures its count of repeats times the pitch that was measured. */
function asWide(found: Agreement, numbers: LayoutNumbers, way: Way, extent: number): Claim {
  const claim = `the field is ${numbers.repeats[way]} repeats ${way}`;
  if (!Number.isFinite(extent)) return unproven(FILE, claim, 'no field is painted');
  const onward = way === 'across' ? found.onward.x : found.onward.y;
  // The mean over all pairs telescopes, so that rounding of single points does not add up.
  const pitch = found.count > 0 && onward > 0 ? onward / found.count : numbers.pitch[way];
  const due = numbers.repeats[way] * pitch;
  const off = Math.abs(extent - due);
  const reaches = Math.abs(extent - numbers.field[way]) <= 2 * DRAWN || off <= DRAWN;
  // A motif drawn clear of its cell leaves the same strip at both edges, at most one pitch of it in all.
  const holds = reaches ? off <= DRAWN : extent < due && extent > due - pitch;
  const measured = `${(extent / pitch).toFixed(4)} of ${pitch.toFixed(3)} mm`;
  return stated(FILE, claim, holds, measured, `${numbers.repeats[way]}, to ${DRAWN} mm`);
}
