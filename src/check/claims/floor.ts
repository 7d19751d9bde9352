import { type Claim, DRAWN, equal, type Proof, stated, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { colourAt } from '../measure/colour-at.ts';
import { Corners } from '../measure/corners.ts';
import { linesTo, measureCut } from '../measure/floor-cuts.ts';
import { endsOf, met, ROUND, WALL_NAMES } from '../measure/floor-room.ts';
import { frameOf } from '../measure/frame.ts';
import { fromStretch, RUNS, wallEnds } from '../measure/in-room.ts';
import { moveOutline } from '../measure/move.ts';
import { type Floor, floorOf } from '../measure/on-floor.ts';
import type { FloorEntry, WallName } from '../read/floor.ts';
import type { LayoutFile } from '../read/layout.ts';
import type { MarkRow } from '../read/marks.ts';
import { type Plan, readPlan } from '../read/plan.ts';
import { type RoomDrawn, readRoom, type Spot, straightLines } from '../read/room.ts';
import type { Svg } from '../read/svg.ts';
import { onWork } from './covering.ts';

const LAYOUT = 'layout.json';
const PLAN = 'plan.svg';
const ROOM = 'room.svg';
const MARKS = 'marks.csv';
/** Share by which areas may differ. */
const SHARE = 1e-4;
/** Paint of less area is none, mm². */
const CRUMB = 0.05;
/** Places looked at in each drawing. */
const PLACES = 2500;

export const proof: Proof = {
  claims:
    'walls, obstacles and cuts of a floor; centre lines; room.svg is the plan cut to the room; marks end at the walls; hatching',
  files: ['layout.json', 'marks.csv', 'plan.svg', 'room.svg', 'stencil-*.svg'],
  method: 'clipping, areas, 2,500 places by colour, every corner by place',
  tolerance: '0.05 mm; areas to 0.01 %',
};

/** A floor from wall to wall: its cuts, the room drawn across the plan, and the floor as it will be, which is the plan cut to the room. */
export default async function floor(set: FileSet): Promise<Claim[]> {
  const layout = set.layout();
  if (!layout.ok || layout.value.job.surface !== 'floor' || !layout.value.floor) return [];
  const entry = layout.value.floor;
  const [plan, marks] = [set.plan(), set.marks()];
  if (!plan.ok) return [unproven(PLAN, 'the room is drawn across the plan', plan.says)];
  const [walls, painted] = [set.drawn(ROOM, readRoom), set.drawn(ROOM, readPlan)];
  if (!walls.ok) return [unproven(ROOM, 'the floor as it will be can be read', walls.says)];
  if (!painted.ok) return [unproven(ROOM, 'the floor as it will be can be read', painted.says)];
  if (!marks.ok) return [unproven(MARKS, 'the walls are marked', marks.says)];
  const pattern = await floorOf(entry, entry.pattern);
  return [
    ...roomDrawn(entry, walls.value, plan.value.svg),
    ...cuts(layout.value, entry, marks.value),
    ...covers(plan.value, entry),
    ...(await asItWillBe(plan.value, painted.value, entry, pattern)),
    ...distances(walls.value, marks.value),
    ...placements(set, pattern),
    ...beyond(plan.value.svg, pattern, layout.value.layout.work),
  ];
}

const far = ([x0, y0]: Spot, [x1, y1]: Spot): number => Math.hypot(x1 - x0, y1 - y0);

/** Points of a path of straight lines. */
const pointsOf = (d: string): Spot[] => straightLines(d)?.flat() ?? [];

const outlines = (svg: Svg, name: string): Spot[][] =>
  svg.paths
    .filter(({ attributes }) => attributes['data-floor'] === name)
    .map(({ attributes }) => pointsOf(attributes.d ?? ''));

/** How far two closed outlines with the same corners in turn lie apart. */
const offBy = (drawn: readonly Spot[] | undefined, due: readonly Spot[]): number =>
  drawn?.length === due.length ? Math.max(...due.map((point, at) => far(point, drawn[at]!))) : Infinity;

/** The room of layout.json is the one that both drawings show. */
function roomDrawn(entry: FloorEntry, room: RoomDrawn, plan: Svg): Claim[] {
  const { corners, pattern, strip, obstacles } = entry;
  const ends = wallEnds(room);
  const asWalls = Math.max(
    ...WALL_NAMES.map((wall) => {
      const drawn = ends[wall];
      const due = RUNS[wall].map((corner) => corners[corner]);
      return drawn ? Math.max(far(drawn[0], due[0]!), far(drawn[1], due[1]!)) : Infinity;
    }),
  );
  const ring = ROUND.map((corner) => corners[corner]);
  const patternRing = ROUND.map((corner) => pattern[corner]);
  const asObstacles = (drawn: readonly Spot[][]): number =>
    drawn.length === obstacles.length
      ? Math.max(0, ...obstacles.map(({ outline }, at) => offBy(drawn[at], outline)))
      : Infinity;
  const inside = Math.max(
    ...WALL_NAMES.flatMap((wall) => {
      const due = wall === 'left' || wall === 'right' ? strip.across : strip.along;
      const [a, b] = RUNS[wall].map((corner): Spot => corners[corner]) as [Spot, Spot];
      return RUNS[wall].map((corner) => Math.abs(fromLine(pattern[corner], a, b) - due));
    }),
  );
  const isStrip = strip.across > 0 || strip.along > 0;
  const within = (file: string, claim: string, off: number) => stated(file, claim, off <= DRAWN, off, DRAWN);
  return [
    within(ROOM, 'the walls are those of the layout', asWalls),
    within(ROOM, 'what stands in the room is where the layout has it', asObstacles(closedOnes(room))),
    within(PLAN, 'the walls drawn across the plan are those of the layout', offBy(outlines(plan, 'walls')[0], ring)),
    within(PLAN, 'what stands in the room is drawn across the plan', asObstacles(outlines(plan, 'obstacle'))),
    within(LAYOUT, 'the pattern ends at the walls, or the plain strip off them', inside),
    ...(isStrip
      ? [
          within(
            PLAN,
            'the edge of the pattern is drawn across the plan',
            offBy(outlines(plan, 'pattern')[0], patternRing),
          ),
        ]
      : []),
  ];
}

/** Outlines of obstacles, the point that closes them left out. */
const closedOnes = ({ obstacles }: RoomDrawn): Spot[][] =>
  obstacles.map(({ stretches }) => {
    const [points = []] = stretches;
    return points.length > 1 && far(points[0]!, points.at(-1)!) < 1e-9 ? points.slice(0, -1) : points;
  });

const fromLine = ([x, y]: Spot, [x0, y0]: Spot, [x1, y1]: Spot): number =>
  Math.abs((x - x0) * (y1 - y0) - (y - y0) * (x1 - x0)) / Math.hypot(x1 - x0, y1 - y0);

const RAY: Record<WallName, string> = {
  near: 'along-near',
  far: 'along-far',
  left: 'across-left',
  right: 'across-right',
};
const WAY = { near: 'along', far: 'along', left: 'across', right: 'across' } as const;

/** The cuts that layout.json tells are those between the walls and the lines between repeats; opposite ones are equal, none is under half. */
function cuts({ layout }: LayoutFile, entry: FloorEntry, rows: readonly MarkRow[]): Claim[] {
  const each = {
    across: layout.pitch.across / entry.lines.across.unit,
    along: layout.pitch.along / entry.lines.along.unit,
  };
  const claims: Claim[] = [];
  for (const way of ['across', 'along'] as const) {
    const whole = Math.abs(each[way] - Math.round(each[way])) < 1e-6 && each[way] >= 1 - 1e-6;
    claims.push(
      equal(LAYOUT, `lines ${way} part repeats evenly`, whole ? 'they do' : `${each[way]} to a repeat`, 'they do'),
    );
    if (!whole) return claims;
  }
  const parts = { across: Math.round(each.across), along: Math.round(each.along) };
  const measured = Object.fromEntries(
    WALL_NAMES.map((wall) => [wall, measureCut(layout, entry, wall, parts[WAY[wall]])]),
  ) as Record<WallName, ReturnType<typeof measureCut>>;
  for (const wall of WALL_NAMES) {
    const { cut, distance } = entry.walls[wall];
    const [found, unit] = [measured[wall], entry.lines[WAY[wall]].unit];
    const off = found.whole
      ? Math.max(...(['centre', 'least', 'most'] as const).map((key) => Math.abs(cut[key] - unit)))
      : Math.max(...(['centre', 'least', 'most'] as const).map((key) => Math.abs(cut[key] - found[key])));
    const same = off <= DRAWN && cut.whole === found.whole;
    claims.push(stated(LAYOUT, `the cut at the ${wall} wall is as told`, same, off, DRAWN));
    const out = Math.abs(distance - met(entry.corners, wall).out);
    claims.push(stated(LAYOUT, `the ${wall} wall is as far from the crossing as told`, out <= DRAWN, out, DRAWN));
    const allowed = `${Math.round(500 * unit) / 1000} or more, no line crossed`;
    const held = found.whole || (found.least >= unit / 2 - DRAWN && found.most <= unit + DRAWN);
    claims.push(stated(LAYOUT, `no less than half is left along the ${wall} wall`, held, found.least, allowed));
    const last = linesTo(layout, wall, parts[WAY[wall]]).filter(
      (at) => at > DRAWN && at < Math.min(...endsOf(entry.pattern, wall)) - DRAWN,
    );
    const marked = rows.filter((row) => row.line === RAY[wall] && /^between /.test(row.for)).map((row) => row.true);
    const unlike = last.length !== marked.length || last.some((at, n) => !(Math.abs(at - marked[n]!) <= DRAWN));
    claims.push(
      equal(
        MARKS,
        `lines as far as the ${wall} wall are those that its cut is counted from`,
        unlike ? 'others' : 'they are',
        'they are',
      ),
    );
  }
  for (const [way, one, other] of [
    ['across', 'left', 'right'],
    ['along', 'near', 'far'],
  ] as const) {
    const apart = Math.abs(met(entry.pattern, one).out - met(entry.pattern, other).out);
    const midway = apart <= DRAWN;
    const told = entry.lines[way].midway;
    const name = way === 'across' ? 'the axis' : 'the centre line across';
    claims.push(
      equal(
        LAYOUT,
        `${name} lies midway between its walls where that is told`,
        midway === told ? 'as told' : `${apart.toFixed(3)} mm off`,
        'as told',
      ),
    );
    const differ = Math.abs(measured[one].centre - measured[other].centre);
    if (midway || way === 'along')
      claims.push(stated(LAYOUT, `cuts at the ${one} and ${other} walls are equal`, differ <= DRAWN, differ, DRAWN));
    const { first, unit, centre } = entry.lines[way];
    const [line = Number.NaN] = linesTo(layout, one, parts[way]);
    const asTold =
      Math.abs(line - first) <= DRAWN &&
      (centre === 'between repeats' ? first <= DRAWN : Math.abs(first - unit / 2) <= DRAWN);
    claims.push(
      equal(LAYOUT, `the centre line falls ${way} as told`, asTold ? 'it does' : `first line at ${line}`, 'it does'),
    );
  }
  return claims;
}

/** What is laid covers everything that is to be patterned. */
function covers(plan: Plan, { pattern }: FloorEntry): Claim[] {
  const work = frameOf(plan.ground.map((outline) => outline.frame));
  const bare = Math.max(
    0,
    ...ROUND.map((corner) => {
      const [x, y] = pattern[corner];
      return Math.max(work.left - x, x - work.right, work.top - y, y - work.bottom);
    }),
  );
  return [stated(PLAN, 'what is laid covers the room', bare <= DRAWN, bare, DRAWN)];
}

const shares = (all: Map<string, number>): string =>
  [...all].map(([fill, area]) => `${fill} ${Math.round(area)}`).join(', ');

/** room.svg shows the plan, cut to the room: by area, colour by colour, and by the colour of many places. */
async function asItWillBe(plan: Plan, room: Plan, entry: FloorEntry, pattern: Floor): Promise<Claim[]> {
  const due = new Map<string, number>();
  const found = new Map<string, number>();
  const add = (map: Map<string, number>, fill: string, area: number) => map.set(fill, (map.get(fill) ?? 0) + area);
  for (const { fill, outline } of plan.painted) add(due, fill, Math.sign(outline.area) * pattern.areaOf(outline));
  let out = 0;
  for (const { fill, outline } of room.painted) {
    add(found, fill, outline.area);
    const { left, right, top, bottom } = outline.frame;
    out = Math.max(out, (Math.abs(outline.area) - pattern.areaOf(outline)) / (right - left + bottom - top));
  }
  const off = Math.max(
    0,
    ...[...new Set([...due.keys(), ...found.keys()])].map((fill) => {
      const [one, other] = [due.get(fill) ?? 0, found.get(fill) ?? 0];
      const apart = Math.abs(one - other);
      return apart <= CRUMB ? 0 : apart / Math.max(one, other);
    }),
  );
  const whole = await floorOf(entry, entry.corners);
  const ground = Math.abs(room.ground.reduce((sum, outline) => sum + outline.area, 0));
  const bare = Math.abs(ground - whole.area) / whole.area;
  const [inPlan, inRoom] = [colourAt(plan), colourAt(room)];
  const { left, right, top, bottom } = frameOf(room.ground.map((outline) => outline.frame));
  let wrong = '';
  for (let n = 1; n <= PLACES && wrong === ''; n++) {
    // Places spread evenly by the plastic number, so that they keep to no grid of the pattern.
    const x = left - 20 + ((n * 0.7548776662466927) % 1) * (right - left + 40);
    const y = top - 20 + ((n * 0.5698402909980532) % 1) * (bottom - top + 40);
    const colour = (u: number, v: number): [string, string] => [
      inRoom(u, v),
      whole.holds(u, v) ? (pattern.holds(u, v) ? inPlan(u, v) : plan.groundFill) : 'none',
    ];
    const [shown, wanted] = colour(x, y);
    if (shown === wanted) continue;
    const by = 2 * DRAWN;
    const onEdge = (
      [
        [by, 0],
        [-by, 0],
        [0, by],
        [0, -by],
      ] as const
    ).some(([dx, dy]) => {
      const [one, other] = colour(x + dx, y + dy);
      return one !== shown || other !== wanted;
    });
    if (!onEdge) wrong = `${shown} instead of ${wanted} at ${Math.round(x)}, ${Math.round(y)}`;
  }
  const astray = strayCorner(room, new Corners(plan.painted.map(({ outline }) => outline)), entry);
  return [
    equal(ROOM, 'every corner painted on the floor is one of the plan, or lies at a wall', astray ?? 'all', 'all'),
    stated(ROOM, 'each colour covers as much as the plan has of it in the room', off <= SHARE, off, SHARE),
    stated(ROOM, 'nothing is painted beyond the walls or on what stands in the room', out <= DRAWN, out, DRAWN),
    stated(ROOM, 'the ground covers the room less what stands in it', bare <= SHARE, bare, SHARE),
    equal(
      ROOM,
      'every colour is on the floor that is on the plan',
      found.size === due.size ? 'all' : shares(found),
      'all',
    ),
    equal(ROOM, 'the floor shows the colours of the plan, place by place', wrong || 'it does', 'it does'),
  ];
}

/** A corner of the painted floor that the plan has not, and that no wall, edge of the pattern or thing in the room cuts. */
function strayCorner(room: Plan, plan: Corners, { pattern, corners, obstacles }: FloorEntry): string | undefined {
  const rings: Spot[][] = [
    ROUND.map((corner): Spot => pattern[corner]),
    ROUND.map((corner): Spot => corners[corner]),
    ...obstacles.map(({ outline }) => outline.map((spot): Spot => spot)),
  ];
  const edges = rings.flatMap((ring) => ring.map((a, at): [Spot, Spot] => [a, ring[(at + 1) % ring.length]!]));
  for (const { outline } of room.painted)
    for (let at = 0; at < outline.corners.length; at += 2) {
      const spot: Spot = [outline.corners[at]!, outline.corners[at + 1]!];
      if (plan.at(...spot, DRAWN).length > 0) continue;
      if (!edges.some(([a, b]) => fromStretch(spot, a, b) <= DRAWN)) return `not at ${spot.map(Math.round).join(', ')}`;
    }
  return undefined;
}

/** Marks end at the walls as they are drawn, and none lies beyond. */
function distances(room: RoomDrawn, rows: readonly MarkRow[]): Claim[] {
  const ends = wallEnds(room);
  return WALL_NAMES.flatMap((wall) => {
    const drawn = ends[wall];
    const own = rows.filter((row) => row.line === RAY[wall]);
    if (!drawn || own.length === 0) return [unproven(MARKS, `marks end at the ${wall} wall`, 'there are none')];
    const axis = WAY[wall] === 'across' ? 0 : 1;
    const [a, b] = drawn;
    const share = a[1 - axis]! / (a[1 - axis]! - b[1 - axis]!);
    const out = Math.abs(a[axis] + share * (b[axis] - a[axis]));
    const last = Math.max(...own.map((row) => row.true));
    const named = own.find((row) => row.for.split(', ').includes(`the ${wall} wall`));
    const claims = [
      stated(
        MARKS,
        `no mark lies beyond the ${wall} wall`,
        last <= out + DRAWN,
        last,
        `${Math.round(out * 1000) / 1000} at most`,
      ),
    ];
    if (named) {
      const off = Math.abs(named.true - out);
      claims.push(stated(MARKS, `the ${wall} wall is marked where it is drawn`, off <= DRAWN, off, DRAWN));
    } else {
      const stands = own.some((row) => / begins$/.test(row.for.split(', ').at(-1) ?? ''));
      claims.push(
        equal(MARKS, `the ${wall} wall is marked, or what stands before it`, stands ? 'it is' : 'neither', 'it is'),
      );
    }
    return claims;
  });
}

/** Wherever a sheet is laid, it paints something of the floor. */
function placements(set: FileSet, pattern: Floor): Claim[] {
  return set.sheets().flatMap(({ entry, drawn }) => {
    const claim = 'wherever the sheet is laid it paints something in the room';
    if (!drawn.ok) return [unproven(entry.file, claim, drawn.says)];
    const { windows } = drawn.value;
    const idle = entry.passes.flat().filter((placement) => {
      const move = onWork(entry.origin, placement);
      return !placement.open.some((index) =>
        windows.get(index + 1)?.outlines.some((outline) => pattern.areaOf(moveOutline(outline, move)) > 0.001),
      );
    });
    const [first] = idle;
    return [
      equal(entry.file, claim, first ? `not at ${Math.round(first.x)}, ${Math.round(first.y)}` : 'it does', 'it does'),
    ];
  });
}

/** Hatching no wider than this share of the longer side of the work is seen as such. */
const WIDEST_HATCH = 1 / 20;
/** Places looked at along each side of the work. */
const LOOKED_AT = 80;

/** The lines that hatch what falls beyond the walls leave the floor free, and leave nothing else free. */
function beyond(svg: Svg, pattern: Floor, work: { across: number; along: number }): Claim[] {
  const lines = svg.paths
    .filter(({ attributes }) => attributes['data-floor'] === 'beyond')
    .flatMap(({ attributes }) => straightLines(attributes.d ?? '') ?? [])
    .flatMap((stretch) => stretch.slice(1).map((to, at): [Spot, Spot] => [stretch[at]!, to]));
  const wrong = lines.filter(([a, b]) => {
    return far(a, b) > 2 * DRAWN && pattern.holds((a[0] + b[0]) / 2, (a[1] + b[1]) / 2);
  }).length;
  const longest = Math.max(work.across, work.along);
  const levels = [...new Set(lines.map(([[x, y]]) => Math.round((x - y) * 100) / 100))].sort((a, b) => a - b);
  const steps = levels.slice(1).map((level, at) => level - levels[at]!);
  const apart = Math.min(longest * WIDEST_HATCH, Math.max(...steps, 1));
  const isBeyond = (x: number, y: number) =>
    Math.abs(x) < work.across / 2 && Math.abs(y) < work.along / 2 && !pattern.holds(x, y);
  const isHatched = (x: number, y: number) =>
    lines.some(([[x0, y0], [x1]]) => {
      const off = x - y - (x0 - y0);
      const on = x - off / 2;
      return Math.abs(off) <= apart && on >= Math.min(x0, x1) - apart && on <= Math.max(x0, x1) + apart;
    });
  let free = '';
  for (let row = 0; row < LOOKED_AT && free === ''; row++)
    for (let column = 0; column < LOOKED_AT && free === ''; column++) {
      const x = ((column + 0.5) / LOOKED_AT - 0.5) * work.across;
      const y = ((row + 0.5) / LOOKED_AT - 0.5) * work.along;
      // A strip narrower than the hatching may lie between two of its lines.
      const wide = [-apart, -apart / 2, 0, apart / 2, apart].every((by) => isBeyond(x + by / 2, y - by / 2));
      if (wide && !isHatched(x, y)) free = `not at ${Math.round(x)}, ${Math.round(y)}`;
    }
  return [
    equal(
      PLAN,
      'only what falls beyond the walls is hatched',
      wrong === 0 ? 'only that' : `${wrong} lines are not`,
      'only that',
    ),
    equal(PLAN, 'all that falls beyond the walls is hatched', free || 'all', 'all'),
  ];
}
