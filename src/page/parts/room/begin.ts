import type { Surface } from '../../../job/job.ts';
import type { Tree } from '../../../job/tree.ts';
import { parseLength, type System, systemOf, writeLength } from '../../../units/index.ts';
import type { JobTree } from '../../engine/ask.ts';
import { unitOf } from '../../fields/read-back.ts';
import { textAt, valueAt, withValue } from '../../state/tree.ts';

const isBranch = (tree: Tree | undefined): tree is JobTree =>
  typeof tree === 'object' && tree !== null && !Array.isArray(tree);

/** Inches or metric, by what bare numbers of the job mean; inches where it does not say. */
export const systemIn = (tree: JobTree): System => systemOf(unitOf(textAt(tree, ['units'])) ?? 'in');

/** What may be measured for each kind of work, by its key under `site`. */
const SITE: Record<Surface, readonly string[]> = {
  runner: ['run', 'run at sides', 'openings', 'room', 'obstacles', 'axis'],
  rug: ['room', 'openings', 'obstacles', 'axis', 'place'],
  'floor-cloth': [],
  floor: ['room', 'openings', 'obstacles', 'axis'],
  'room-border': ['walls', 'doors'],
  stairs: ['steps', 'riser', 'tread'],
};

/** Keys beside `site` that only some kinds have. */
const ONLY: Record<string, readonly Surface[]> = {
  overall: ['runner', 'rug', 'floor-cloth', 'stairs'],
  'end gap': ['runner'],
  cloth: ['floor-cloth'],
  stairs: ['stairs'],
  field: ['runner', 'rug', 'floor-cloth', 'floor', 'stairs'],
  border: ['runner', 'rug', 'floor-cloth', 'room-border', 'stairs'],
  'inner border': ['runner', 'rug', 'floor-cloth'],
  reserve: ['runner', 'rug', 'floor-cloth', 'room-border'],
  medallion: ['runner', 'rug', 'floor-cloth', 'floor'],
  lettering: ['runner', 'rug', 'floor-cloth'],
};

interface Wish {
  motif?: string;
  repeats?: JobTree;
  pitch?: JobTree;
  border?: JobTree;
  reserve?: string;
}

/** What one begins with, so that a plan is seen as soon as the measurements are there. Our own choice. */
const WISHES: Record<System, Record<Surface, Wish>> = {
  inch: {
    runner: {
      motif: 'diamond',
      repeats: { across: '4 to 6' },
      border: { motif: 'sawtooth', width: '2" to 4"', corner: 'quarter-fan' },
    },
    rug: {
      motif: 'eight-point-star',
      pitch: { across: '7" to 14"' },
      border: { motif: 'sawtooth', width: '2 1/2" to 5"', corner: 'quarter-fan' },
    },
    'floor-cloth': {
      motif: 'checkerboard',
      pitch: { across: '3" to 7"' },
      border: { motif: 'sawtooth', width: '1 3/4" to 3"', corner: 'plain' },
    },
    floor: { motif: 'eight-point-star', pitch: { across: '9" to 18"' } },
    'room-border': { border: { motif: 'sawtooth', width: '2 3/4" to 3 1/4"', corner: 'plain' }, reserve: '2" to 4"' },
    stairs: { motif: 'eight-point-star', repeats: { along: '1' } },
  },
  metric: {
    runner: {
      motif: 'diamond',
      repeats: { across: '4 to 6' },
      border: { motif: 'sawtooth', width: '5 to 10 cm', corner: 'quarter-fan' },
    },
    rug: {
      motif: 'eight-point-star',
      pitch: { across: '18 to 36 cm' },
      border: { motif: 'sawtooth', width: '6 to 12 cm', corner: 'quarter-fan' },
    },
    'floor-cloth': {
      motif: 'checkerboard',
      pitch: { across: '8 to 18 cm' },
      border: { motif: 'sawtooth', width: '45 to 75 mm', corner: 'plain' },
    },
    floor: { motif: 'eight-point-star', pitch: { across: '22 to 45 cm' } },
    'room-border': { border: { motif: 'sawtooth', width: '70 to 80 mm', corner: 'plain' }, reserve: '50 to 100 mm' },
    stairs: { motif: 'eight-point-star', repeats: { along: '1' } },
  },
};

