import { type Claim, DRAWN, equal, type Proof, stated, unproven } from '../claim.ts';
import type { FileSet, Sheet } from '../file-set.ts';
import { loadCutParts } from '../measure/cut-parts.ts';
import { centre, Finder } from '../measure/finder.ts';
import { flat } from '../measure/flat.ts';
import { type Move, moveOutline, movePoint, placing } from '../measure/move.ts';
import { floorOf } from '../measure/on-floor.ts';
import { partOnFloor } from '../measure/part-box.ts';
import { Split } from '../measure/put-together.ts';
import { isTaped, type PlacementEntry, type SheetEntry } from '../read/layout.ts';
import type { Frame } from '../read/outline.ts';
import type { Painted } from '../read/plan.ts';
import type { Stencil } from '../read/stencil.ts';

/** A piece that reaches so little into the room, mm², lies beyond its walls. */
const BEYOND = 0.05;

export const proof: Proof = {
  claims:
    'every piece of the plan is painted through a window, once; every open window lies on one piece, its place in the room',
  files: ['layout.json', 'plan.svg', 'stencil-*.svg'],
  method: 'sheets laid at every placement by their own transform, outlines matched corner by corner',
  tolerance: '0.05 mm',
};

/** The sheets, laid down at all their placements, paint the plan: all of it, each piece once, and nothing else. */
export default async function covering(set: FileSet): Promise<Claim[]> {
  const [plan, layout] = [set.plan(), set.layout()];
  if (!plan.ok) return [unproven('plan.svg', 'the sheets paint the whole plan', plan.says)];
  if (!layout.ok) return [unproven('layout.json', 'the sheets paint the whole plan', layout.says)];
  const { colours, taped } = layout.value;
  const colourOf = (piece: Painted) => colours[piece.part] ?? '';
  const stencilled = plan.value.painted.filter((piece) => !isTaped(piece, taped));
  const times = new Map<Painted, number>(stencilled.map((piece) => [piece, 0]));
  const claims: Claim[] = [];
  const grounds = new Map<string, { finder: Finder; pieces: Painted[] }>();
  for (const colour of new Set(set.sheets().map(({ entry }) => entry.colour))) {
    const pieces = stencilled.filter((piece) => colourOf(piece) === colour);
    grounds.set(colour, { finder: new Finder(pieces.map((piece) => piece.outline)), pieces });
  }
  const { floor } = layout.value;
  const onFloor = floor && (await floorOf(floor, floor.pattern));
  const split = new Split(await loadCutParts(), onFloor?.within);
  for (const sheet of set.sheets()) claims.push(...lay(sheet, grounds.get(sheet.entry.colour)!, times, split));
  for (const piece of split.parts.keys()) {
    if (split.isWhole(piece)) times.set(piece, times.get(piece)! + 1);
  }
  // Of a floor from wall to wall, what lies wholly beyond the walls need not be painted.
  const bare = [...times]
    .filter(([{ outline }, count]) => count === 0 && !(onFloor && onFloor.areaOf(outline) <= BEYOND))
    .map(([piece]) => piece);
  const twice = [...times].filter(([, count]) => count > 1).map(([piece]) => piece);
  const all = `all ${stencilled.length}`;
  claims.push(
    equal(
      'plan.svg',
      floor
        ? 'every piece of the plan that reaches into the room is painted through a window'
        : 'every piece of the plan is painted through a window',
      bare.length === 0 ? all : `not ${some(bare)}`,
      all,
    ),
  );
  claims.push(
    equal('plan.svg', 'no piece of the plan is painted twice', twice.length === 0 ? 'none' : some(twice), 'none'),
  );
  claims.push(...split.claims(layout.value.job.lap ?? 0));
  const idle = taped
    .filter((one) => !plan.value.painted.some((piece) => isTaped(piece, [one])))
    .map(({ part }) => part);
  claims.push(
    equal('layout.json', 'every part made with tape is on the plan', idle.join(', ') || 'they are', 'they are'),
  );
  return claims;
}

