import type { Part, Turn } from '../motif/motif.ts';
import type { System, Unit } from '../units/unit.ts';
import type { PaintWishes } from './paint.ts';
import type { Corner, Place, Size } from './place.ts';
import type { PreviewWishes } from './preview.ts';

export type { Unit } from '../units/unit.ts';
export type { Corner, Place, Size } from './place.ts';

/** Allowed values, both ends included, and the one wished for. Lengths in mm, counts and shares plain. */
export interface Range {
  from: number;
  to: number;
  wish?: number;
}

/** A runner between two openings, a rug lying free in a room, a floor cloth cut to size, a floor from wall to wall, a border along the walls, a flight of stairs. */
export const SURFACES = ['runner', 'rug', 'floor-cloth', 'floor', 'room-border', 'stairs'] as const;
export type Surface = (typeof SURFACES)[number];

/** What the paint goes on, and what thins it. */
export const FLOORS = ['bare wood', 'painted', 'varnished', 'concrete', 'canvas'] as const;
export const PAINTS = ['water-based', 'oil'] as const;

/** The walls of a room and its corners, named as one stands at the near wall and looks along the work. */
export type Wall = 'near' | 'right' | 'far' | 'left';
export type Diagonal = 'near-left to far-right' | 'near-right to far-left';

/** An opening by the edges of its casing, each so far along its wall from the corner where it meets the wall `from`. Lengths in mm. */
export interface Opening {
  wall: Wall;
  from: Wall;
  starts: number;
  ends: number;
}

/** What the work has to stay clear of: a closed outline, its places measured from one corner. */
export interface Obstacle {
  name: string;
  corner: Corner;
  outline: Place[];
}

/** What the work is laid along. `turn`: radians, to the right of the wall as one looks along it. */
export type AxisWish =
  | { way: 'openings' }
  | { way: 'parallel'; wall: Wall }
  | { way: 'square'; opening: Wall }
  | { way: 'boards'; wall: Wall; turn: number }
  | { way: 'boards'; corner: Corner; line: [Place, Place] };

/** Where a rug lies in a room of four walls. `off`: from the wall to its edge; `chairs`: how far behind the table's edge they stand when pulled out, mm. */
export type RugPlace =
  | { way: 'centred' }
  | { way: 'wall'; wall: Wall; off: number }
  | { way: 'table'; corner: Corner; outline: Place[]; chairs?: number };

/** The run of a runner from threshold to threshold, at the left, centre and right of the openings, mm. */
export interface Runs {
  left: number;
  centre: number;
  right: number;
}

/** A room as a tape measures it: four walls, one or both diagonals, and what is in it. Lengths in mm. */
export interface MeasuredRoom {
  sides: Record<Wall, number>;
  diagonals: { [D in Diagonal]?: number };
  openings: Opening[];
  obstacles: Obstacle[];
  /** Open: opening to opening for a runner, parallel to the longest wall for a rug. */
  axis?: AxisWish;
}

/** A wall of a room of right angles, as one walks round it with the wall at one's left hand; `corner` is how one turns at its end. Length in mm. */
export interface RoomWall {
  name: string;
  length: number;
  corner: 'inside' | 'outside';
}

/** A door by the edges of its casing, from the beginning of its wall, mm. `wall` counts from 0. */
export interface RoomDoor {
  wall: number;
  starts: number;
  ends: number;
}

/** A border along the walls of a room. */
export interface RoomBorder {
  /** The same pitch on every wall, or the nearest to true on each. */
  pitch: 'one' | 'each wall';
  /** Whether it stops at a whole repeat before a casing, or runs on past it. */
  atDoors: 'stop' | 'run on';
  /** Plain strip between wall and border, mm. */
  strip: Range;
}

/** Papers that pages are printed on. */
export const PAPERS = ['letter', 'A4', 'legal', 'A3', 'tabloid'] as const;
export type Paper = (typeof PAPERS)[number];

