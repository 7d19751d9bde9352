import { DRAWN } from '../claim.ts';
import { cornerCount, isStraight, type Outline } from '../read/outline.ts';
import type { Painted } from '../read/plan.ts';
import { loadClipping } from './clipping.ts';
import { flat } from './flat.ts';
import { MIRROR_ACROSS, moveOutline } from './move.ts';
import { type Facing, faced, facing, type Ring, SIDES } from './ring.ts';
import { moved, overlaps } from './window.ts';

/** The straight end of a band, square to the run of its side. */
interface End {
  part: string;
  /** Across the border. */
  from: number;
  to: number;
  /** Where its flanks, drawn on, reach the line where repeats, or side and corner, meet. */
  onward: [from: number, to: number];
  /** Whether each flank is a curve. */
  bends: [from: boolean, to: boolean];
  /** How far it stops short of that line, mm. */
  short: number;
}

/** What was found where sides meet corners. */
export interface Joins {
  /** Bands that run on from repeat to repeat and must run on into the corners. */
  bands: number;
  /** Ends of bands that nothing meets, on either side of a join. */
  loose: string[];
  /** The widest step, gap or overlap, beyond what parts two repeats of the side, mm. */
  off: number;
  says: string;
  /** How far the bands of corners stop short of the lines where sides end, mm. */
  shorts: number[];
}

/** How much the rib of ground that parts repeats may be drawn out or in with its side, as a share of it: 15 % of half of it. */
const DRAWN_OUT = 0.08;
/** How far from the line an end may lie, as a share of the border: a rib of ground may part repeats. */
const REACH = 0.06;
/** Straight sides shorter than this are no ends of bands, mm. */
const LEAST = 0.5;
const UPRIGHT = 0.01;
/** A flank steeper than this leads nowhere. */
const STEEPEST = 4;
/** Ends of one repeat lie this near to one line, mm. */
const ALIKE = 0.2;
/** How far a band whose flank is a curve may bend over the rib that parts two repeats, as a share of it: 15 % of half of it. */
const BEND = 0.05;

/** Follows every band of every side across the line where the side ends and the corner begins. */
export async function lookAtJoins(ring: Ring): Promise<Joins> {
  const found: Joins = { bands: 0, loose: [], off: 0, says: '', shorts: [] };
  for (const side of SIDES) {
    const view = facing(ring, side);
    const corners = faced(ring.corners, side);
    for (const end of ['right', 'left'] as const) {
      const turn = (pieces: Painted[]) =>
        end === 'right'
          ? pieces
          : pieces.map((piece) => ({ ...piece, outline: moveOutline(piece.outline, MIRROR_ACROSS) }));
      await join(found, ring, { ...view, pieces: turn(view.pieces) }, turn(corners), `${side} side`);
    }
  }
  worse(
    found,
    Math.max(0, Math.max(...found.shorts) - Math.min(...found.shorts)),
    'corners that stand nearer to one side than to another',
  );
  return found;
}

async function join(found: Joins, ring: Ring, side: Facing, corners: Painted[], name: string): Promise<void> {
  const line = side.length / 2;
  const pitch = side.length / side.count;
  const reach = REACH * ring.width;
  const box = {
    left: line - DRAWN,
    right: line + ring.width + DRAWN,
    top: side.top - DRAWN,
    bottom: side.top + ring.width + DRAWN,
  };
  const corner = corners.filter(({ outline: { frame } }) => overlaps(frame, box));
  const all = endsAt(side.pieces, line, reach, 1);
  // Those that lie farther from the line than others are flanks of what runs beside it.
  const first = Math.min(...all.map(({ short }) => short));
  const ends = all.filter(({ short }) => short <= first + ALIKE);
  const met = endsAt(corner, line, reach, -1);
  // What follows on the side itself, one repeat back; with a single repeat, or at a reversal, its own mirror image.
  const back = endsAt(side.pieces, line - pitch, reach, -1);
  const depths: number[] = [];
  const isLone = side.count === 1 || (ring.run === 'reverse' && side.count === 2);
  for (const end of ends) {
    const next = back.find((other) => runsOn(end, other)) ?? (isLone && back.length === 0 ? end : undefined);
    if (!next) continue;
    found.bands += 1;
    const rib = end.short + next.short;
    const other = nearest(end, met);
    if (!other) {
      found.loose.push(`the ${end.part} band at the end of the ${name}`);
      continue;
    }
    met.splice(met.indexOf(other), 1);
    depths.push(other.short);
    const step = stepBetween(end, other, rib);
    // The rib of ground is drawn out with its side and not with the corner; but it is as wide at every corner.
    const gap = Math.abs(end.short + other.short - rib) - DRAWN_OUT * rib;
    found.shorts.push(other.short);
    worse(found, Math.max(step, gap), `the ${end.part} band at the end of the ${name}`);
  }
  // What else of the corner lies as near to the line as its bands is a band that nothing meets.
  for (const end of met.filter(({ short }) => depths.some((depth) => Math.abs(depth - short) <= ALIKE)))
    found.loose.push(`the ${end.part} band of the corner beside the ${name}`);
  worse(found, await overlapOf(side.pieces, corner, line), `paint of the ${name} and its corner`);
}

function worse(found: Joins, off: number, says: string): void {
  if (off <= found.off) return;
  found.off = off;
  found.says = says;
}

