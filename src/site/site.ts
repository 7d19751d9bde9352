import type { Range, Surface } from '../job/job.ts';
import type { FloorRoom } from './floor-room.ts';
import type { Placing } from './placing.ts';
import type { RoomOutline } from './walls-outline.ts';

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
  /** Room border: the walls, closed. */
  outline?: RoomOutline;
  /** A floor from wall to wall: the room about the crossing of its centre lines. */
  floor?: FloorRoom;
}

/**
 * One direction of the site.
 * `space`: what there is from limit to limit (threshold to threshold, wall to wall, edge to edge of the cloth), if measured.
 * `cover`: a width the field must cover, such as the wider of two openings.
 */
export interface Extent {
  space?: number;
  cover?: number;
  /** The sizes over everything that fit there, with what the job says of it worked in. */
  size?: Range;
}
