import { atMost, type Claim, DRAWN, equal, type Proof, REASONED, stated, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { centre } from '../measure/finder.ts';
import { frameOf, outside } from '../measure/frame.ts';
import { largestOverlap } from '../measure/overlap.ts';
import { beside, blockFrame, frameBeside, seenFrom } from '../measure/room-walls.ts';
import { trueSize } from '../measure/true-size.ts';
import type { Frame } from '../read/outline.ts';
import type { Painted, Plan } from '../read/plan.ts';
import type { RoomBorderEntry, WallEntry } from '../read/room-border.ts';

const FILE = 'plan.svg';
const SIDES = ['border-left', 'border-far', 'border-right', 'border-near'];

export const proof: Proof = {
  claims: 'walls close; whole repeats on each; strips; doors left; corners alike; one pitch',
  files: ['layout.json', 'plan.svg'],
  method: 'outlines placed wall by wall and compared with each other',
  tolerance: '0.05 mm',
};

/** A border round a room: it closes, lands whole on every wall, keeps its strips and its doors, and turns all corners alike. */
export default async function roomBorder(set: FileSet): Promise<Claim[]> {
  const [layout, plan] = [set.layout(), set.plan()];
  if (!layout.ok || layout.value.job.surface !== 'room-border') return [];
  const room = layout.value.roomBorder;
  if (!room) return [unproven('layout.json', 'the walls close', 'it does not tell the walls')];
  const claims = [...closes(room), ...counts(room)];
  if (!plan.ok) return [...claims, unproven(FILE, 'every wall is whole', plan.says)];
  const painted = plan.value.painted.map((piece) => ({ ...piece, element: piece.element.replace(/^gap-/, '') }));
  const plain = plan.value.painted.filter(({ element }) => !element.startsWith('gap-'));
  return [
    ...claims,
    ...ground(room, plan.value, layout.value.colours, layout.value.palette),
    placed(room, painted),
    ...room.walls.flatMap((wall, at) => whole(room, wall, at, plain)),
    ...doors(room, painted),
    ...cornersAlike(room, plain),
    await apart(room, plain),
  ];
}

const before = (walls: readonly unknown[], at: number): number => (at + walls.length - 1) % walls.length;

/** Each wall begins where the one before it ends, and turns as it says. */
function closes({ walls }: RoomBorderEntry): Claim[] {
  let off = 0;
  let turns = 'they do';
  walls.forEach((wall, at) => {
    const next = walls[(at + 1) % walls.length]!;
    const [x, y] = beside(wall, wall.length, 0);
    off = Math.max(off, Math.hypot(x - next.start[0], y - next.start[1]));
    const due = (wall.heading + (wall.corner === 'inside' ? 1 : 3)) % 4;
    if (next.heading !== due) turns = `not after ${wall.name}`;
  });
  return [
    atMost('layout.json', 'the walls close', off, REASONED),
    equal('layout.json', 'the walls turn at every corner as told', turns, 'they do'),
  ];
}

/** Every run is as long as its repeats, from corner to corner; one pitch where one is said. */
function counts({ walls, width, pitch, doors, atDoors }: RoomBorderEntry): Claim[] {
  let off = 0;
  let ends = 0;
  walls.forEach((wall, at) => {
    const [previous, next] = [walls[before(walls, at)]!, walls[(at + 1) % walls.length]!];
    if (wall.repeats > 0) off = Math.max(off, Math.abs(wall.to - wall.from - wall.repeats * wall.pitch));
    const from = previous.corner === 'inside' ? previous.strip + width : -previous.strip;
    const to = wall.length + (wall.corner === 'inside' ? -next.strip - width : next.strip);
    ends = Math.max(ends, Math.abs(from - wall.from), Math.abs(to - wall.to));
  });
  const pitches = walls.filter(({ repeats }) => repeats > 0).map((wall) => wall.pitch);
  const spread = pitches.length > 0 ? Math.max(...pitches) - Math.min(...pitches) : 0;
  const cut = atDoors === 'stop' ? doors : [];
  const missing = walls.find(
    (wall, at) =>
      !cut.some((door) => door.wall === at) && wall.repeats !== wall.painted.reduce((sum, { count }) => sum + count, 0),
  );
  return [
    atMost('layout.json', 'every run is a whole count of repeats', off, REASONED),
    atMost('layout.json', 'every run reaches from corner to corner', ends, REASONED),
    ...(pitch === 'one' ? [atMost('layout.json', 'one pitch serves every wall', spread, REASONED)] : []),
    equal('layout.json', 'a wall without a door has all its repeats', missing?.name ?? 'all walls', 'all walls'),
  ];
}

function ground(
  room: RoomBorderEntry,
  { svg, ground: drawn, groundFill, painted, open }: Plan,
  colours: Record<string, string>,
  palette: Record<string, string>,
): Claim[] {
  const [outline] = drawn;
  const corners = room.walls.map(({ start }) => start);
  const found = outline
    ? Array.from(
        { length: outline.corners.length / 2 },
        (_, n) => [outline.corners[2 * n]!, outline.corners[2 * n + 1]!] as const,
      )
    : [];
  const near = (a: readonly number[], b: readonly number[]) => Math.hypot(a[0]! - b[0]!, a[1]! - b[1]!);
  const farthest = (some: readonly (readonly number[])[], others: readonly (readonly number[])[]) =>
    Math.max(...some.map((one) => Math.min(Infinity, ...others.map((other) => near(one, other)))));
  const off = drawn.length === 1 ? Math.max(farthest(corners, found), farthest(found, corners)) : Infinity;
  const { x, y, width, height } = svg.view;
  const all = frameOf([...drawn, ...painted.map(({ outline: one }) => one)].map(({ frame }) => frame));
  const beyond = outside(all, { left: x, top: y, right: x + width, bottom: y + height });
  const due = (part: string) => palette[colours[part] ?? '']?.toLowerCase();
  const wrong = [{ part: 'ground', fill: groundFill }, ...painted].find(
    ({ part, fill }) => fill.toLowerCase() !== due(part),
  );
  return [
    trueSize(FILE, 'the plan is true to size', svg),
    stated(FILE, 'the plan shows the whole room', beyond <= 1e-9, beyond, 0),
    equal(FILE, 'every path of the plan is closed', open === 0 ? 'all' : `${open} open`, 'all'),
    atMost(FILE, 'the floor is drawn from wall to wall', off, DRAWN),
    equal(
      FILE,
      'every part has its own colour',
      wrong ? `${wrong.part} is ${wrong.fill || 'not filled'}` : 'all parts',
      'all parts',
    ),
  ];
}

/** The frames of every run that is painted and of every corner, by the element that paints there. */
function rooms(
  { walls, width, corners }: RoomBorderEntry,
  entry: RoomBorderEntry,
): { element: string; frame: Frame }[] {
  return [
    ...walls.flatMap((wall) => {
      const spans: [number, number][] = [
        ...wall.painted.map(({ first, count }): [number, number] => [
          wall.from + first * wall.pitch,
          wall.from + (first + count) * wall.pitch,
        ]),
        ...wall.bands,
      ];
      return spans.map((span) => ({
        element: SIDES[wall.heading]!,
        frame: frameBeside(wall, span, [wall.strip, wall.strip + width]),
      }));
    }),
    ...corners
      .filter(({ painted }) => painted)
      .map(({ wall }) => ({ element: 'corner', frame: blockFrame(entry, wall) })),
  ];
}

/** Everything painted lies in a run or a corner, so off the walls by the strips as said. */
function placed(room: RoomBorderEntry, painted: Painted[]): Claim {
  const places = rooms(room, room);
  let worst = 0;
  for (const { element, outline } of painted) {
    const off = Math.min(
      Infinity,
      ...places.filter((one) => one.element === element).map(({ frame }) => outside(outline.frame, frame)),
    );
    worst = Math.max(worst, off);
  }
  return stated(
    FILE,
    'the border lies within its runs and corners, its strip off every wall',
    worst <= DRAWN,
    worst,
    DRAWN,
  );
}

interface Seen {
  part: string;
  along: number;
  off: number;
  area: number;
}

/** The pieces of a run as seen from its wall, in order. */
function piecesOn(room: RoomBorderEntry, wall: WallEntry, painted: Painted[]): Seen[] {
  const frame = frameBeside(wall, [wall.from, wall.to], [wall.strip, wall.strip + room.width]);
  return painted
    .filter(({ element, outline }) => element === SIDES[wall.heading] && outside(outline.frame, frame) <= DRAWN)
    .map(({ part, outline }): Seen => {
      const [along, off] = seenFrom(wall, centre(outline.frame));
      return { part, along, off, area: Math.abs(outline.area) };
    });
}

/** Every repeat that is said to be painted has the same pieces at the same places as the first, or as its mirror image. */
function whole(room: RoomBorderEntry, wall: WallEntry, at: number, painted: Painted[]): Claim[] {
  const claim = `${wall.name} is whole: every repeat has its pieces, at its own place`;
  if (wall.repeats === 0) return [];
  const numbers = wall.painted.flatMap(({ first, count }) => Array.from({ length: count }, (_, n) => first + n));
  const pieces = piecesOn(room, wall, painted);
  const cells = new Map<number, Seen[]>(numbers.map((number) => [number, []]));
  for (const piece of pieces) {
    const share = (piece.along - wall.from) / wall.pitch;
    const number = Math.min(Math.max(Math.floor(share), 0), wall.repeats - 1);
    const cell = cells.get(number);
    if (!cell) return [stated(FILE, claim, false, `a piece in repeat ${number + 1}, which is to be plain`, DRAWN)];
    cell.push({ ...piece, along: piece.along - wall.from - (number + 0.5) * wall.pitch });
  }
  const first = cells.get(numbers[0] ?? -1);
  if (!first || first.length === 0)
    return numbers.length === 0 ? [] : [stated(FILE, claim, false, `nothing is painted along wall ${at + 1}`, DRAWN)];
  let worst = 0;
  for (const number of numbers) {
    const cell = cells.get(number)!;
    const same = (mirror: 1 | -1): number => {
      if (cell.length !== first.length) return Infinity;
      return Math.max(
        ...first.map((piece) =>
          Math.min(
            Infinity,
            ...cell
              .filter(
                (one) =>
                  one.part === piece.part && Math.abs(one.area - piece.area) <= DRAWN * Math.sqrt(piece.area) * 4,
              )
              .map((one) => Math.max(Math.abs(one.along - mirror * piece.along), Math.abs(one.off - piece.off))),
          ),
        ),
      );
    };
    worst = Math.max(
      worst,
      Math.min(same(1), room.run === 'reverse' && 2 * number >= wall.repeats ? same(-1) : Infinity),
    );
  }
  return [stated(FILE, claim, worst <= DRAWN, worst, DRAWN)];
}

/** What lies before a door is left plain. */
function doors(room: RoomBorderEntry, painted: Painted[]): Claim[] {
  if (room.atDoors !== 'stop') return [];
  return room.doors.map(({ wall: at, starts, ends }, number): Claim => {
    const claim = `nothing is painted before door ${number + 1}`;
    const wall = room.walls[at];
    if (!wall) return unproven('layout.json', claim, 'there is no such wall');
    const gap = frameBeside(wall, [starts, ends], [0, wall.strip + room.width]);
    const deepest = Math.max(
      0,
      ...painted
        .filter(({ element }) => element === SIDES[wall.heading])
        .map(({ outline: { frame } }) =>
          Math.min(
            Math.min(frame.right, gap.right) - Math.max(frame.left, gap.left),
            Math.min(frame.bottom, gap.bottom) - Math.max(frame.top, gap.top),
          ),
        ),
    );
    return stated(FILE, claim, deepest <= DRAWN, deepest, DRAWN);
  });
}

/** Corners of one kind are quarter turns of each other: the same pieces as seen from the walls that lead to them. */
function cornersAlike(room: RoomBorderEntry, painted: Painted[]): Claim[] {
  const pieces = painted.filter(({ element }) => element === 'corner');
  return (['inside', 'outside'] as const).flatMap((kind): Claim[] => {
    const seen = room.corners
      .filter((corner) => corner.kind === kind && corner.painted)
      .map(({ wall: at }) => {
        const frame = blockFrame(room, at);
        const middle = seenFrom(room.walls[at]!, centre(frame));
        return pieces
          .filter(({ outline }) => outside(outline.frame, frame) <= DRAWN)
          .map(({ part, outline }) => {
            const [along, off] = seenFrom(room.walls[at]!, centre(outline.frame));
            return { part, along: along - middle[0], off: off - middle[1], area: Math.abs(outline.area) };
          });
      });
    const [first, ...others] = seen;
    if (!first) return [];
    const unlike = others.map((corner) =>
      corner.length !== first.length
        ? Infinity
        : Math.max(
            0,
            ...first.map((piece) =>
              Math.min(
                Infinity,
                ...corner
                  .filter(
                    ({ part, area }) =>
                      part === piece.part && Math.abs(area - piece.area) <= DRAWN * Math.sqrt(piece.area) * 4,
                  )
                  .map((one) => Math.max(Math.abs(one.along - piece.along), Math.abs(one.off - piece.off))),
              ),
            ),
          ),
    );
    const off = first.length === 0 ? Infinity : Math.max(0, ...unlike);
    return [stated(FILE, `the ${kind} corners are alike`, off <= DRAWN, off, DRAWN)];
  });
}

/** Share of a repeat's area that two pieces may have in common. */
const SHARE = 1e-6;

async function apart({ width }: RoomBorderEntry, painted: Painted[]): Promise<Claim> {
  const allowed = SHARE * width * width;
  const { area, says } = await largestOverlap(painted, () => undefined);
  const measured = area > allowed ? `${area.toFixed(3)} mm²: ${says}` : `${area.toFixed(6)} mm²`;
  return stated(FILE, 'no two pieces of the border overlap', area <= allowed, measured, `${allowed.toFixed(6)} mm²`);
}
