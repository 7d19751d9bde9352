import { atLeast, atMost, type Claim, equal, type Proof, REASONED, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';

const FILE = 'layout.json';

export const proof: Proof = {
  claims:
    'field is repeats times pitch; the whole is field, borders, reserves and end gaps; margins and landings alike on opposite sides',
  files: ['layout.json'],
  method: 'sums of the numbers as written',
  tolerance: '1e-6 mm a term; a step of the tape between opposite margins',
};

/** The numbers of layout.json agree with each other. */
export default function addsUp(set: FileSet): Claim[] {
  const read = set.layout();
  if (!read.ok) return [unproven(FILE, 'the numbers of the layout add up', read.says)];
  const { job } = read.value;
  const { overall, work, field, border, reserve, endGap, repeats, pitch, gaps, landing, inner } = read.value.layout;
  // Each number is written to 1e-6 mm, so that a sum of `terms` of them may be off by half of that each.
  const off = (claim: string, one: number, other: number, terms = 4) =>
    atMost(FILE, claim, Math.abs(one - other), REASONED * (1 + (terms + 1) / 2));
  const claims: Claim[] = [];
  for (const way of ['across', 'along'] as const) {
    claims.push(off(`field is repeats times pitch, ${way}`, field[way], repeats[way] * pitch[way], repeats[way]));
    const ends = way === 'along' ? 2 * endGap : 0;
    claims.push(
      off(
        `overall is field, borders and reserves${way === 'along' ? ' and end gaps' : ''}, ${way}`,
        overall[way],
        field[way] + 2 * (border + reserve[way]) + ends,
      ),
    );
    const halves = 2 * repeats[way];
    claims.push(atMost(FILE, `repeats are whole or half, ${way}`, Math.abs(halves - Math.round(halves)), REASONED));
  }
  claims.push(off('work is overall, across', work.across, overall.across));
  claims.push(off('work is overall less the end gaps, along', work.along, overall.along - 2 * endGap));
  if (job.surface === 'runner') claims.push(off('end gap is the mean of both', endGap, (gaps.near + gaps.far) / 2));
  const step = job.step + REASONED;
  claims.push(atMost(FILE, 'both end gaps are alike to a tape step', Math.abs(gaps.near - gaps.far), step));
  claims.push(atMost(FILE, 'both side margins are alike to a tape step', Math.abs(gaps.left - gaps.right), step));
  claims.push(equal(FILE, 'left and right edges land alike', landing.left, landing.right));
  claims.push(equal(FILE, 'near and far edges land alike', landing.near, landing.far));
  if (inner) {
    const strip = (way: 'across' | 'along') => reserve[way] - inner.offset[way] - inner.width;
    claims.push(off('the strip inside the inner border is even on four sides', strip('across'), strip('along')));
    const least = Math.min(strip('across'), strip('along'));
    claims.push(atLeast(FILE, 'the inner border lies inside the reserve', least, -REASONED));
  }
  return claims;
}
