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
  /** Units that stand side by side, with their colours as they are to meet. Comes before the rest. */
  meeting(standing: Standing[]): Drawn[][];
  /** A repeat, a corner, a medallion, a text. */
  unit(drawn: Drawn[], style: 'motif' | 'letter'): Drawn[];
  /** Units that stand side by side, each as it is to be. */
  repeated(standing: Standing[]): Drawn[][];
}

const same: Finish['meeting'] = (standing) => standing.map(({ drawn }) => drawn);

/** A unit that nothing of its kind stands beside, with its colours as they are to meet. */
export const metAlone = (drawn: Drawn[], { meeting }: Finish): Drawn[] =>
  meeting([{ drawn, at: [0, 0], every: [Infinity, Infinity] }])[0]!;

export const asDrawn: Finish = {
  meeting: same,
  unit: (drawn) => drawn,
  repeated: same,
};
