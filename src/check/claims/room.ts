import { parseLength, type Unit } from '../../units/index.ts';
import { type Claim, DRAWN, equal, type Proof, stated, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { loadClipping } from '../measure/clipping.ts';
import { frameOf } from '../measure/frame.ts';
import { apart, cornerOf, fromStretch, levelOn, onward, outOfRoom, RUNS, wallEnds } from '../measure/in-room.ts';
import type { MarkRow } from '../read/marks.ts';
import type { Frame } from '../read/outline.ts';
import { readPath } from '../read/path.ts';
import {
  CORNERS,
  type CornerName,
  type RoomDrawn,
  type RoomEntry,
  readRoom,
  readRoomEntry,
  SIDES,
  type Side,
  type Spot,
} from '../read/room.ts';

const FILE = 'room.svg';
/** Labels are rounded to the tape's step; this much is added for numbers that lie half way, mm. */
const HALF_WAY = 1e-3;
/** Guide lines by which the work is found in its room. */
const ROOM_LINES = ['near-wall', 'far-wall', 'axis-in-room', 'room'];

export const proof: Proof = {
  claims:
    'walls, diagonals, openings, obstacles, axis, gaps and clearances in the room, as drawn, listed, written and marked',
  files: ['layout.json', 'marks.csv', 'plan.svg', 'room.svg'],
  method: 'lines of room.svg measured and compared with layout.json and marks.csv',
  tolerance: '0.05 mm; half a step of the tape for labels',
};

/** A rug or a runner in its room: walls, openings, obstacles, axis and what is left beside the work, each as drawn, as listed and as marked. */
export default async function room(set: FileSet): Promise<Claim[]> {
  const layout = set.layout();
  if (!layout.ok || !['rug', 'runner'].includes(layout.value.job.surface)) return [];
  const entry = set.read('layout.json', readRoomEntry);
  const marks = set.marks();
  const rows = marks.ok ? marks.value.filter(({ line }) => ROOM_LINES.includes(line)) : [];
  const isDue = rows.length > 0 || set.content(FILE) !== undefined || !entry.ok || entry.value !== undefined;
  if (!isDue) return [];
  if (!entry.ok) return [unproven('layout.json', 'the room can be read', entry.says)];
  if (!entry.value) return [unproven('layout.json', 'the room can be read', 'layout.json has no room')];
  const drawn = set.drawn(FILE, readRoom);
  if (!drawn.ok) return [unproven(FILE, 'the drawing of the room can be read', drawn.says)];
  const ground = groundOf(drawn.value);
  const ends = wallEnds(drawn.value);
  if (!ground || SIDES.some((side) => ends[side] === undefined) || drawn.value.walls.length !== 4)
    return [unproven(FILE, 'the drawing of the room can be read', 'it lacks a wall, or the ground of the work')];
  const seen: Seen = {
    drawn: drawn.value,
    entry: entry.value,
    ground,
    walls: ends as Seen['walls'],
    step: layout.value.job.step,
    units: layout.value.job.units,
    rows,
    half: layout.value.layout.field.across / 2,
    isPlain: rows.some(({ line }) => line === 'room'),
  };
  return [
    trueSize(seen),
    ...walls(seen),
    ...(await inside(seen)),
    ...openings(seen),
    ...obstacles(seen),
    ...clearances(seen),
    ...gaps(seen, layout.value.layout.gaps),
    labels(seen),
    axis(seen),
    ...found(seen, layout.value.layout.gaps),
    samePaint(set, drawn.value),
  ];
}

interface Seen {
  drawn: RoomDrawn;
  entry: RoomEntry;
  /** The ground of the work as it is drawn here. */
  ground: Frame;
  walls: Record<Side, readonly [Spot, Spot]>;
  step: number;
  units: Unit;
  rows: MarkRow[];
  /** The room is told by its width and length alone. */
  isPlain: boolean;
  /** From the axis to the edge of the field. */
  half: number;
}

function groundOf(drawn: RoomDrawn): Frame | undefined {
  const path = readPath(drawn.paint.find(({ id }) => id === 'ground')?.d ?? '');
  return path.ok && path.value.outlines.length > 0 ? frameOf(path.value.outlines.map(({ frame }) => frame)) : undefined;
}

const within = (file: string, claim: string, off: number, allowed = DRAWN): Claim =>
  stated(file, claim, off <= allowed, off, allowed);

/** The largest of some numbers; one that is none counts as without bounds. */
const most = (values: number[]): number =>
  values.reduce(
    (all, value) => (value > all || Number.isNaN(value) ? (Number.isNaN(value) ? Infinity : value) : all),
    0,
  );

function trueSize({ drawn: { svg }, ground }: Seen): Claim {
  const off = most([
    Math.abs(svg.width - svg.view.width),
    Math.abs(svg.height - svg.view.height),
    Math.abs(ground.left + ground.right) / 2,
    Math.abs(ground.top + ground.bottom) / 2,
  ]);
  return within(FILE, 'the room is drawn true to size, from the centre of the work', off);
}

const cornersDrawn = (walls: Seen['walls']): Record<CornerName, Spot> => ({
  'near-left': walls.near[0],
  'near-right': walls.near[1],
  'far-right': walls.far[1],
  'far-left': walls.far[0],
});

function walls({ walls: drawn, entry }: Seen): Claim[] {
  const corners = cornersDrawn(drawn);
  const open = most(
    SIDES.flatMap((side) => RUNS[side].map((corner, at) => apart(drawn[side][at as 0 | 1], corners[corner]))),
  );
  const long = most(SIDES.map((side) => Math.abs(apart(...drawn[side]) - (entry.walls[side] ?? Number.NaN))));
  const lie = most(CORNERS.map((corner) => apart(corners[corner], entry.corners[corner] ?? [Number.NaN, 0])));
  const across = (a: CornerName, b: CornerName) =>
    Math.abs(apart(corners[a], corners[b]) - (entry.diagonals[`${a} to ${b}`] ?? Number.NaN));
  return [
    within(FILE, 'the four walls of the room close', open),
    within(FILE, 'the walls are as long as the layout has them', long),
    within(FILE, 'the corners of the room lie where the layout has them', lie),
    within(
      FILE,
      'the diagonals of the room are those of the layout',
      most([across('near-left', 'far-right'), across('near-right', 'far-left')]),
    ),
  ];
}

const flatten = (points: readonly Spot[]): number[] => points.flat();

async function inside({ walls: drawn, ground, drawn: { obstacles } }: Seen): Promise<Claim[]> {
  const out = outOfRoom(ground, Object.values(drawn));
  const { shared } = await loadClipping();
  const { left, top, right, bottom } = ground;
  const work = [left, top, right, top, right, bottom, left, bottom];
  const met = obstacles.find(({ stretches }) => shared([flatten(stretches[0]!)], [work], DRAWN) > 0);
  return [
    stated(FILE, 'the work lies inside the walls', out <= DRAWN, Math.max(out, 0), DRAWN),
    equal(FILE, 'the work is clear of what stands in the room', met?.attributes['data-obstacle'] ?? 'it is', 'it is'),
  ];
}

function openings({ drawn, entry, walls: ends, ground }: Seen): Claim[] {
  if (drawn.openings.length === 0 && entry.openings.length === 0) return [];
  const names = (list: (string | undefined)[]) => [...list].sort().join(', ');
  const claims = [
    equal(
      FILE,
      'every opening is drawn',
      names(drawn.openings.map(({ attributes }) => attributes['data-opening'])),
      names(entry.openings.map(({ wall }) => wall)),
    ),
  ];
  let [on, gap, clear] = [0, 0, 0];
  for (const { wall, casing, edges } of entry.openings) {
    const line = drawn.openings.find(({ attributes }) => attributes['data-opening'] === wall)?.stretches[0];
    if (line?.length !== 2)
      return [
        ...claims,
        unproven(FILE, 'the casings lie on their walls, where the layout has them', `${wall} has none`),
      ];
    // The wall stops at both edges of the casing, and the threshold lies on its line between them.
    const stops = drawn.walls.find(({ attributes }) => attributes['data-wall'] === wall)!.stretches;
    const breaks = [stops[0]!.at(-1)!, stops.at(-1)![0]!];
    for (const at of [0, 1] as const) {
      on = most([on, fromStretch(line[at]!, ...ends[wall]), apart(line[at]!, casing[at])]);
      gap = most([gap, stops.length === 2 ? apart(breaks[at]!, line[at]!) : Number.NaN]);
      const [x, y] = line[at]!;
      const beside = Math.hypot(
        Math.max(ground.left - x, 0, x - ground.right),
        Math.max(ground.top - y, 0, y - ground.bottom),
      );
      clear = most([clear, Math.abs(beside - edges[at]!.clear)]);
    }
  }
  return [
    ...claims,
    within(FILE, 'the casings lie on their walls, where the layout has them', on),
    within(FILE, 'the walls are open between the casings', gap),
    within(FILE, 'the work is as far from the casings as the layout has it', clear),
  ];
}

function obstacles({ drawn, entry }: Seen): Claim[] {
  const compare = (what: string, lines: RoomDrawn['obstacles'], key: string, listed: RoomEntry['obstacles']) => {
    if (lines.length === 0 && listed.length === 0) return [];
    const off = listed.map(({ name, outline }, at) => {
      const line = lines[at];
      const points = line?.stretches[0] ?? [];
      if (line?.attributes[key] !== name || points.length !== outline.length) return Number.NaN;
      return most(points.map((point, n) => apart(point, outline[n]!)));
    });
    return [
      equal(FILE, `every ${what} is drawn`, lines.length, listed.length),
      within(FILE, `the ${what} lies where the layout has it`, most(off)),
    ];
  };
  const over = entry.over ?? [];
  const centred = over.map(({ outline }) => {
    const [xs, ys] = [outline.map(([x]) => x), outline.map(([, y]) => y)];
    return Math.hypot((Math.min(...xs) + Math.max(...xs)) / 2, (Math.min(...ys) + Math.max(...ys)) / 2);
  });
  return [
    ...compare('obstacle', drawn.obstacles, 'data-obstacle', entry.obstacles),
    ...compare('table', drawn.tables, 'data-table', over),
    ...(over.length > 0 ? [within('layout.json', 'the rug lies centred under the table', most(centred))] : []),
  ];
}

function clearances({ drawn, entry, walls: ends, ground, step }: Seen): Claim[] {
  const measured = (corner: CornerName, wall: Side) => fromStretch(cornerOf(ground, corner), ...ends[wall]);
  const off = most(entry.clearances.map(({ corner, wall, clear }) => Math.abs(clear - measured(corner, wall))));
  const all = new Set(entry.clearances.map(({ corner, wall }) => `${corner} ${wall}`));
  const due = SIDES.flatMap((wall) => RUNS[wall].map((corner) => `${corner} ${wall}`));
  const lines = drawn.clearances.map(({ attributes, stretches }) => {
    const { 'data-corner': corner, 'data-clearance': wall } = attributes as {
      'data-corner': CornerName;
      'data-clearance': Side;
    };
    if (!due.includes(`${corner} ${wall}`)) return Number.NaN;
    const [from, to] = [stretches[0]![0]!, stretches.at(-1)!.at(-1)!];
    return most([
      apart(from, cornerOf(ground, corner)),
      fromStretch(to, ...ends[wall]),
      Math.abs(apart(from, to) - measured(corner, wall)),
    ]);
  });
  const shown = new Set(
    drawn.clearances.map(({ attributes }) => `${attributes['data-corner']} ${attributes['data-clearance']}`),
  );
  const hidden = due.find((one) => {
    const [corner, wall] = one.split(' ') as [CornerName, Side];
    return measured(corner, wall) >= step && !shown.has(one);
  });
  return [
    within('layout.json', 'the corners of the work are as far from the walls as the layout has it', off),
    equal('layout.json', 'every corner has its distance from two walls', all.size, 8),
    within(FILE, 'the distances from the walls are drawn from corner to wall', most(lines)),
    equal(FILE, 'every distance from a wall is drawn', hidden ?? 'all', 'all'),
  ];
}

/** What is left on the axis and square to it at the middle of the work. */
function measuredGaps({ walls: ends, ground }: Seen): Record<Side, number> {
  return {
    near: levelOn(...ends.near, 0, 0) - ground.bottom,
    far: ground.top - levelOn(...ends.far, 0, 0),
    left: ground.left - levelOn(...ends.left, 1, 0),
    right: levelOn(...ends.right, 1, 0) - ground.right,
  };
}

function gaps(seen: Seen, listed: Record<Side, number>): Claim[] {
  const { entry, isPlain, step } = seen;
  const measured = measuredGaps(seen);
  const off = most(SIDES.map((side) => Math.abs(measured[side] - (entry.gaps[side] ?? Number.NaN))));
  const claims = [within('layout.json', 'the margins are those of the drawing', off)];
  if (!isPlain) return claims;
  const plain = most(SIDES.map((side) => Math.abs(measured[side] - listed[side])));
  const uneven = most([Math.abs(measured.left - measured.right), Math.abs(measured.near - measured.far)]);
  return [
    ...claims,
    within(FILE, 'the margins are those of the layout', plain),
    within(FILE, 'opposite margins are alike, within a mark of the tape', uneven, step + DRAWN),
  ];
}

const LABEL = /^(?:(?:near|right|far|left) wall |opening |field )?(.+?)(?: to the axis| on the axis| past| short)?$/;

/** Every length on the drawing is one that can be measured on it. */
function labels(seen: Seen): Claim {
  const { drawn, walls: ends, ground, units, step, half } = seen;
  const casings = drawn.openings.flatMap(({ stretches }) => stretches[0]!.map(([x]) => x));
  const meets = { near: [0, levelOn(...ends.near, 0, 0)], far: [0, levelOn(...ends.far, 0, 0)] } as Record<
    'near' | 'far',
    Spot
  >;
  const lengths = [
    ...SIDES.map((side) => apart(...ends[side])),
    ...SIDES.flatMap((wall) => RUNS[wall].map((corner) => fromStretch(cornerOf(ground, corner), ...ends[wall]))),
    ...(['near', 'far'] as const).flatMap((wall) => ends[wall].map((end) => apart(end, meets[wall]))),
    ...Object.values(measuredGaps(seen)),
    ...drawn.openings.flatMap(({ attributes, stretches }) => {
      const [a, b] = stretches[0] as [Spot, Spot];
      const [from, to] = ends[attributes['data-opening'] as Side] ?? [a, b];
      return [apart(from, a), apart(a, b), apart(b, to)];
    }),
  ];
  const fits = (mm: number, value: number) => Math.abs(mm - value) <= step / 2 + HALF_WAY;
  const wrong = drawn.labels.find((label) => {
    const past = /^field (.+) (?:past|short)$/.exec(label)?.[1];
    if (label === 'field ends here') return false;
    const length = parseLength(LABEL.exec(label)?.[1] ?? '', units);
    const due = /^(near|right|far|left) wall /.exec(label)?.[1] as Side | undefined;
    if (!length.ok) return due !== undefined || past !== undefined;
    if (past !== undefined) return !casings.some((x) => fits(length.mm, Math.abs(half - Math.abs(x))));
    return !(due ? [apart(...ends[due])] : lengths).some((value) => fits(length.mm, value));
  });
  const lacking = SIDES.find(
    (side) => !drawn.labels.some((label) => label.startsWith(`${side} wall`) || walled(label, side)),
  );
  function walled(label: string, side: Side): boolean {
    const length = parseLength(label, units);
    return length.ok && fits(length.mm, apart(...ends[side]));
  }
  const measured = wrong ? `${wrong.slice(0, 60)} is not` : lacking ? `the ${lacking} wall has none` : 'they are';
  return equal(FILE, 'the lengths on the drawing are those of the room', measured, 'they are');
}

function axis({ drawn, walls: ends, entry }: Seen): Claim {
  const line = drawn.axes[0]?.stretches[0] ?? [];
  const at = { near: levelOn(...ends.near, 0, 0), far: levelOn(...ends.far, 0, 0) };
  const reaches = line.length === 2 && line[0]![1] >= at.near && line[1]![1] <= at.far;
  const off = most([
    ...line.map(([x]) => Math.abs(x)),
    reaches ? 0 : Number.NaN,
    ...(['near', 'far'] as const).flatMap((wall) => [
      apart(entry.axis[wall].at, [0, at[wall]]),
      Math.abs(entry.axis[wall]['from left'] - apart(ends[wall][0], [0, at[wall]])),
    ]),
  ]);
  return within(FILE, 'the axis runs through the middle of the work, to both walls', off);
}

/** The marks of the room lead to where the work is drawn. */
function found(seen: Seen, layoutGaps: Record<Side, number>): Claim[] {
  const { rows, walls: ends, ground, isPlain, drawn } = seen;
  const on = (line: string, words: string) =>
    rows.find((row) => row.line === line && row.for.split(', ').includes(words))?.true ?? Number.NaN;
  const FOUND = 'marks.csv';
  if (isPlain) {
    const left = ends.left[0][0];
    const edges = rows
      .filter((row) => row.line === 'room' && row.for.includes('edge of the work'))
      .map((row) => left + row.true);
    const off = most([
      Math.abs(left + on('room', 'the axis')),
      Math.abs(left + on('room', 'the right wall') - ends.right[0][0]),
      edges.length === 2 ? most([Math.abs(edges[0]! - ground.left), Math.abs(edges[1]! - ground.right)]) : Number.NaN,
    ]);
    return [within(FOUND, 'the marks across the room lead to the work', off)];
  }
  const axisAt = (wall: 'near' | 'far') => onward(...ends[wall], on(`${wall}-wall`, 'the axis'))[0];
  const casings = drawn.openings.flatMap(({ attributes, stretches }) => {
    const wall = attributes['data-opening'];
    if (wall !== 'near' && wall !== 'far') return [];
    return (['left', 'right'] as const).map((edge, at) => {
      const due = apart(ends[wall][0], stretches[0]![at]!);
      return due < HALF_WAY ? 0 : Math.abs(on(`${wall}-wall`, `${edge} casing of the opening`) - due);
    });
  });
  const near = levelOn(...ends.near, 0, 0);
  const far = levelOn(...ends.far, 0, 0);
  const onAxis = (words: string, y: number) => Math.abs(near - on('axis-in-room', words) - y);
  const last = rows.filter(({ line }) => line === 'axis-in-room').at(-1);
  const bases = rows.some((row) => row.line === 'axis-in-room' && row.for.split(', ').includes('the near base line'))
    ? [
        onAxis('the near base line', ground.bottom + layoutGaps.near),
        onAxis('the far base line', ground.top - layoutGaps.far),
        ...touching(seen, layoutGaps),
      ]
    : [];
  return [
    within(
      FOUND,
      'the marks along the near and far wall lead to the axis',
      most([axisAt('near'), axisAt('far')].map(Math.abs)),
    ),
    within(FOUND, 'the casings are marked where they are', most(casings)),
    within(
      FOUND,
      'the marks down the axis lead to the work',
      most([
        onAxis('work begins', ground.bottom),
        onAxis('middle of the work', 0),
        onAxis('work ends', ground.top),
        Math.abs(near - (last?.true ?? Number.NaN) - far),
        ...bases,
      ]),
    ),
  ];
}

/** How far the near base line of a runner cuts into the wall: its ends lie on this side of the threshold. */
function touching({ walls: ends, ground }: Seen, { near }: Record<Side, number>): number[] {
  const y = ground.bottom + near;
  return [ground.left, ground.right].map((x) => Math.max(0, y - levelOn(...ends.near, 0, x)));
}

const looks = (paths: readonly Record<string, string>[]): string[] =>
  paths.map(({ id, d, x, y, fill, 'data-element': element, 'data-part': part }) =>
    JSON.stringify([id, element, part, fill, d, x, y]),
  );

function samePaint(set: FileSet, drawn: RoomDrawn): Claim {
  const plan = set.plan();
  const claim = 'the painting in the room is that of the plan';
  if (!plan.ok) return unproven(FILE, claim, plan.says);
  const due = looks(
    plan.value.svg.paths.filter(({ groups }) => groups.includes('paint')).map(({ attributes }) => attributes),
  );
  const found = looks(drawn.paint);
  const at = due.findIndex((one, n) => one !== found[n]);
  const measured = at >= 0 ? `path ${at + 1} differs` : found.length > due.length ? 'it has more' : 'it is';
  return equal(FILE, claim, measured, 'it is');
}
