import type { Drawn } from '../motif/motif.ts';

/**
 * What is done with each unit once it is drawn and before it is placed, such as putting bridges in: a repeat, a corner, a medallion, a text.
 * What is masked with tape is left as it is.
 */
export type Finish = (drawn: Drawn[], style: 'motif' | 'letter') => Drawn[];

export const asDrawn: Finish = (drawn) => drawn;
