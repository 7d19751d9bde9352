import type { Painted, Plan } from '../read/plan.ts';
import { MIRROR_ACROSS, MIRROR_ALONG } from './move.ts';
import { type Agreement, agreement, isField, Pattern } from './pattern.ts';

/** The field of a plan, and what several claims measure of it. */
export interface Field {
  pieces: Painted[];
  pattern: Pattern;
  /** Mirrored about the line x = 0, and about the line y = 0. */
  mirrored: { across: Agreement; along: Agreement };
}

const known = new WeakMap<Plan, Field>();

/** Measured once for a plan. */
export function fieldOf(plan: Plan): Field {
  let field = known.get(plan);
  if (field === undefined) {
    const pieces = plan.painted.filter(isField);
    const pattern = new Pattern(pieces);
    const mirrored = {
      across: agreement(pieces, pattern, MIRROR_ACROSS),
      along: agreement(pieces, pattern, MIRROR_ALONG),
    };
    field = { pieces, pattern, mirrored };
    known.set(plan, field);
  }
  return field;
}