/** How far the flanks of two ends lie apart, as they are or drawn on to where they would meet, mm. */
function stepBetween(one: End, other: End, rib: number): number {
  const plain = [one.from - other.from, one.to - other.to];
  const onward = [one.onward[0] - other.onward[0], one.onward[1] - other.onward[1]];
  const bend = (at: 0 | 1) => (one.bends[at] || other.bends[at] ? BEND * rib : 0);
  return Math.max(...([0, 1] as const).map((at) => Math.min(Math.abs(plain[at]!) - bend(at), Math.abs(onward[at]!))));
}

const runsOn = (one: End, other: End): boolean =>
  one.part === other.part && Math.min(one.to, other.to) - Math.max(one.from, other.from) > 0.5 * (one.to - one.from);

const nearest = (end: End, others: readonly End[]): End | undefined =>
  others
    .filter((other) => runsOn(end, other))
    .sort((a, b) => Math.abs(a.from - end.from) - Math.abs(b.from - end.from))[0];

/** Straight upright sides within reach of a line, whose paint lies to the left (`1`) or to the right (`-1`) of them. */
function endsAt(pieces: readonly Painted[], line: number, reach: number, towards: 1 | -1): End[] {
  const found: End[] = [];
  for (const { part, outline } of pieces) {
    const { frame, corners, area } = outline;
    if (frame.right < line - reach || frame.left > line + reach) continue;
    const n = cornerCount(outline);
    for (let i = 0; i < n; i++) {
      const j = (i + 1) % n;
      const [x0, y0, x1, y1] = [corners[2 * i]!, corners[2 * i + 1]!, corners[2 * j]!, corners[2 * j + 1]!];
      if (!isStraight(outline, i) || Math.abs(x1 - x0) > UPRIGHT || Math.abs(y1 - y0) < LEAST) continue;
      // An outline that runs clockwise on the page has its paint on the left of sides that run down.
      const faces = y1 > y0 === area > 0 ? 1 : -1;
      const short = towards * (line - (x0 + x1) / 2);
      if (faces !== towards || short <= -reach || short >= reach) continue;
      const flanks = [(i + n - 1) % n, j] as const;
      const [a, b] = [drawnOn(outline, i, flanks[0], line), drawnOn(outline, j, flanks[1], line)];
      const [c, d] = flanks.map((flank) => !isStraight(outline, flank));
      const end = { part, from: Math.min(y0, y1), to: Math.max(y0, y1), short };
      found.push({ ...end, onward: y0 < y1 ? [a, b] : [b, a], bends: y0 < y1 ? [c!, d!] : [d!, c!] });
    }
  }
  return found;
}

/** How far beyond its end a curve is followed, as a share of its run. */
const BEYOND = 0.6;

/** Where a cubic, followed on beyond one of its ends, reaches an upright line. */
function followedOn(xs: number[], ys: number[], end: 0 | 1, line: number): number | undefined {
  const at = ([a, b, c, d]: number[], t: number) => {
    const s = 1 - t;
    return s * s * s * a! + 3 * s * s * t * b! + 3 * s * t * t * c! + t * t * t * d!;
  };
  const slope = ([a, b, c, d]: number[], t: number) => {
    const s = 1 - t;
    return 3 * (s * s * (b! - a!) + 2 * s * t * (c! - b!) + t * t * (d! - c!));
  };
  let t: number = end;
  for (let step = 0; step < 20; step++) {
    const off = at(xs, t) - line;
    if (Math.abs(off) < 1e-9) break;
    t -= off / slope(xs, t);
    if (!(Math.abs(t - end) <= BEYOND)) return undefined;
  }
  return at(ys, t);
}

/** Where the flank that ends on a corner, drawn on as it runs there, reaches an upright line. `flank`: the side it is, by the corner before it. */
function drawnOn({ corners, handles }: Outline, corner: number, flank: number, line: number): number {
  const n = corners.length / 2;
  const [x, y] = [corners[2 * corner]!, corners[2 * corner + 1]!];
  const next = (flank + 1) % n;
  const end = flank === corner ? 0 : 1;
  if (!Number.isNaN(handles[4 * flank]!)) {
    const along = (way: 0 | 1) => [
      corners[2 * flank + way]!,
      handles[4 * flank + way]!,
      handles[4 * flank + 2 + way]!,
      corners[2 * next + way]!,
    ];
    const found = followedOn(along(0), along(1), end, line);
    if (found !== undefined) return found;
  }
  const other = flank === corner ? next : flank;
  const slope = (y - corners[2 * other + 1]!) / (x - corners[2 * other]!);
  return Math.abs(slope) <= STEEPEST ? y + slope * (line - x) : y;
}

/** How wide the strip is that side and corner both paint, mm. */
async function overlapOf(side: readonly Painted[], corner: readonly Painted[], line: number): Promise<number> {
  const { shared } = await loadClipping();
  let most = 0;
  for (const one of side.filter(({ outline: { frame } }) => frame.right > line - DRAWN)) {
    for (const other of corner) {
      if (!overlaps(moved(one.outline.frame, 0, 0), other.outline.frame, 0)) continue;
      const [a, b] = [[flat(one.outline)], [flat(other.outline)]];
      for (const wide of [DRAWN, 0.2, 1]) if (shared(a, b, wide / 2) > 0) most = Math.max(most, wide);
    }
  }
  return most;
}
