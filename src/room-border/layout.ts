import type { RoomBorder } from '../job/job.ts';

/** Repeats that are painted side by side: the first of them, from 0, and how many. */
export interface Stretch {
  first: number;
  count: number;
}

/** What a door leaves plain: the rest between the border's ends and its casing, mm. Open where there is no border to that side. */
export interface DoorRest {
  /** Number of the door in the job, from 0. */
  door: number;
  before?: number;
  after?: number;
}

/** The border along one wall. Lengths in mm, places from the beginning of the wall; a run may begin before it, round an outside corner. */
export interface WallRun {
  /** Number of the wall, from 0. */
  wall: number;
  /** Plain strip between this wall and the border. */
  strip: number;
  /** Whole repeats from corner to corner; 0 for a plain band. */
  repeats: number;
  pitch: number;
  /** Pitch over that of a repeat true to shape; 1 for a plain band. */
  stretch: number;
  from: number;
  to: number;
  painted: Stretch[];
  /** Of a plain band: where it is painted. */
  bands: [from: number, to: number][];
  doors: DoorRest[];
}

/** The corner at the end of a wall; a door beside it may take its block away. */
export interface RoomCorner {
  wall: number;
  kind: 'inside' | 'outside';
  painted: boolean;
}

/** One way to lay the border: all the numbers that fix the drawing. Lengths in mm. */
export interface RoomLayout {
  rank: number;
  width: number;
  pitch: RoomBorder['pitch'];
  runs: WallRun[];
  corners: RoomCorner[];
  /** Of the repeats that are pulled most. */
  stretch: number;
  /** Widest strip less narrowest. */
  uneven: number;
  cost: number;
  says: string;
}

/** What the search found, best first, and what it covered. */
export interface RoomFit {
  searched: number;
  proof: 'exhaustive';
  layouts: RoomLayout[];
}
