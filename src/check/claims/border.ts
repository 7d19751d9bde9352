import { type Claim, DRAWN, list, type Proof, stated, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { type Field, fieldOf, isInset } from '../measure/field.ts';
import { across, along, frameOf, outside } from '../measure/frame.ts';
import { lookAtJoins } from '../measure/joins.ts';
import { MIRROR_ACROSS, MIRROR_ALONG, type Move, moveOutline, placing } from '../measure/move.ts';
import { agreement, agrees, isField, Pattern, saysAgreement } from '../measure/pattern.ts';
import { facing, isOnRing, type Ring, ringsOf, SIDES, type Side } from '../measure/ring.ts';
import { type Run, runOf } from '../measure/side.ts';
import { overlaps } from '../measure/window.ts';
import { isTaped, type LayoutFile } from '../read/layout.ts';
import type { Frame } from '../read/outline.ts';
import type { Painted, Plan } from '../read/plan.ts';

const FILE = 'plan.svg';
/** How much more or less the repeats of one pair of sides may reach in or out than those of the other, drawn out otherwise, as a share of the border. */
const DRAWN_OUT = 0.002;
/** Pitches of two pairs of sides nearer to each other than this are the same, mm. */
const PITCHES_ALIKE = 1e-3;

export const proof: Proof = {
  claims: 'borders even on four sides, within their width, whole repeats, reversed or running round, corners alike',
  files: ['layout.json', 'plan.svg', 'template.svg'],
  method: 'frames, pitches and mirror images of the pieces of each side, measured on the outlines',
  tolerance: '0.05 mm; 0.2 % of the width where two pairs of sides differ in pitch',
};

/** Borders lie evenly round the work, whole repeats on every side, and the field lies evenly inside them. */
export default async function border(set: FileSet): Promise<Claim[]> {
  const [plan, layout] = [set.plan(), set.layout()];
  if (!plan.ok) return [unproven(FILE, 'the border is even on four sides', plan.says)];
  if (!layout.ok) return [unproven(FILE, 'the border is even on four sides', layout.says)];
  const rings = ringsOf(plan.value, layout.value);
  const field = await fieldOf(set);
  const claims = [strips(plan.value, layout.value, field.ok ? field.value : undefined), ...stray(plan.value, rings)];
  for (const ring of rings) claims.push(...(await band(ring, layout.value)));
  return claims;
}

/** Distances of a frame from the four edges of another: near, far, left, right. */
const margins = (frame: Frame, outer: Frame): number[] => [
  outer.bottom - frame.bottom,
  frame.top - outer.top,
  frame.left - outer.left,
  outer.right - frame.right,
];

const spread = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);

/** How far an edge is from the nearest line where two repeats meet, mm; `at` is the middle of any repeat. */
const offBoundary = (edge: number, at: number, pitch: number): number => {
  const steps = (edge - at) / pitch - 0.5;
  return Math.abs(steps - Math.round(steps)) * pitch;
};

/**
 * The strip between the edge of the work and the field is as wide as border and reserve. A motif without a mirror one way may stand in its cell as it
 * likes that way; its cells then end where the field does.
 */
function strips({ painted, ground }: Plan, { layout }: LayoutFile, measured: Field | undefined): Claim {
  const field = painted.filter(isField);
  if (!field.some((piece) => !isInset(piece)))
    return unproven(FILE, 'the field lies evenly inside the work', 'no field is painted');
  const work = frameOf(ground.map((outline) => outline.frame));
  // Insets show the symmetry they have by themselves; only what stands round them is even for certain.
  const around = field.filter((piece) => !isInset(piece));
  const found = margins(frameOf(around.map((piece) => piece.outline.frame)), work);
  const all = margins(frameOf(field.map((piece) => piece.outline.frame)), work);
  const along = layout.border + layout.reserve.along;
  const across = layout.border + layout.reserve.across;
  const due = [along, along, across, across];
  // A motif drawn clear of its cell stands a little farther in, alike on opposite sides; it never stands farther out.
  const { pitch } = layout;
  const laid = measured?.laid ?? [];
  const evenAlong =
    measured?.mirrors.along === false && laid.length > 0
      ? laid.some(({ y }) => offBoundary(work.bottom - along, y, pitch.along) <= DRAWN)
      : spread(found.slice(0, 2)) <= DRAWN;
  const evenAcross =
    measured?.mirrors.across === false && laid.length > 0
      ? laid.some(({ x }) => offBoundary(work.left + across, x, pitch.across) <= DRAWN)
      : spread(found.slice(2)) <= DRAWN;
  const holds = evenAlong && evenAcross && all.every((at, i) => at >= due[i]! - DRAWN);
  return stated(FILE, 'the field lies evenly inside the work', holds, list(found), `${list(due)}, to ${DRAWN}`);
}