/** Kinds whose border is laid round one rectangle, and whose wishes for it pass from one to the other. */
const RINGED: readonly string[] = ['runner', 'rug', 'floor-cloth'];
/** What only a border along walls says of itself. */
const ALONG_WALLS = ['pitch', 'at doors'];

/** A room in which things are measured from corners. */
const isWalled = (room: Tree | undefined): boolean => isBranch(room) && !('across' in room) && !('along' in room);

/** The walls in turn, from the near left corner up the left wall, of a room told otherwise. */
function wallsFrom(room: Tree | undefined): Tree | undefined {
  if (!isBranch(room)) return undefined;
  const { across, along } = room;
  const lengths = isWalled(room) ? [room.left, room.far, room.right, room.near] : [along, across, along, across];
  return lengths.some((one) => typeof one !== 'string') ? undefined : lengths.map((length) => ({ length: length! }));
}

/** The room of a walk along four walls; where opposite ones are alike, as one measures it then. */
function roomFrom(walls: Tree | undefined): Tree | undefined {
  if (!Array.isArray(walls) || walls.length !== 4) return undefined;
  const lengths = walls.map((wall) => (isBranch(wall) ? wall.length : wall));
  if (lengths.some((one) => typeof one !== 'string')) return undefined;
  const [left, far, right, near] = lengths as [Tree, Tree, Tree, Tree];
  return left === right && far === near ? { across: far, along: left } : { near, right, far, left };
}

function siteFor(surface: Surface, tree: JobTree, earlier: JobTree | undefined): JobTree | undefined {
  const told = isBranch(tree.site) ? tree.site : {};
  const before = isBranch(earlier?.site) ? earlier.site : {};
  const site: JobTree = {};
  for (const key of SITE[surface]) {
    const value = told[key] ?? before[key];
    if (value !== undefined) site[key] = value;
  }
  if (surface === 'room-border') {
    const walls = site.walls ?? wallsFrom(told.room);
    if (walls !== undefined) site.walls = walls;
  }
  if (surface === 'rug' || surface === 'floor') {
    const room = site.room ?? roomFrom(told.walls);
    if (room !== undefined) site.room = room;
  }
  const walled = isWalled(site.room);
  if (surface === 'runner' && !walled) delete site.room;
  // What is measured from a corner needs the corners; a width alone belongs to a run.
  if (!walled) for (const key of ['obstacles', 'axis', 'place']) delete site[key];
  if (walled !== Array.isArray(site.openings)) delete site.openings;
  if (surface !== 'runner' && !walled) delete site.openings;
  return Object.keys(site).length > 0 ? site : undefined;
}

/** Left free at each side of a rug where nothing is said. Our own choice. */
const FREE: Record<System, number> = { inch: 18 * 25.4, metric: 450 };

/** A rug in the middle of a room known wall to wall: so large that the floor is seen all round. */
function rugIn(tree: JobTree): Tree | undefined {
  const units = unitOf(textAt(tree, ['units']));
  const system = systemIn(tree);
  const free = FREE[system];
  const grain = system === 'inch' ? 25.4 : 10;
  const size = (keys: readonly string[]): string | undefined => {
    const lengths = keys.map((key) => parseLength(textAt(tree, ['site', 'room', key]), units));
    if (lengths.some((read) => !read.ok)) return undefined;
    const least = Math.min(...lengths.map((read) => (read.ok ? read.mm : 0)));
    const most = Math.floor(Math.max(least - 2 * free, least / 2) / grain) * grain;
    const write = (mm: number) => writeLength(mm, system === 'inch' ? 'in' : 'cm', grain);
    return `${write(most - 4 * grain)} to ${write(most)}`;
  };
  const walled = isWalled(valueAt(tree, ['site', 'room']));
  const across = size(walled ? ['near', 'far'] : ['across']);
  const along = size(walled ? ['left', 'right'] : ['along']);
  return across !== undefined && along !== undefined ? { across, along } : undefined;
}

