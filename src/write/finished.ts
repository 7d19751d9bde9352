import type { Drawing } from '../compose/drawing.ts';
import type { Fit, Layout } from '../fit/layout.ts';
import type { Motifs } from '../fit/problem.ts';
import type { Job } from '../job/job.ts';
import type { Schedule } from '../marks/schedule.ts';
import type { Drawn } from '../motif/motif.ts';
import type { Site } from '../site/site.ts';
import type { BridgeCost } from '../stencil/bridges/cost.ts';
import type { Sheet } from '../stencil/sheet.ts';

/** Everything the stages have found, ready to be written. */
export interface Finished {
  job: Job;
  site: Site;
  motifs: Motifs;
  fit: Fit;
  layout: Layout;
  drawing: Drawing;
  /** One repeat of the field as it is cut. */
  repeat: Drawn[];
  bridges: BridgeCost;
  /** What will not be seen well of the colours. */
  looks?: string[];
  sheets: Sheet[];
  schedule: Schedule;
}