/** Nothing is painted of a border that the layout does not have. */
function stray({ painted }: Plan, rings: Ring[]): Claim[] {
  return (['border', 'inner'] as const).flatMap((order): Claim[] => {
    if (rings.some((ring) => ring.order === order)) return [];
    const corner = order === 'border' ? 'corner' : 'inner-corner';
    const count = painted.filter(
      (piece) => isOnRing(piece) && (piece.element === corner || piece.element.startsWith(`${order}-`)),
    ).length;
    const claim = order === 'border' ? 'there is no border' : 'there is no inner border';
    return [stated(FILE, claim, count === 0, `${count} pieces`, 'none')];
  });
}

async function band(ring: Ring, file: LayoutFile): Promise<Claim[]> {
  const { name, sides, outer: edge, width } = ring;
  const bare = SIDES.find((side) => sides[side].length === 0 && !isCleared(ring, side));
  if (bare) return [unproven(FILE, `the ${name} is even on four sides`, `nothing is painted on the ${bare} side`)];
  const frames = SIDES.map((side) => frameOf(sides[side].map((piece) => piece.outline.frame)));
  // A side all of which made way for lettering is as even as the one that faces it.
  const measured = (of: (frame: Frame, at: number) => number) => {
    const values = frames.map(of);
    return values.map((value, at) => (Number.isFinite(value) ? value : values[at === 0 ? 1 : 0]!));
  };
  const outer = measured((frame, at) => margins(frame, edge)[at]!);
  const inner = measured((frame, at) => depth(frame, edge, at));
  // Two pairs of sides have pitches of their own, which may show a little in how far slanting shapes reach in, and, where those
  // stand clear of the edge, in how far they reach out; the band itself then lies as far in all round.
  const pairs = [outer, inner].flatMap((found) => [found.slice(0, 2), found.slice(2)]);
  const [short, long] = (['near', 'left'] as const).map((side) => facing(ring, side));
  const isDrawnOut = Math.abs(short!.length / short!.count - long!.length / long!.count) > PITCHES_ALIKE;
  const reach = isDrawnOut ? DRAWN + DRAWN_OUT * width : DRAWN;
  const middles = outer.map((at, i) => (at + inner[i]!) / 2);
  const isClear = Math.min(...outer) > DRAWN && spread(middles) <= DRAWN;
  const even =
    Math.max(...pairs.map(spread)) <= DRAWN && spread(inner) <= reach && spread(outer) <= (isClear ? reach : DRAWN);
  const keeps = Math.min(...outer) >= -DRAWN && Math.max(...inner) <= width + DRAWN;
  const says = `from ${list(outer)} to ${list(inner)}`;
  return [
    stated(FILE, `the ${name} is even on four sides`, even, says, `alike to ${DRAWN}`),
    stated(FILE, `the ${name} keeps to its width`, keeps, Math.max(...inner), width),
    ...runs(ring, file),
    ...(ring.turn === 'butt' ? [through(ring)] : [corners(ring)]),
    ...(ring.turn === 'own' || ring.turn === 'mitre' ? await joins(ring) : []),
  ];
}

/** Whether lettering took the whole of a side. */
function isCleared(ring: Ring, side: Side): boolean {
  const room = ring.rooms[side];
  return room !== undefined && across(room) >= facing(ring, side).length - DRAWN;
}

/** How far a side's pieces reach in from their own edge. */
const depth = (frame: Frame, edge: Frame, at: number): number =>
  [edge.bottom - frame.top, frame.bottom - edge.top, frame.right - edge.left, edge.right - frame.left][at]!;

/** Whole repeats on every side, reversed at its centre or running round, and the symmetry that follows from it. */
function runs(ring: Ring, file: LayoutFile): Claim[] {
  const taped = SIDES.filter((side) => ring.sides[side].every((piece) => isTaped(piece, file.taped)));
  const sides = SIDES.filter((side) => !isCleared(ring, side));
  if (taped.length === SIDES.length) return [...sides.map((side) => reaches(ring, side)), ...mirrors(ring)];
  const found = new Map(sides.map((side) => [side, runOf(facing(ring, side))]));
  // Sides of one motif have as many equal parts to a repeat, however many those are.
  const parts = Math.min(...[...found.values()].filter(({ way }) => way !== 'neither').map((run) => run.parts));
  const round = ring.run === 'round' && [...found.values()].every(({ way, mirrors }) => way === 'onward' && !mirrors);
  return [
    ...sides.map((side) => wholeRepeats(ring, side, found.get(side)!, parts)),
    ...sides.flatMap((side) => direction(ring, side, found.get(side)!)),
    ...(round ? turns(ring) : mirrors(ring)),
  ];
}

