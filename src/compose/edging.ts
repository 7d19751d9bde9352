import type { Piece } from '../geometry/path.ts';
import { mirrored, turned } from '../geometry/transform.ts';
import type { Drawn, Part } from '../motif/motif.ts';
import { drawMotif } from '../motif/record.ts';
import type { Edging } from './around.ts';
import { composeCorners } from './corners.ts';
import type { Element, Region } from './drawing.ts';
import { asDrawn } from './finish.ts';
import { type Side, sidesOf } from './sides.ts';

/** The parts of a second border have names of their own, so that it can have colours of its own. */
const INNER: Partial<Record<Part, Part>> = {
  border: 'inner-border',
  'border-alternate': 'inner-border-alternate',
  corner: 'inner-border',
  'corner-alternate': 'inner-border-alternate',
};

/** A border without a mirror across its run reverses at the centre of each side, unless it is told to run round. */
const reverses = ({ motif, run }: Edging): boolean =>
  motif.made === 'sheet' && motif.lines.across.mirrors.length === 0 && run === 'reverse';

/** Middles of `count` equal lengths, from the middle of the whole. */
const middles = (length: number, count: number): number[] =>
  Array.from({ length: count }, (_, i) => ((i + 0.5) / count - 0.5) * length);

/** One side: its repeats, or one piece as long as the side where it is masked with tape. */
function composeSide(edging: Edging, { name, turns, middle, onward, length }: Side): Region[] {
  const { order, motif, settings, width, repeats, finish = asDrawn } = edging;
  const wanted = repeats[name === 'near' || name === 'far' ? 'across' : 'along'];
  const count = motif.made === 'tape' ? Math.min(wanted, 1) : wanted;
  if (count < 1 || length <= 0) return [];
  const bare = drawMotif(motif, { across: length / count, along: width }, settings);
  const held = (unit: Drawn[], pitch: number) => {
    const stands = { at: [0, 0], every: [pitch, Infinity] } as const;
    return finish.repeated([{ ...stands, drawn: finish.meeting([{ ...stands, drawn: unit }])[0]! }])[0]!;
  };
  const drawn = motif.made === 'tape' ? bare : finish.unit(held(bare, length / count), 'motif');
  const runs = middles(length, count);
  const region = (pieces: Piece[], part: Part, at: number[]): Region => ({
    element: `${order}-${name}` as Element,
    part,
    pieces: pieces.map((piece) => turned(piece, turns)),
    cut: false,
    at: Float64Array.from(at.flatMap((run) => [middle[0] + onward[0] * run, middle[1] + onward[1] * run])),
  });
  return drawn.flatMap(({ part, pieces }): Region[] => {
    if (!reverses(edging)) return [region(pieces, part, runs)];
    const back = pieces.map((piece) => mirrored(piece, 'across'));
    return [region(pieces, part, runs.slice(0, count / 2)), region(back, part, runs.slice(count / 2))];
  });
}

/** The four sides of a border and its four corners. */
export async function composeEdging(edging: Edging): Promise<Region[]> {
  const sides = sidesOf(edging.outer, edging.width, edging.turn === 'butt');
  const regions = [...sides.flatMap((side) => composeSide(edging, side)), ...(await composeCorners(edging))];
  if (edging.order === 'border') return regions;
  return regions.map((region) => ({ ...region, part: INNER[region.part] ?? region.part }));
}
