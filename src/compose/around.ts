import type { Pair } from '../fit/layout.ts';
import type { Box } from '../geometry/path.ts';
import type { Way } from '../job/job.ts';
import type { Motif, Settings } from '../motif/motif.ts';
import type { Finish } from './finish.ts';

/** A motif with its settings filled in. */
export interface Chosen {
  motif: Motif;
  settings: Settings;
}

/** A border round a rectangle: the first one or the one inside it. Lengths in mm. */
export interface Edging extends Way, Chosen {
  order: 'border' | 'inner';
  outer: Box;
  width: number;
  repeats: Pair;
  corner?: Chosen;
  /** As it is drawn, if not said. */
  finish?: Finish;
}
