import type { Drawing, Element, Region } from '../compose/drawing.ts';
import { type Finish, metAlone } from '../compose/finish.ts';
import type { Motifs } from '../fit/problem.ts';
import { boxCentre } from '../geometry/measure.ts';
import { mirrored, turned } from '../geometry/transform.ts';
import type { Job } from '../job/job.ts';
import type { Drawn } from '../motif/motif.ts';
import { drawMotif } from '../motif/record.ts';
import { besideWall, type PlacedWall, type RoomOutline } from '../site/walls-outline.ts';
import { blockAt, drawBlocks } from './corners.ts';
import { cornerBox } from './footprint.ts';
import type { RoomLayout, WallRun } from './layout.ts';

/** A border's motif is drawn for the far side; a wall that runs right, seen from inside, is one. */
const SIDES = ['left', 'far', 'right', 'near'] as const;
const sideOf = ({ heading }: Pick<PlacedWall, 'heading'>): (typeof SIDES)[number] => SIDES[heading];
const turnsOf = ({ heading }: Pick<PlacedWall, 'heading'>): number => heading - 1;

/** A border that runs one way reverses at the middle of each wall, unless it is told to run round. */
export const reversesIn = (job: Pick<Job, 'border'>, { border }: Partial<Motifs>): boolean =>
  border!.made === 'sheet' && border!.lines.across.mirrors.length === 0 && job.border.run === 'reverse';

/** One repeat of this pitch, finished to stand beside others. */
function repeatAt(pitch: number, width: number, job: Job, { border }: Partial<Motifs>, finish: Finish): Drawn[] {
  const bare = drawMotif(border!, { across: pitch, along: width }, job.border.settings);
  const stands = { at: [0, 0], every: [pitch, Infinity] } as const;
  const held = finish.repeated([{ ...stands, drawn: finish.meeting([{ ...stands, drawn: bare }])[0]! }])[0]!;
  return finish.unit(held, 'motif');
}

/** One repeat of the border, as it is finished: of the first wall that has any. */
export function roomRepeat(layout: RoomLayout, job: Job, motifs: Partial<Motifs>, finish: Finish): Drawn[] {
  const run = layout.runs.find(({ repeats }) => repeats > 0);
  return run && motifs.border!.made === 'sheet' ? repeatAt(run.pitch, layout.width, job, motifs, finish) : [];
}

/** The border along the walls of a room, about the centre of the box round it. */
export async function composeRoom(
  outline: RoomOutline,
  layout: RoomLayout,
  job: Job,
  motifs: Partial<Motifs>,
  finish: Finish,
): Promise<Drawing> {
  const { width } = layout;
  const { walls, box } = outline;
  const { settings } = job.border;
  const known = new Map<number, Drawn[]>();
  const repeatOf = (pitch: number): Drawn[] => {
    const key = Math.round(pitch * 1e6);
    if (!known.has(key)) known.set(key, repeatAt(pitch, width, job, motifs, finish));
    return known.get(key)!;
  };
  const placed = (drawn: Drawn[], { wall, strip }: WallRun, along: number[], back = false): Region[] =>
    drawn.map(({ part, pieces }): Region => {
      const way = back ? pieces.map((piece) => mirrored(piece, 'across')) : pieces;
      return {
        element: `border-${sideOf(walls[wall]!)}` as Element,
        part,
        pieces: way.map((piece) => turned(piece, turnsOf(walls[wall]!))),
        cut: false,
        at: Float64Array.from(along.flatMap((at) => besideWall(walls[wall]!, at, strip + width / 2))),
      };
    });
  const regions = layout.runs.flatMap((run): Region[] => {
    if (motifs.border!.made === 'tape') {
      return run.bands.flatMap(([from, to]) =>
        placed(drawMotif(motifs.border!, { across: to - from, along: width }, settings), run, [(from + to) / 2]),
      );
    }
    const numbers = run.painted.flatMap(({ first, count }) => Array.from({ length: count }, (_, n) => first + n));
    const middle = (number: number) => run.from + (number + 0.5) * run.pitch;
    const halves = reversesIn(job, motifs)
      ? [numbers.filter((number) => number < run.repeats / 2), numbers.filter((number) => number >= run.repeats / 2)]
      : [numbers];
    return halves.flatMap((half, at) =>
      half.length === 0 ? [] : placed(repeatOf(run.pitch), run, half.map(middle), at === 1),
    );
  });
  const bare = await drawBlocks(job, motifs, width);
  const finished = (drawn: Drawn[]) => (bare.made === 'tape' ? drawn : finish.unit(metAlone(drawn, finish), 'motif'));
  const blocks = { ...bare, drawn: { inside: finished(bare.drawn.inside), outside: finished(bare.drawn.outside) } };
  for (const { wall, kind, painted } of layout.corners) {
    if (!painted) continue;
    const at = Float64Array.from(boxCentre(cornerBox(outline, layout, wall)));
    for (const { part, pieces } of blockAt(blocks, kind, walls[wall]!.heading))
      regions.push({ element: 'corner', part, pieces, cut: false, at });
  }
  return { work: box, border: { outer: box, inner: box }, field: box, regions };
}
