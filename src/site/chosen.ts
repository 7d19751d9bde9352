interface Pair {
  across: number;
  along: number;
}

/** What the room has to know of the layout that was chosen. Lengths in mm. */
export interface Chosen {
  work: Pair;
  field: Pair;
  gaps: { near: number; far: number; left: number; right: number };
}
