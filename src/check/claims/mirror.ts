import { type Claim, DRAWN, type Proof, stated, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { fromBoundary } from '../measure/edges.ts';
import { type Field, fieldOf } from '../measure/field.ts';
import { agreement, agrees, saysAgreement } from '../measure/pattern.ts';
import type { Way } from '../measure/symmetry.ts';
import { EDGES, edgeAt, isUpright } from '../measure/window.ts';
import type { LayoutNumbers } from '../read/layout.ts';

const FILE = 'plan.svg';
const FIELD = 'the field mirrors about both centre lines';

export const proof: Proof = {
  claims: 'the field mirrors about both centre lines, or begins and ends where repeats meet',
  files: ['layout.json', 'plan.svg', 'template.svg'],
  method: 'every outline against the mirror image of another',
  tolerance: '0.05 mm',
};

/**
 * Reflects every painted outline of the field about both centre lines; each must come to lie on one outline of its own part. A pattern that no
 * reflection brings onto itself lands by translation instead: both edges lie where repeats meet.
 */
export default async function mirror(set: FileSet): Promise<Claim[]> {
  const [field, layout] = [await fieldOf(set), set.layout()];
  if (!field.ok) return [unproven(FILE, FIELD, field.says)];
  if (!layout.ok) return [unproven(FILE, FIELD, layout.says)];
  if (field.value.pieces.length === 0) return [unproven(FILE, FIELD, 'no field is painted')];
  const claims = (['across', 'along'] as const).map((way) =>
    field.value.mirrors[way] ? reflected(field.value, way) : translated(field.value, layout.value.layout, way),
  );
  const { pieces, pattern, symmetry } = field.value;
  if (!symmetry.turns) return claims;
  const turned = agreement(pieces, pattern, [-1, 0, 0, -1, 0, 0]);
  const claim = 'half a turn about its centre brings the field onto itself';
  return [...claims, stated(FILE, claim, agrees(turned), saysAgreement(turned), DRAWN)];
}

function reflected({ mirrored }: Field, way: Way): Claim {
  const name = way === 'across' ? 'the centre line along' : 'the centre line across';
  return stated(FILE, `the field mirrors about ${name}`, agrees(mirrored[way]), saysAgreement(mirrored[way]), DRAWN);
}

function translated(field: Field, layout: LayoutNumbers, way: Way): Claim {
  const { window, lost, odd } = field.repeating;
  const ends = EDGES.filter((edge) => isUpright(edge) === (way === 'across'));
  const off = Math.max(...ends.map((edge) => fromBoundary(field, layout, way, edgeAt(window.frame, edge))));
  const claim = `the field has no mirror line and begins and ends where repeats meet, ${way}`;
  const astray = lost.length + odd.length;
  const measured = astray > 0 ? `${astray} pieces are not where the pattern has them` : off;
  return stated(FILE, claim, astray === 0 && off <= DRAWN, measured, DRAWN);
}
