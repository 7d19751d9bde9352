import type { Surface } from '../job/job.ts';
import type { Placing } from './placing.ts';

/** What the room allows the work to be, on the axis the work is laid along. Lengths in mm. */
export interface Site {
  surface: Surface;
  /** Across the axis. */
  across: Extent;
  /** Along the axis, from the near end to the far end. */
  along: Extent;
  /** Sentences about the place, for the table and the job sheet. */
  notes: string[];
  /** The room as measured all round, and where the work lies in it. */
  placing?: Placing;
}

/**
 * One direction of the site.
 * `space`: what there is from limit to limit (threshold to threshold, wall to wall, edge to edge of the cloth), if measured.
 * `cover`: a width the field must cover, such as the wider of two openings.
 */
export interface Extent {
  space?: number;
  cover?: number;
}