function some(pieces: Painted[]): string {
  const [first] = pieces;
  const [x, y] = centre(first!.outline.frame);
  return `${pieces.length}, such as the ${first!.part} piece at ${Math.round(x)}, ${Math.round(y)}`;
}

/** Lays one sheet down wherever it is listed, and counts for every piece how often a window comes to lie on it. */
function lay(
  { entry, drawn }: Sheet,
  ground: { finder: Finder; pieces: Painted[] },
  times: Map<Painted, number>,
  split: Split,
): Claim[] {
  const claim = entry.part
    ? 'every open window lies on one painted piece, or on what the lines of its part cut out of one'
    : 'every open window lies on one painted piece';
  if (!drawn.ok) return [unproven(entry.file, claim, drawn.says)];
  const { windows } = drawn.value;
  const used = new Set<number>();
  let off = 0;
  let stray = '';
  for (const placement of entry.passes.flat()) {
    const move = onWork(entry.origin, placement);
    const box = partOnFloor(entry, placement);
    for (const index of placement.open) {
      const window = windows.get(index + 1);
      if (window === undefined) {
        stray ||= `window-${index + 1} is to be open, but the sheet has none`;
        continue;
      }
      used.add(index + 1);
      for (const outline of window.outlines) {
        const laid = moveOutline(outline, move);
        const found = ground.finder.nearest(laid);
        if (box && !(found && found.apart <= DRAWN)) {
          const part = { polygon: flat(laid), box, lap: entry.part!.lap };
          const whole = split.find(part, ground.pieces);
          if (!whole || whole.apart > 1)
            stray ||= `${window.id} at ${placement.x}, ${placement.y} is part of nothing painted`;
          else {
            off = Math.max(off, whole.apart);
            split.add(whole.piece, part);
          }
          continue;
        }
        if (!found) stray ||= `${window.id} at ${placement.x}, ${placement.y} lies on nothing painted`;
        else if (found.apart > off) off = found.apart;
        if (found && found.apart <= DRAWN)
          times.set(ground.pieces[found.index]!, times.get(ground.pieces[found.index]!)! + 1);
      }
    }
  }
  const idle = [...windows.keys()].filter((number) => !used.has(number));
  return [
    clear(entry, drawn.value),
    stated(entry.file, claim, stray === '' && off <= DRAWN, stray || off, DRAWN),
    equal(entry.file, 'every window is painted through', idle.length === 0 ? 'all' : `not window-${idle[0]}`, 'all'),
  ];
}

/** Sheets that are laid in one pass, one beside the other, do not lie on each other's wet paint. */
function clear(entry: SheetEntry, { svg }: Stencil): Claim {
  const { x, y, width, height } = svg.view;
  let most = 0;
  for (const pass of entry.passes) {
    const frames = pass.map((placement) => {
      const move = onWork(entry.origin, placement);
      const [a, b] = [movePoint(move, x, y), movePoint(move, x + width, y + height)];
      return {
        left: Math.min(a[0], b[0]),
        right: Math.max(a[0], b[0]),
        top: Math.min(a[1], b[1]),
        bottom: Math.max(a[1], b[1]),
      };
    });
    most = Math.max(most, deepest(frames));
  }
  return stated(entry.file, 'places of one pass lie clear of each other', most <= DRAWN, most, DRAWN);
}

/** How far any two frames reach into each other, mm. */
function deepest(frames: Frame[]): number {
  const order = [...frames].sort((a, b) => a.left - b.left);
  let most = 0;
  for (let i = 0; i < order.length; i++) {
    const one = order[i]!;
    for (let j = i + 1; j < order.length && order[j]!.left < one.right; j++) {
      const other = order[j]!;
      const across = Math.min(one.right, other.right) - other.left;
      const along = Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top);
      most = Math.max(most, Math.min(across, along));
    }
  }
  return most;
}

/** From the file's own coordinates to the work: the sheet's origin first, then the turn, then the place. */
export function onWork([ox, oy]: readonly [number, number], { turn, x, y }: PlacementEntry): Move {
  const [a, b, c, d, e, f] = placing(turn, x, y);
  return [a, b, c, d, e - a * ox - b * oy, f - c * ox - d * oy];
}