function fieldFor(surface: Surface, tree: JobTree, earlier: JobTree | undefined, history: readonly JobTree[]): Tree {
  const wish = WISHES[systemIn(tree)][surface];
  const last = [tree, ...history].find((one) => isBranch(one.field))?.field;
  const { size: _, repeats: __, pitch: ___, landing, ...kept } = isBranch(last) ? last : {};
  const own = isBranch(earlier?.field) ? earlier.field : wish;
  return {
    ...kept,
    motif: kept.motif ?? wish.motif!,
    ...(own.repeats === undefined ? {} : { repeats: own.repeats }),
    ...(own.pitch === undefined ? {} : { pitch: own.pitch }),
    ...(landing === undefined || surface === 'floor' ? {} : { landing }),
  };
}

function borderFor(surface: Surface, tree: JobTree, earlier: JobTree | undefined): Tree | undefined {
  if (surface === 'stairs') return earlier?.border;
  const wish = WISHES[systemIn(tree)][surface].border!;
  const was = textAt(tree, ['surface']);
  const now = tree.border;
  if (surface === 'room-border') {
    if (earlier?.border !== undefined) return earlier.border;
    const motif = typeof now === 'string' ? now : isBranch(now) ? now.motif : undefined;
    return { ...wish, ...(motif === undefined || motif === 'none' ? {} : { motif }) };
  }
  if (RINGED.includes(was) && now !== undefined) return now;
  if (earlier?.border !== undefined) return earlier.border;
  if (!isBranch(now)) return now === undefined || now === 'none' ? wish : now;
  const { width: _, ...rest } = now;
  for (const key of ALONG_WALLS) delete rest[key];
  return { ...rest, ...(wish.width === undefined ? {} : { width: wish.width }) };
}

/**
 * The job as another kind of work: what both kinds have in common stays, what has no meaning there goes, and what the kind needs is taken from the
 * last time the job was of that kind, or begins with what is usual. Measurements are never made up.
 * @param history what the job said before, the last first
 */
export function asKind(tree: JobTree, surface: Surface, history: readonly JobTree[] = []): JobTree {
  if (textAt(tree, ['surface']) === surface) return tree;
  const earlier = history.find((one) => one.surface === surface && one.units === tree.units);
  const job: JobTree = {};
  for (const [key, value] of Object.entries({ ...tree, surface }))
    if (key !== 'site' && (ONLY[key]?.includes(surface) ?? true)) job[key] = value;
  for (const key of Object.keys(ONLY))
    if (job[key] === undefined && ONLY[key]!.includes(surface) && earlier?.[key] !== undefined)
      job[key] = earlier[key]!;
  const put = (key: string, value: Tree | undefined): void => {
    if (value === undefined) delete job[key];
    else job[key] = value;
  };
  put('site', siteFor(surface, tree, earlier));
  if (ONLY.field!.includes(surface)) put('field', fieldFor(surface, tree, earlier, history));
  if (ONLY.border!.includes(surface)) put('border', borderFor(surface, tree, earlier));
  const wasAlongWalls = tree.surface === 'room-border';
  if (surface === 'room-border') put('reserve', earlier?.reserve ?? WISHES[systemIn(tree)][surface].reserve);
  else if (wasAlongWalls) put('reserve', earlier?.reserve);
  if (surface === 'runner') put('overall', valueAt(earlier, ['overall']));
  if (surface === 'rug')
    put('overall', earlier?.overall ?? (tree.surface === 'floor-cloth' ? tree.overall : rugIn(job)));
  if (surface === 'floor-cloth')
    put('overall', earlier?.overall ?? (tree.surface === 'rug' ? tree.overall : undefined));
  if (surface === 'stairs') put('overall', valueAt(earlier, ['overall']));
  return job;
}

/** A job of one's own: nothing is measured and no kind of work chosen; units and what colours there are stay. */
export function blankJob(tree: JobTree): JobTree {
  let job: JobTree = { evenfield: '1', units: textAt(tree, ['units']) || 'in' };
  for (const key of ['palette'] as const) job = withValue(job, [key], tree[key]);
  return job;
}
