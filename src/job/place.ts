/** The corners of a room, named as one stands at the near wall and looks along the work. */
export type Corner = 'near-left' | 'near-right' | 'far-right' | 'far-left';

/** A place on the floor by its distances from a corner along the two walls that meet there, mm. */
export interface Place {
  across: number;
  along: number;
}

/** How wide and how long, mm. */
export interface Size {
  across: number;
  along: number;
}
