import { type Claim, DRAWN, type Proof, stated, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { fieldOf } from '../measure/field.ts';
import { centre } from '../measure/finder.ts';
import { across, along, centredFrame, frameOf, outside } from '../measure/frame.ts';
import { type Onward, onward } from '../measure/onward.ts';
import type { Repeating } from '../measure/repeating.ts';
import type { LayoutNumbers } from '../read/layout.ts';

const FILE = 'plan.svg';
type Way = 'across' | 'along';

export const proof: Proof = {
  claims: 'pieces repeat at the pitch both ways; as many repeats as stated; nothing but what its repeats show',
  files: ['layout.json', 'plan.svg', 'template.svg'],
  method: 'every outline against the one a pitch on',
  tolerance: '0.05 mm',
};

/** The field repeats at the pitch, is as large as its repeats, and shows nothing but what its repeats show, cut by its edges alone. */
export default async function repeats(set: FileSet): Promise<Claim[]> {
  const [field, layout] = [await fieldOf(set), set.layout()];
  if (!field.ok) return [unproven(FILE, 'pieces repeat at the pitch', field.says)];
  if (!layout.ok) return [unproven(FILE, 'pieces repeat at the pitch', layout.says)];
  const { layout: numbers, alternation } = layout.value;
  const { pieces, repeating } = field.value;
  const inside = frameOf(pieces.map((piece) => piece.outline.frame));
  const due = centredFrame(numbers.field.across, numbers.field.along);
  const claims = [
    stated(FILE, 'the field keeps inside its edges', outside(inside, due) <= DRAWN, outside(inside, due), DRAWN),
    accounted(repeating),
  ];
  for (const way of ['across', 'along'] as const) {
    const found = onward(repeating, way);
    const turns = alternation && alternation.by !== (way === 'across' ? 'row' : 'column');
    const claim = turns
      ? `every second piece repeats at twice the pitch, ${way}`
      : `pieces repeat at the pitch, ${way}`;
    const holds = found.lost === 0 && repeating.count > 0 && repeating.off <= DRAWN;
    const measured = found.lost > 0 || repeating.count === 0 ? saysLost(found, repeating) : repeating.off;
    claims.push(stated(FILE, claim, holds, measured, DRAWN));
    const pitch = found.pairs > 0 ? found.mean / (turns ? 2 : 1) : numbers.pitch[way];
    claims.push(asWide(pitch, numbers, way, way === 'across' ? across(inside) : along(inside)));
  }
  return claims;
}

function accounted({ count, lost, odd, off }: Repeating): Claim {
  const claim = 'the field shows its repeats, cut by its edges and by nothing else';
  const place = ([x, y]: [number, number]) => `${Math.round(x)}, ${Math.round(y)}`;
  const faults = [
    ...(lost.length > 0 ? [`${lost.length} missing, such as at ${place(centre(lost[0]!))}`] : []),
    ...(odd.length > 0 ? [`${odd.length} not of the pattern, such as at ${place(centre(odd[0]!.outline.frame))}`] : []),
  ];
  const holds = faults.length === 0 && count > 0 && off <= DRAWN;
  const measured = [`${count} pieces, ${off.toFixed(3)} mm off`, ...faults].join('; ');
  return stated(FILE, claim, holds, measured, `every piece, to ${DRAWN}`);
}

const saysLost = ({ lost, pairs }: Onward, { count }: Repeating): string =>
  count === 0 ? 'no piece that repeats' : `${lost} pieces have no partner, ${pairs} have one`;

/** Where pieces reach the edges of the field, it measures its count of repeats times the pitch that was measured. */
function asWide(pitch: number, numbers: LayoutNumbers, way: Way, extent: number): Claim {
  const claim = `the field is ${numbers.repeats[way]} repeats ${way}`;
  if (!Number.isFinite(extent)) return unproven(FILE, claim, 'no field is painted');
  const due = numbers.repeats[way] * pitch;
  const off = Math.abs(extent - due);
  const reaches = Math.abs(extent - numbers.field[way]) <= 2 * DRAWN || off <= DRAWN;
  // A motif drawn clear of its cell leaves a strip at both edges, at most one pitch of it in all.
  const holds = reaches ? off <= DRAWN : extent < due && extent > due - pitch;
  const measured = `${(extent / pitch).toFixed(4)} of ${pitch.toFixed(3)} mm`;
  return stated(FILE, claim, holds, measured, `${numbers.repeats[way]}, to ${DRAWN} mm`);
}
