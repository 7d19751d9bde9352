import type { Piece, Point } from '../../geometry/path.ts';
import { MOST_CORNERS } from '../limits.ts';
import type { Stroke } from '../marks/mark.ts';
import type { Place } from '../refusal.ts';
import type { Outline } from '../syntax/outline.ts';
import { type ClipperLibrary, type Path64, type Paths64, STEPS, toPath, toPieces } from './clipper.ts';
import { dashes } from './dash.ts';
import { fitPieces } from './fit.ts';
import { capAt, joinAt, ROUND_STEPS } from './joins.ts';
import { TooMuch } from './shaper.ts';
import { stretchesOf, type Track, trackOf } from './track.ts';

const positive = (path: Path64, { Clipper }: ClipperLibrary): Path64 =>
  Clipper.area(path) < 0 ? path.reverse() : path;

/** What a smooth stretch paints, its ends cut square. */
function stretchPaths(points: Point[], half: number, { ClipperOffset, EndType, JoinType }: ClipperLibrary): Paths64 {
  const offset = new ClipperOffset(2, half * STEPS * (1 - Math.cos(Math.PI / ROUND_STEPS)));
  offset.addPath(toPath(points), JoinType.Round, EndType.Butt);
  const grown: Paths64 = [];
  offset.execute(half * STEPS, grown);
  return grown;
}

/** What is laid over the stretches of a track at its corners and ends. */
function joinsAndCaps({ points, closed, corners }: Track, half: number, { join, limit, cap }: Stroke): Point[][] {
  const found = points.map((at, i) => {
    const corner = corners[i];
    return corner && (closed || i < points.length - 1) ? joinAt(corner, at, half, join, limit) : undefined;
  });
  if (!closed || points.length === 1) {
    found.push(capAt(points[1] ?? points[0]!, points[0]!, half, cap));
    if (points.length > 1) found.push(capAt(points.at(-2)!, points.at(-1)!, half, cap));
  }
  return found.filter((one) => one !== undefined);
}

/**
 * The area that lines along outlines paint, about a page of 1000 units. Done on chords by clipper2; the curves are then fitted again,
 * within `NEAR` of what the chords give.
 */
export function strokePieces(outlines: Outline[], stroke: Stroke, library: ClipperLibrary, place: Place): Piece[] {
  const { Clipper, FillRule } = library;
  const half = stroke.width / 2;
  const tracks = outlines
    .map(trackOf)
    .flatMap((track) => (stroke.dashes.length === 0 ? [track] : dashes(track, stroke.dashes, stroke.offset, place)));
  if (tracks.reduce((sum, track) => sum + track.points.length, 0) > MOST_CORNERS) throw new TooMuch('curves');
  const painted: Paths64 = [];
  for (const track of tracks) {
    if (track.points.length > 1) {
      for (const stretch of stretchesOf(track))
        for (const path of stretchPaths(stretch, half, library)) painted.push(path);
    }
    for (const points of joinsAndCaps(track, half, stroke)) painted.push(positive(toPath(points), library));
  }
  return fitPieces(toPieces(library, Clipper.union(painted, FillRule.NonZero)));
}
