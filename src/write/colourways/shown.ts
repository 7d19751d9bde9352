import type { Drawing, Region } from '../../compose/drawing.ts';
import { clipPieces } from '../../geometry/clip.ts';
import { boxesMeet, piecesBox } from '../../geometry/measure.ts';
import type { Box, Piece, Point } from '../../geometry/path.ts';
import { shifted, shiftedBox } from '../../geometry/transform.ts';
import type { Job } from '../../job/job.ts';
import { regionText } from '../path.ts';
import { outlineBeyond } from '../room-border/ground.ts';

/** A work as it is seen when it is done, or a part of it, in the coordinates of its drawing, mm. */
export interface Shown {
  box: Box;
  ground: Piece[];
  regions: readonly Region[];
}

const ORIGIN = Float64Array.of(0, 0);

const polygon = ([start, ...others]: readonly Point[]): Piece => [
  { start: start!, sides: others.map((to) => ({ kind: 'line', to })) },
];

const rectangle = ({ left, top, right, bottom }: Box): Piece =>
  polygon([
    [left, top],
    [right, top],
    [right, bottom],
    [left, bottom],
  ]);

/** The ground of what is shown as path text. */
export const groundText = ({ ground }: Shown): string => regionText(ground, ORIGIN);

/** A floor ends at its walls although it is laid past them; the ground of a border along walls is the room. */
export async function shownWork(drawing: Drawing, job: Job): Promise<Shown> {
  const { work, regions } = drawing;
  if (job.surface === 'floor' || job.surface === 'room-border') {
    const { buildSite } = await import('../../site/build.ts');
    const site = buildSite(job);
    const { floor, outline } = site.ok ? site.value : {};
    if (outline) return { box: work, ground: [polygon(outlineBeyond(outline, 0))], regions };
    if (floor) {
      const { clipToPattern } = await import('../../compose/floor.ts');
      const clip = await clipToPattern(floor);
      return { box: piecesBox(clip.floor), ground: clip.floor, regions: clip.regions(regions) };
    }
  }
  return { box: work, ground: [rectangle(work)], regions };
}

const within = (inner: Box, outer: Box): boolean =>
  inner.left >= outer.left && inner.right <= outer.right && inner.top >= outer.top && inner.bottom <= outer.bottom;

/** What of it lies in a window. Shapes that the window cuts are cut; curves stay curves. */
export function shownThrough({ ground, regions }: Shown, window: Box): Shown {
  const cut = regions.flatMap((region): Region[] => {
    const box = piecesBox(region.pieces);
    const whole: number[] = [];
    const pieces: Piece[] = [];
    for (let n = 0; n < region.at.length; n += 2) {
      const [x, y] = [region.at[n]!, region.at[n + 1]!];
      const here = shiftedBox(box, x, y);
      if (within(here, window)) whole.push(x, y);
      else if (boxesMeet(here, window))
        pieces.push(
          ...clipPieces(
            region.pieces.map((piece) => shifted(piece, x, y)),
            window,
          ),
        );
    }
    return [
      ...(whole.length > 0 ? [{ ...region, at: Float64Array.from(whole) }] : []),
      ...(pieces.length > 0 ? [{ ...region, pieces, cut: true, at: ORIGIN }] : []),
    ];
  });
  return { box: window, ground: clipPieces(ground, window), regions: cut };
}