/** Bands masked with tape reach from one end of the side to the other, or to the room of lettering there. */
function reaches(ring: Ring, side: Side): Claim {
  const { pieces, length, room } = facing(ring, side);
  const half = length / 2;
  const [left, right] = room ? [room.left, room.right] : [half, -half];
  const reach = ([from, to]: [number, number], [due, end]: [number, number]) =>
    Math.max(Math.abs(from - due), Math.abs(to - end));
  const off = Math.max(
    ...pieces.map(({ outline: { frame } }) => {
      const ends: [number, number] = [frame.left, frame.right];
      return Math.min(reach(ends, [-half, left]), reach(ends, [right, half]));
    }),
  );
  const what = ring.turn === 'block' ? 'from corner block to corner block' : 'from end to end';
  const claim = `the band${ring.order === 'inner' ? ' of the inner border' : ''} reaches ${what} on the ${side} side`;
  return stated(FILE, claim, off <= DRAWN, off, DRAWN);
}

function wholeRepeats(ring: Ring, side: Side, run: Run, parts: number): Claim {
  const due = facing(ring, side).count;
  const claim = `whole ${ring.name} repeats on the ${side} side`;
  const allowed = parts > 1 && Number.isFinite(parts) ? `${due} whole, of ${parts} equal parts` : `${due} whole`;
  if (run.way !== 'neither' && ring.rooms[side] !== undefined) {
    // So few may be left beside the lettering that they would fit smaller parts as well.
    return stated(FILE, claim, run.parts >= parts, 'whole on either side of the lettering', allowed);
  }
  const isWhole = run.way !== 'neither' && (run.isAlone || run.parts === parts);
  return stated(FILE, claim, isWhole, isWhole && run.isAlone ? `${due} whole` : run.says, allowed);
}

/** A border that runs one way reverses at the centre of each side, or runs round. */
function direction({ name, run: due }: Ring, side: Side, { way, mirrors, mirrored }: Run): Claim[] {
  if (way === 'neither' || (way === 'onward' && mirrors)) return [];
  const says = way === 'reversed' ? saysAgreement(mirrored) : 'it runs on over the centre';
  if (due === 'reverse') {
    const claim = `the ${name} reverses at the centre of the ${side} side`;
    return [stated(FILE, claim, way === 'reversed', says, DRAWN)];
  }
  const claim = `the ${name} runs on from end to end of the ${side} side`;
  return [stated(FILE, claim, way === 'onward', way === 'onward' ? 'it does' : 'it reverses', 'it does')];
}

const LINES = [
  ['the centre line along', MIRROR_ACROSS],
  ['the centre line across', MIRROR_ALONG],
] as const;

const groups = ({ name, order, turn, sides, corners }: Ring): [what: string, pieces: Painted[]][] => {
  const block = turn === 'block' ? 'corner blocks' : 'corners';
  return [
    [`the ${name}`, SIDES.flatMap((side) => sides[side])],
    [order === 'border' ? `the ${block}` : `the ${block} of the ${name}`, corners],
  ];
};

function mirrors(ring: Ring): Claim[] {
  return groups(ring).flatMap(([what, pieces]) => {
    if (pieces.length === 0) return [];
    const pattern = new Pattern(pieces);
    const verb = what.startsWith('the corner') ? 'mirror' : 'mirrors';
    const kept = (move: Move) => comparable(pieces, move, ring);
    return LINES.map(([line, move]) => compare(`${what} ${verb} about ${line}`, kept(move), pattern, move));
  });
}

/** A border that runs round comes onto itself by half a turn; round a square, by a quarter. */
function turns(ring: Ring): Claim[] {
  const { outer, repeats } = ring;
  const isSquare = Math.abs(across(outer) - along(outer)) <= DRAWN && repeats.across === repeats.along;
  return groups(ring).flatMap(([what, pieces]) => {
    if (pieces.length === 0) return [];
    const pattern = new Pattern(pieces);
    const turn = (by: string, move: Move) =>
      compare(`${by} a turn brings ${what} onto itself`, comparable(pieces, move, ring), pattern, move);
    return [turn('half', placing(2, 0, 0)), ...(isSquare ? [turn('a quarter of', placing(1, 0, 0))] : [])];
  });
}

