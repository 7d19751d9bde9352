import { parseLength } from '../../units/index.ts';
import { type Claim, DRAWN, type Proof, stated, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { across, along, frameOf } from '../measure/frame.ts';
import { isField } from '../measure/pattern.ts';
import { squareOfFloor } from '../measure/square-floor.ts';
import type { Frame } from '../read/outline.ts';

const FILE = 'marks.csv';

export const proof: Proof = {
  claims: '3-4-5, diagonals and mid-run distances',
  files: ['layout.json', 'marks.csv', 'plan.svg'],
  method: 'distances between corners as drawn',
  tolerance: '0.05 mm; half a step of the tape as read',
};

/** The distances that prove the corners square are those of the drawing. */
export default function square(set: FileSet): Claim[] {
  const [rows, plan, layout] = [set.marks(), set.plan(), set.layout()];
  const missing = [rows, plan, layout].find((found) => !found.ok);
  if (!rows.ok || !plan.ok || !layout.ok) {
    return [unproven(FILE, 'the diagonals are those of the drawing', missing?.ok === false ? missing.says : '')];
  }
  if (layout.value.floor) return squareOfFloor(layout.value, layout.value.floor, rows.value);
  const work = frameOf(plan.value.ground.map((outline) => outline.frame));
  const { field } = layout.value.layout;
  const drawn = frameOf(plan.value.painted.filter(isField).map((piece) => piece.outline.frame));
  // Where the pieces stop short of the field's edge, its size is the layout's, which other claims measure.
  const reaches = Math.abs(across(drawn) - field.across) <= DRAWN && Math.abs(along(drawn) - field.along) <= DRAWN;
  const size = reaches ? { across: across(drawn), along: along(drawn) } : field;
  const checks = rows.value.filter((row) => row.line === 'check');
  const unit = layout.value.job.units;
  const claims: Claim[] = [];
  let diagonals = 0;
  for (const row of checks) {
    const due = dueFor(row.for, work, size, (text) => {
      const length = parseLength(text, unit === 'ft' ? 'in' : unit);
      return length.ok ? length.mm : Number.NaN;
    });
    if (due === undefined) continue;
    if (due.says === 'work, corner to corner') diagonals += 1;
    const off = Math.abs(row.true - due.mm);
    claims.push(stated(FILE, `${due.says} is that of the drawing`, off <= DRAWN, off, DRAWN));
  }
  claims.push(stated(FILE, 'both diagonals of the work are to be checked', diagonals === 1, diagonals, 1));
  return claims;
}

function dueFor(
  words: string,
  work: Frame,
  field: { across: number; along: number },
  length: (text: string) => number,
): { says: string; mm: number } | undefined {
  if (/^work, corner to corner/i.test(words)) {
    return { says: 'work, corner to corner', mm: Math.hypot(across(work), along(work)) };
  }
  if (/^field, corner to corner/i.test(words)) {
    return { says: 'field, corner to corner', mm: Math.hypot(field.across, field.along) };
  }
  if (/mid-run mark/i.test(words)) {
    return { says: 'near corner to mid-run', mm: Math.hypot(across(work), along(work) / 2) };
  }
  const legs = /^3-4-5 .*?: (.+) along the near edge, (.+) up the left edge/.exec(words);
  if (!legs) return undefined;
  const [one, other] = [length(legs[1]!), length(legs[2]!)];
  const isTriple = Math.abs(Math.min(one, other) / 3 - Math.max(one, other) / 4) <= DRAWN;
  return { says: 'the long side of the 3-4-5', mm: isTriple ? Math.hypot(one, other) : Number.NaN };
}
