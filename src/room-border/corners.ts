import { drawMitre } from '../compose/mitre.ts';
import type { Motifs } from '../fit/problem.ts';
import { loadBooleans } from '../geometry/booleans.ts';
import type { Piece, Point } from '../geometry/path.ts';
import { movePiece, reversedRing, shifted, turned } from '../geometry/transform.ts';
import type { Job } from '../job/job.ts';
import type { Drawn, Motif, Settings } from '../motif/motif.ts';
import { drawMotif, drawOwnCorner } from '../motif/record.ts';
import type { RoomCorner } from './layout.ts';

/** Mirror image about the diagonal from the top right to the bottom left. */
const transposed = (piece: Piece): Piece => movePiece(piece, ([x, y]) => [-y, -x]).map(reversedRing);

const triangle = (points: [Point, Point, Point]): Piece => [
  { start: points[0], sides: [points[1], points[2], points[0]].map((to) => ({ kind: 'line', to })) },
];

/**
 * A mitre round an outside corner, about the centre of its block: the border comes down from above with the wall to its right and goes on to the
 * right with the wall above it. The cut runs from the corner of the wall, at the top right, to the bottom left.
 */
async function drawOutsideMitre(motif: Motif, settings: Settings, size: number): Promise<Drawn[]> {
  const { unite, intersect } = await loadBooleans();
  const half = size / 2;
  const count = motif.made === 'tape' ? 1 : Math.max(1, Math.round(1 / motif.ratio));
  const pitch = size / count;
  const onward = triangle([
    [half, -half],
    [half, half],
    [-half, half],
  ]);
  const runs = Array.from({ length: count }, (_, i) => (i + 0.5) * pitch - half);
  return drawMotif(motif, { across: pitch, along: size }, settings).map(({ part, pieces }) => {
    const cut = intersect(
      runs.flatMap((run) => pieces.map((piece) => shifted(piece, run, 0))),
      [onward],
    );
    return { part, pieces: unite(cut, cut.map(transposed)) };
  });
}

/** The blocks of a room, each drawn for one heading of the wall that leads to it; other headings are quarter turns of it. */
export interface Blocks {
  drawn: Record<RoomCorner['kind'], Drawn[]>;
  /** The heading for which it is drawn. */
  heading: Record<RoomCorner['kind'], number>;
  made: Motif['made'];
}

export async function drawBlocks(job: Pick<Job, 'border'>, motifs: Partial<Motifs>, size: number): Promise<Blocks> {
  const { settings, corner, turn } = job.border;
  const border = motifs.border!;
  const heading = { inside: 0, outside: 2 };
  if (turn === 'block') {
    const block = motifs.corner ? drawMotif(motifs.corner, { across: size, along: size }, corner.settings) : [];
    return { drawn: { inside: block, outside: block }, heading, made: motifs.corner?.made ?? 'tape' };
  }
  const outside = await drawOutsideMitre(border, settings, size);
  const inside = turn === 'own' ? drawOwnCorner(border, size, settings) : await drawMitre(border, settings, size);
  return { drawn: { inside, outside }, heading, made: border.made };
}

/** The pieces of a block as they lie at the end of a wall with this heading. */
export const blockAt = ({ drawn, heading }: Blocks, kind: RoomCorner['kind'], wallHeading: number): Drawn[] =>
  drawn[kind].map(({ part, pieces }) => ({
    part,
    pieces: pieces.map((piece) => turned(piece, wallHeading - heading[kind])),
  }));