/** A floor cloth as canvas: what is turned under, what it shrinks by, what it is cut from. Lengths in mm. */
export interface Cloth {
  hem: number;
  corners: 'mitred' | 'folded';
  /** Left all round while it is sized and primed, cut off square after it. */
  trim: number;
  /** A trial piece of the canvas across and along the roll, before sizing and after. */
  swatch?: { before: Size; after: Size };
  /** The widths it is sold in, ascending, and what is cut off at each side of them. */
  rolls: number[];
  waste: number;
  /** How high its edge stands above the floor. */
  edgeHeight?: number;
}

/** One step of a flight: its upright and its top, each so wide and so high or deep. Lengths in mm. */
export interface Step {
  riser?: Size;
  tread?: Size;
}

/** What is painted of a flight, and where the panel stands on each step. Lengths in mm. */
export interface Stairs {
  painted: 'risers' | 'treads';
  /** In the middle of the step, or on the line of the tread below. */
  stands: 'middle' | 'foot';
  /** Plain strips left and right of the panel, and above or behind it. */
  margin: { sides: Range; risers: Range; treads: Range };
  /** Plain strip at the front of a tread. */
  nosing: number;
}

/** How the pattern may meet the edges of the field. */
export type LandingWish = 'whole' | 'half' | 'either';

export interface MotifChoice {
  motif: string;
  settings: Record<string, number>;
}

/** Every second row, column or square of the field (as on a draughts board) is another: in exchanged colours, or another motif. */
export interface Alternation {
  by: 'row' | 'column' | 'checker';
  /** Without it, `field` and `alternate` change places. */
  other?: MotifChoice;
}

/** How a border goes round. */
export interface Way {
  turn: Turn;
  /** A border that runs one way: `reverse` at the centre of each side, or run `round` the work. */
  run: 'reverse' | 'round';
}

/** A second border inside the first, with a plain strip on either side of it. Lengths in mm. */
export interface InnerBorder extends MotifChoice, Way {
  width: number;
  /** Plain strip between this border and the field. */
  gap: number;
  stretch: Range;
  corner: MotifChoice;
}

/** A name, a date or a monogram. Lengths in mm. */
export interface Lettering {
  text: string;
  /** A font file the person names, or nothing for the face that comes with the tool. */
  font?: string;
  /** One of the two fixes the size. */
  capHeight?: number;
  width?: number;
  /** Rise of the arc it is set on, in degrees from end to end; 0 is straight, negative bends down. */
  arc: number;
  /** In the middle of the field (repeats make room), or in the middle of a side of the border. */
  place: 'centre' | 'near' | 'far';
}

/** How the files to cut from are written. */
export interface Cutting {
  /** The edge of the sheet: cut last, drawn only, or left out. */
  outline: 'cut' | 'draw' | 'none';
  /** Left and right changed over, for cutting from the back. */
  mirrored: boolean;
  /** How far the blade runs on past the start of every line, mm. */
  overcut: number;
  /** Where the blade goes in: at the corner that saves most travel, or where the shape was begun. */
  entry: 'free' | 'fixed';
  /** A file for every sheet; or one more for every film, with the sheets that are cut from it side by side. */
  files: 'one a sheet' | 'one a film';
  /** The colour of each kind of line. */
  lines: { cut: string; draw: string; crease: string };
}

/**
 * A job after reading: every default filled in, every length in millimetres. Everything else is computed from it.
 * Ranges that are `undefined` were left open by the person; `site` and `fit` give them their meaning.
 */
