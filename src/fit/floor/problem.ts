import type { Point } from '../../geometry/path.ts';
import type { Job, Range, Wall } from '../../job/job.ts';
import { type FloorRoom, type Reach, reachesOf } from '../../site/floor-room.ts';
import { isClear } from '../../site/largest.ts';
import { outlineOf } from '../../site/walls.ts';
import { DEFAULT_PITCH, MOST_REPEATS, OPEN_PITCH, waysOf } from '../pose.ts';
import type { Motifs } from '../problem.ts';
import { type Tape, tapeOf } from '../tape.ts';
import type { Way } from '../ways.ts';

/** One direction of a floor. Lengths in mm. */
export interface FloorAxis {
  /** The walls that it ends at, as they lie from the centre line between them. */
  walls: [Reach, Reach];
  pitch: Range;
  /** Half-repeats that are laid, the cut ones at the walls among them. */
  halves: { from: number; to: number };
  /** Pieces in one repeat that the eye counts, such as the squares of a checkerboard. */
  pieces: number;
  /** Ways to land on whole repeats by `halves % 4`. */
  ways: Way[][];
}

export interface FloorProblem {
  tape: Tape;
  across: FloorAxis;
  along: FloorAxis;
  /** Motif's own ratio of along-pitch to across-pitch, and how far it may be pulled. */
  ratio: number;
  stretch: Range;
  /** Whether what stands in the middle, of so many repeats, lies inside the room and clear of what is in it. */
  middleFits(pitch: { across: number; along: number }): boolean;
}

const WALLS: Record<'across' | 'along', [Wall, Wall]> = { across: ['left', 'right'], along: ['near', 'far'] };

const farthest = ([one, other]: [Reach, Reach]): number => Math.max(one.most, other.most);

/** The pitches that a number of repeats leaves open: with one less on either side they would not reach both walls. */
function pitchFor(repeats: Range, walls: [Reach, Reach]): Range {
  const reach = farthest(walls);
  return { from: (2 * reach) / repeats.to, to: repeats.from > 2 ? (2 * reach) / (repeats.from - 2) : 4 * reach };
}

/** What the job says of the pitch, this way first and the other way through the stretch; else what is usual. */
function pitches(job: Job, walls: Record<'across' | 'along', [Reach, Reach]>, ratio: number) {
  const { field, system } = job;
  const { from: least, to: most } = field.stretch;
  const given = (way: 'across' | 'along'): Range | undefined => {
    const repeats = field.repeats[way];
    return field.pitch[way] ?? (repeats && pitchFor(repeats, walls[way]));
  };
  const across = given('across');
  const along = given('along');
  const x = across ?? (along ? OPEN_PITCH : DEFAULT_PITCH[system]);
  const y = along ?? OPEN_PITCH;
  const narrowed = (range: Range, from: number, to: number): Range => ({
    ...range,
    from: Math.max(range.from, from * (1 - 1e-9)),
    to: Math.min(range.to, to * (1 + 1e-9)),
  });
  return {
    across: narrowed(x, y.from / (ratio * most), y.to / (ratio * least)),
    along: narrowed(y, x.from * ratio * least, x.to * ratio * most),
  };
}

export function poseFloor(job: Job, floor: FloorRoom, motifs: Motifs): FloorProblem {
  const { field } = motifs;
  const reaches = reachesOf(floor.painted);
  const walls = {
    across: WALLS.across.map((wall) => reaches[wall]) as [Reach, Reach],
    along: WALLS.along.map((wall) => reaches[wall]) as [Reach, Reach],
  };
  const pitch = pitches(job, walls, field.ratio);
  const axis = (way: 'across' | 'along'): FloorAxis => {
    const repeats = job.field.repeats[way];
    return {
      walls: walls[way],
      pitch: pitch[way],
      halves: repeats
        ? { from: Math.ceil(2 * repeats.from - 1e-9), to: Math.floor(2 * repeats.to + 1e-9) }
        : { from: 1, to: 2 * MOST_REPEATS },
      pieces: field.counts?.[way] ?? 1,
      ways: waysOf(job, motifs, way).map((ways) => ways.filter(({ edge }) => edge === 'whole')),
    };
  };
  const outline = outlineOf(floor.painted);
  const blocked = floor.obstacles.map((obstacle): Point[] => obstacle.outline);
  return {
    tape: tapeOf(job.system, job.step),
    across: axis('across'),
    along: axis('along'),
    ratio: field.ratio,
    stretch: job.field.stretch,
    middleFits({ across, along }) {
      if (!job.medallion) return true;
      const [right, bottom] = [(job.medallion.repeats.across * across) / 2, (job.medallion.repeats.along * along) / 2];
      return isClear({ left: -right, right, top: -bottom, bottom }, outline, blocked);
    },
  };
}
