import type { Motifs } from '../fit/problem.ts';
import { type Tape, tapeOf } from '../fit/tape.ts';
import type { Job, Range, RoomDoor } from '../job/job.ts';
import { type RoomOutline, stepOf } from '../site/walls-outline.ts';
import { inches } from '../units/index.ts';

/** Least plain floor between the end of a border and a casing, mm. Common practice, no source. */
const DOOR_CLEAR = { inch: inches(1), metric: 25 };

/** The border's outer edge along one wall, in the direction across that wall: at `wall` + `sign` × its strip, mm. */
export interface Line {
  wall: number;
  at: number;
  sign: 1 | -1;
}

/** The run from one line to the next: along which wall, which way, and how many of its ends are inside corners. */
export interface Link {
  wall: number;
  sign: 1 | -1;
  insides: number;
}

/** The walls that stand across one direction and those that run along it, by turns round the room. `links[n]` joins `lines[n]` and the next. */
export interface Chain {
  lines: Line[];
  links: Link[];
}

/** All that the search needs to know, in numbers. Lengths in mm. */
export interface RoomProblem {
  outline: RoomOutline;
  chains: [across: Chain, along: Chain];
  tape: Tape;
  width: Range;
  strip: Range;
  stretch: Range;
  /** Pitch over width when true to shape; `plain` for a band of one piece. */
  ratio: number | 'plain';
  /** Only even counts land, as the border reverses at the middle of each wall. */
  even: boolean;
  pitch: 'one' | 'each wall';
  /** Doors that the border stops at, with the plain floor that has to be left on both sides. */
  doors: (RoomDoor & { number: number })[];
  clear: number;
}

function chainOf({ walls }: RoomOutline, axis: 0 | 1): Chain {
  const lines: Line[] = [];
  const links: Link[] = [];
  const first = walls.findIndex(({ heading }) => stepOf(heading)[axis] === 0);
  for (let n = 0; n < walls.length; n++) {
    const at = (first + n) % walls.length;
    const { heading, start, corner } = walls[at]!;
    if (stepOf(heading)[axis] === 0) {
      lines.push({ wall: at, at: start[axis], sign: stepOf(heading + 1)[axis] as 1 | -1 });
    } else {
      const before = walls[(at + walls.length - 1) % walls.length]!.corner;
      const insides = (before === 'inside' ? 1 : 0) + (corner === 'inside' ? 1 : 0);
      links.push({ wall: at, sign: stepOf(heading)[axis] as 1 | -1, insides });
    }
  }
  return { lines, links };
}

export function poseRoom(job: Job, outline: RoomOutline, { border }: Partial<Motifs>): RoomProblem {
  const { strip, pitch, atDoors } = job.roomBorder!;
  const taped = border!.made === 'tape';
  const doors = (job.site.doors ?? []).map((door, number) => ({ ...door, number }));
  return {
    outline,
    chains: [chainOf(outline, 0), chainOf(outline, 1)],
    tape: tapeOf(job.system, job.step),
    width: job.border.width,
    strip,
    stretch: job.border.stretch,
    ratio: taped ? 'plain' : border!.ratio,
    even: !taped && border!.lines.across.mirrors.length === 0 && job.border.run === 'reverse',
    pitch,
    doors: atDoors === 'stop' ? doors : [],
    clear: DOOR_CLEAR[job.system],
  };
}

/** The length of a run between its corners, mm, from where the two lines lie. */
export const runLength = ({ sign, insides }: Link, from: number, to: number, width: number): number =>
  sign * (to - from) - insides * width;
