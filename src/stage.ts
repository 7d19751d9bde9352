/** What making goes through, one after the other, as a person waiting for it is told. */
export const STAGES = [
  'looking for layouts',
  'drawing the work',
  'cutting the stencils',
  'writing the plan, marks and sheets',
] as const;

type Stage = (typeof STAGES)[number];

/** Called when a stage begins. */
export type Tell = (stage: Stage) => void;