export interface Job {
  /** The name of the output folder: letters, digits and hyphens, from the title or the file's name. */
  name: string;
  title: string;
  /** What bare numbers meant; also decides how lengths are written back. */
  units: Unit;
  /** Inches and fractions, or metric. */
  system: System;
  /** The finest mark the tape is read to, mm (1/16 in or 1 mm unless stated). */
  step: number;
  surface: Surface;
  /** What the person knows of what lies under the paint. `built`: the year of the house. */
  underfoot?: { is?: (typeof FLOORS)[number]; built?: number; paint?: (typeof PAINTS)[number] };
  site: {
    /** Runner: threshold to threshold, the least of what was measured; in a measured room it may be left open. */
    run?: number;
    /** Runner: the three readings that `run` is the least of, where they were taken. */
    runs?: Runs;
    /** Runner: width of each opening over its casing. */
    openings?: { near: number; far: number };
    /** Rug: the room it lies in, wall to wall. */
    room?: { across: number; along: number };
    /** Rug and runner: the room, measured all round. */
    measured?: MeasuredRoom;
    /** Room border: the walls in turn, and the doors in them. */
    walls?: RoomWall[];
    doors?: RoomDoor[];
    /** Rug: where it lies in that room; centred unless told otherwise. */
    place?: RugPlace;
    /** Stairs: the steps, from the bottom up. */
    steps?: Step[];
  };
  /** Size over everything, border and reserves included. */
  overall: { across?: Range; along?: Range };
  cloth?: Cloth;
  stairs?: Stairs;
  /** Plain strip left at both ends of a runner, inside the run. */
  endGap: Range;
  field: MotifChoice & {
    /** Size of the field itself, when the job fixes it. */
    size: { across?: Range; along?: Range };
    repeats: { across?: Range; along?: Range };
    pitch: { across?: Range; along?: Range };
    stretch: Range;
    landing: LandingWish | { across?: LandingWish | undefined; along?: LandingWish | undefined };
    alternation?: Alternation;
    /** A motif inside the motif; `size` is its share of the room there. */
    inset?: MotifChoice & { size: number };
  };
  /** Stands in the middle of the field and takes the room of this many repeats. */
  medallion?: MotifChoice & { repeats: { across: number; along: number } };
  lettering?: Lettering[];
  /** `motif` is `none` for work without a border; its width is then 0. */
  border: MotifChoice & Way & { width: Range; stretch: Range; corner: MotifChoice };
  inner?: InnerBorder;
  roomBorder?: RoomBorder;
  reserve: { across: Range; along: Range };
  /** Colour names and their hex values, and the name given to each part. */
  palette: Record<string, string>;
  colours: Record<Part, string>;
  /** The same work in other colours, each whole. */
  colourways?: { name: string; colours: Record<Part, string> }[];
  paint?: PaintWishes;
  /** The house it shares with other jobs: ml that its file has at hand of each colour, `primer` and `clear`, and those of them that the job does not tell itself. */
  house?: { title: string; onHand: Record<string, number>; shared: string[] };
  preview?: PreviewWishes;
  stencil: {
    /** Least width of material between two windows, mm. */
    bridge: number;
    /** Least width of a window, mm. */
    window: number;
    /** Repeats that touch are cut and painted `by turns`, or `held apart` by a bridge, or each `alone`, one to a sheet. */
    touching: 'by turns' | 'held apart' | 'alone';
    /** Where two colours touch: as drawn, or with so many mm of overlap or gap. */
    meeting: { way: 'edge to edge' | 'overlap' | 'gap'; by: number };
    /** How the corners are that bridges cut into windows. */
    corners: 'sharp' | 'round';
    /** The gaps that bridges leave in the paint stay `open`, or are `painted` through a further sheet. */
    gaps: 'open' | 'painted';
    /** How far that sheet's windows lap over what is painted already, mm. */
    lap: number;
    /** Film or card, mm, and the rim kept clear of windows. */
    sheet: { across: number; along: number; rim: number };
    cutting: Cutting;
  };
  /** Templates printed true to size over pages of paper. */
  print: {
    paper: Paper;
    /** What neighbouring pages share, mm. */
    overlap: number;
    /** Whether the sheets are printed. */
    sheets: boolean;
    /** Whether the plan is printed; `if few` where it takes few pages. */
    plan: boolean | 'if few';
    tiles: 'pdf' | 'pdf and svg' | 'none';
    /** What a length of 10 in comes to on the person's printer, mm. */
    measured: number;
  };
}
