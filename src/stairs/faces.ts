import type { Stairs, Step } from '../job/job.ts';

/** The upright or the top of one step. Lengths in mm. */
export interface Face {
  /** Number of the step, the lowest being 1. */
  step: number;
  kind: 'riser' | 'tread';
  across: number;
  /** Height of a riser, depth of a tread. */
  along: number;
}

export const KIND = { risers: 'riser', treads: 'tread' } as const;

/** Every face of one kind that was measured, from the bottom up. */
export const facesOf = (steps: readonly Step[], kind: Face['kind']): Face[] =>
  steps.flatMap((step, at) => {
    const size = step[kind];
    return size ? [{ step: at + 1, kind, ...size }] : [];
  });

/** What is painted of the flight, from the bottom up. */
export const paintedFaces = (steps: readonly Step[], { painted }: Pick<Stairs, 'painted'>): Face[] =>
  facesOf(steps, KIND[painted]);

/** The plain strip at the front of a face, in which nothing is painted. */
export const frontOf = ({ kind }: Pick<Face, 'kind'>, { nosing }: Pick<Stairs, 'nosing'>): number =>
  kind === 'tread' ? nosing : 0;
