import type { Piece, Point, Ring } from '../../geometry/path.ts';
import { MOST_CORNERS } from '../limits.ts';
import type { Stroke } from '../marks/mark.ts';
import type { Place } from '../refusal.ts';
import type { Outline } from '../syntax/outline.ts';
import { type ClipperLibrary, type Path64, type Paths64, STEPS, toPath, toPieces } from './clipper.ts';
import { dashes } from './dash.ts';
import { capAt, joinAt, ROUND_STEPS } from './joins.ts';
import { strokeRings } from './stroke-rings.ts';
import { TooMuch } from './too-much.ts';
import { type Corner, stretchesOf, type Track, trackOf } from './track.ts';

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
  const n = points.length;
  const found = points.flatMap((at, i) => {
    const corner = corners[i];
    if (corner === undefined || (!closed && i === n - 1)) return [];
    // The chords beside a corner do not quite run as its sides do; a bevel between them leaves no slit.
    const chords: Corner = [points[(i + n - 1) % n]!, points[(i + 1) % n]!];
    return [joinAt(corner, at, half, join, limit), joinAt(chords, at, half, 'bevel', limit)];
  });
  if (!closed || n === 1) {
    found.push(capAt(points[1] ?? points[0]!, points[0]!, half, cap));
    if (n > 1) found.push(capAt(points.at(-2)!, points.at(-1)!, half, cap));
  }
  return found.filter((one) => one !== undefined);
}

/** The area that lines along outlines paint, about a page of 1000 units, as polygons: done on chords by clipper2. */
function chordPieces(outlines: Outline[], stroke: Stroke, library: ClipperLibrary, place: Place): Piece[] {
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
  return toPieces(library, Clipper.union(painted, FillRule.NonZero));
}

/** The area that lines paint: on curves of its own where that can be done, and in any case as polygons. */
export interface Stroked {
  rings?: Ring[];
  chords: Piece[];
}

export function stroked(outlines: Outline[], stroke: Stroke, library: ClipperLibrary, place: Place): Stroked {
  const chords = chordPieces(outlines, stroke, library, place);
  if (stroke.dashes.length > 0) return { chords };
  const rings = outlines.map((outline) => strokeRings(outline, stroke));
  return rings.every((one) => one !== undefined) ? { rings: rings.flat(), chords } : { chords };
}
