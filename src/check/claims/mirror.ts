import { type Claim, DRAWN, stated, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { fieldOf } from '../measure/field.ts';
import { MIRROR_ACROSS, MIRROR_ALONG } from '../measure/move.ts';
import { type Agreement, agreement, agrees, isBorder, isCorner, Pattern, saysAgreement } from '../measure/pattern.ts';

const FILE = 'plan.svg';
const LINES = [
  { name: 'the centre line along', way: 'across', move: MIRROR_ACROSS, landing: 'centreAcross' },
  { name: 'the centre line across', way: 'along', move: MIRROR_ALONG, landing: 'centreAlong' },
] as const;

/** Reflects every painted outline about both centre lines; each must come to lie on one outline of its own part. */
export default function mirror(set: FileSet): Claim[] {
  const plan = set.plan();
  const FIELD = 'the field mirrors about both centre lines';
  if (!plan.ok) return [unproven(FILE, FIELD, plan.says)];
  const layout = set.layout();
  const field = fieldOf(plan.value);
  if (field.pieces.length === 0) return [unproven(FILE, FIELD, 'no field is painted')];
  const claim = (what: string, line: (typeof LINES)[number], found: Agreement) =>
    stated(FILE, `${what} about ${line.name}`, agrees(found), saysAgreement(found), DRAWN);
  // Where the layout says that the field lands on neither kind of mirror line, nothing is claimed of it.
  const lines = LINES.filter((line) => !layout.ok || layout.value.layout.landing[line.landing] !== 'cut');
  const claims = lines.map((line) => claim('the field mirrors', line, field.mirrored[line.way]));
  for (const [what, of] of [
    ['the border mirrors', isBorder],
    ['the corner blocks mirror', isCorner],
  ] as const) {
    const pieces = plan.value.painted.filter(of);
    if (pieces.length === 0) continue;
    const pattern = new Pattern(pieces);
    for (const line of LINES) claims.push(claim(what, line, agreement(pieces, pattern, line.move)));
  }
  return claims;
}