/** Pieces that lettering leaves a partner: those that do not come to lie in its room, nor beside one room and opposite none. */
function comparable(pieces: Painted[], move: Move, { rooms }: Ring): Painted[] {
  const all = Object.values(rooms);
  if (all.length === 0) return pieces;
  const beside = (frame: Frame, by: number) => all.some((room) => overlaps(frame, room, by));
  return pieces.filter(({ outline }) => {
    const there = moveOutline(outline, move).frame;
    return !beside(there, DRAWN) && (!beside(outline.frame, -DRAWN) || beside(there, -DRAWN));
  });
}

function compare(claim: string, pieces: Painted[], pattern: Pattern, move: Move): Claim {
  const found = agreement(pieces, pattern, move);
  return stated(FILE, claim, agrees(found), saysAgreement(found), DRAWN);
}

/** Four corners, each inside its own square. */
function corners({ name, order, turn, corners: pieces, width, outer }: Ring): Claim {
  const found = { 'near left': 0, 'near right': 0, 'far left': 0, 'far right': 0 } as Record<string, number>;
  let out = 0;
  for (const { outline } of pieces) {
    const { left, right, top, bottom } = outline.frame;
    const across = left + right < outer.left + outer.right ? 'left' : 'right';
    const along = top + bottom < outer.top + outer.bottom ? 'far' : 'near';
    found[`${along} ${across}`]! += 1;
    const block = {
      left: across === 'left' ? outer.left : outer.right - width,
      right: across === 'left' ? outer.left + width : outer.right,
      top: along === 'far' ? outer.top : outer.bottom - width,
      bottom: along === 'far' ? outer.top + width : outer.bottom,
    };
    out = Math.max(out, outside(outline.frame, block));
  }
  const counts = Object.values(found);
  const alike = counts.every((count) => count === counts[0]);
  const measured = alike ? `${counts[0]} pieces each, ${out.toFixed(3)} mm out` : `${counts.join(', ')} pieces`;
  const what = turn === 'block' ? 'corner block' : 'corner';
  const claim = `every ${what}${order === 'inner' ? ` of the ${name}` : ''} lies in its corner`;
  return stated(FILE, claim, alike && out <= DRAWN, measured, `as many in each, ${DRAWN} mm out`);
}

/** Two sides run through to the edge of the work, the others end on them; there is no corner. */
function through({ name, corners }: Ring): Claim {
  const claim = `the near and far sides of the ${name} run through and leave no corners`;
  return stated(FILE, claim, corners.length === 0, `${corners.length} pieces in corners`, 'none');
}

async function joins(ring: Ring): Promise<Claim[]> {
  const { bands, loose, off, says } = await lookAtJoins(ring);
  const where = ring.order === 'inner' ? ' of the inner border' : '';
  const claim = `sides${where} run on into their corners without a gap or an overlap`;
  const measured =
    loose.length > 0
      ? `${loose.length} ends meet nothing, such as ${loose[0]}`
      : `${bands} bands, ${off.toFixed(3)} mm${off > DRAWN ? ` at ${says}` : ''}`;
  const claims = [stated(FILE, claim, loose.length === 0 && off <= DRAWN, measured, DRAWN)];
  return ring.turn === 'mitre' ? [...claims, diagonal(ring)] : claims;
}

/** A corner cut on the diagonal is its own mirror image about it. */
function diagonal({ corners, outer, width, order, name }: Ring): Claim {
  const half = width / 2;
  const middles = [
    [outer.left + half, outer.top + half, 1],
    [outer.right - half, outer.bottom - half, 1],
    [outer.right - half, outer.top + half, -1],
    [outer.left + half, outer.bottom - half, -1],
  ] as const;
  const pattern = new Pattern(corners);
  const found = middles.map(([x, y, lean]) => {
    const own = corners.filter(({ outline: { frame } }) => {
      const [u, v] = [(frame.left + frame.right) / 2, (frame.top + frame.bottom) / 2];
      return Math.abs(u - x) <= half + DRAWN && Math.abs(v - y) <= half + DRAWN;
    });
    return agreement(own, pattern, [0, lean, lean, 0, x - lean * y, y - lean * x]);
  });
  const worst = found.sort((a, b) => b.apart - a.apart)[0]!;
  const claim = `every corner${order === 'inner' ? ` of the ${name}` : ''} mirrors about its diagonal`;
  return stated(FILE, claim, corners.length > 0 && agrees(worst), saysAgreement(worst), DRAWN);
}
