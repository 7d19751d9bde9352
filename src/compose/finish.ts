import type { Point } from '../geometry/path.ts';
import type { Drawn } from '../motif/motif.ts';

/** A unit that stands again and again, `every` so many mm across and along (never, where that is endless), first at `at`. */
export interface Standing {
  drawn: Drawn[];
  at: Point;
  every: Point;
}

/** What is done with what is drawn before it is placed, such as putting bridges in. What is masked with tape is left as it is. */
export interface Finish {
  /** A repeat, a corner, a medallion, a text. */
  unit(drawn: Drawn[], style: 'motif' | 'letter'): Drawn[];
  /** Units that stand side by side, each as it is to be. */
  repeated(standing: Standing[]): Drawn[][];
}

export const asDrawn: Finish = {
  unit: (drawn) => drawn,
  repeated: (standing) => standing.map(({ drawn }) => drawn),
};
