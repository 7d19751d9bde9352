import type { Edging } from '../../compose/around.ts';
import type { Region } from '../../compose/drawing.ts';
import { composeEdging } from '../../compose/edging.ts';
import { familiesOf } from '../../compose/families.ts';
import { composeField } from '../../compose/field.ts';
import { composeInset } from '../../compose/inset.ts';
import { keptDrawing } from '../../drawing/kept.ts';
import { drawingText } from '../../drawing/text.ts';
import type { Layout, Pair } from '../../fit/layout.ts';
import type { Box } from '../../geometry/path.ts';
import { bad, type Issue, type Result } from '../../issue.ts';
import { INSET } from '../../job/defaults.ts';
import { type House, houseIn } from '../../job/house.ts';
import type { Job, MotifChoice } from '../../job/job.ts';
import { isDrawing } from '../../job/own-drawings.ts';
import { readJob } from '../../job/read.ts';
import { allMotifs, findMotif } from '../../motif/library.ts';
import type { Kind, Motif, Parameters, Part, Turn } from '../../motif/motif.ts';
import { drawMotif } from '../../motif/record.ts';
import type { Assets } from '../../pipeline.ts';
import { sentence } from '../../words.ts';
import { pathText } from '../../write/path.ts';
import { withValue } from '../state/tree.ts';
import type { Ask, JobTree } from './ask.ts';
import { NONE, namedAt, OWN, pathOf, type Slot, takeChanges } from './motifs-slots.ts';
import { writeJob } from './write-job.ts';

/** A piece of the floor as it would be painted, at the scale of the work. Lengths in mm, x to the right, y down, from its left top. */
export interface Patch {
  across: number;
  along: number;
  /** Outlines as path text about the origin, and every place they are painted: x0, y0, x1, y1, … */
  shapes: { part: Part; d: string; at: number[] }[];
}

/** One thing that may be taken for a slot. */
export interface Board {
  /** As the job names it; `''` for saying nothing. */
  name: string;
  says: string;
  parameters: Parameters;
  /** Another motif may stand inside it. */
  hasRoom: boolean;
  /** It runs one way along a border. */
  runsOneWay: boolean;
  patch: Patch;
}

/** Sizes of the work that boards are drawn at, mm. */
export interface Scale {
  pitch: Pair;
  border: number;
  inner: number;
}

const KINDS: Record<Slot, Kind> = {
  field: 'field',
  alternate: 'field',
  inset: 'field',
  medallion: 'medallion',
  border: 'border',
  turn: 'border',
  corner: 'corner',
  inner: 'border',
  'inner-turn': 'border',
  'inner-corner': 'corner',
};

const NOTHING_SAYS: Partial<Record<Slot, string>> = {
  alternate: 'The same motif in exchanged colours.',
  inset: 'Nothing inside the motif.',
  medallion: 'The field runs through; nothing stands in its middle.',
  inner: 'One border is enough.',
};

const TURNS: Record<Turn, string> = {
  own: 'The border draws its corner itself.',
  block: 'A square of its own stands in each corner.',
  mitre: 'Two sides meet on the diagonal, cut at 45 degrees.',
  butt: 'The near and far sides run through to the edge; the other two end on them.',
};

const runsOneWay = ({ kind, lines, made }: Motif): boolean =>
  kind === 'border' && made === 'sheet' && lines.across.mirrors.length === 0;

type Candidate = Pick<Board, 'name' | 'says'> & { motif?: Motif };

/** What may be taken for a slot. `own`: names of drawings that the person gave. */
function candidatesOf(slot: Slot, own: readonly string[]): Candidate[] {
  if (slot === 'turn' || slot === 'inner-turn')
    return Object.entries(TURNS).map(([name, says]): Candidate => ({ name, says }));
  const known = allMotifs()
    .filter(({ kind }) => kind === KINDS[slot])
    .map((motif): Candidate => ({ name: motif.name, says: motif.summary, motif }));
  const drawings =
    KINDS[slot] === 'field' ? own.map((name): Candidate => ({ name, says: 'A drawing of your own.' })) : [];
  if (slot === 'border') return [...known, { name: NONE, says: 'The field runs to the edge of the work.' }];
  const nothing = NOTHING_SAYS[slot];
  return [...(nothing ? [{ name: '', says: nothing }] : []), ...drawings, ...known];
}

/** Looks a motif up by the name that the job has for it; own drawings are read from the files that were given. */
type Find = (name: string) => Promise<Motif | undefined>;

const finder =
  (assets: Assets): Find =>
  async (name) => {
    if (!isDrawing(name)) return findMotif(name);
    const bytes = await assets(name);
    if (!bytes.ok) return undefined;
    const read = await keptDrawing(drawingText(bytes.value), name);
    return read.ok ? read.value.motif : undefined;
  };

const usual = ({ parameters }: Motif): Record<string, number> =>
  Object.fromEntries(Object.entries(parameters).map(([name, { default: value }]) => [name, value]));

async function houseOf(text: string, assets: Assets): Promise<House | undefined> {
  const file = houseIn(text);
  const bytes = file === undefined ? undefined : await assets(file);
  return file !== undefined && bytes?.ok ? { file, text: new TextDecoder().decode(bytes.value) } : undefined;
}

const sameIssue = (a: Issue, b: Issue): boolean =>
  a.code === b.code && a.says === b.says && a.path.join('.') === b.path.join('.');

/** Repeats across a board of a field, and how much higher than wide boards are. */
const REPEATS = 2;
const HIGH = 1.25;
/** Widths of the border across a board that shows its corner. */
const WIDTHS = 4.2;

const boxOf = (across: number, along: number): Box => ({
  left: -across / 2,
  right: across / 2,
  top: -along / 2,
  bottom: along / 2,
});

/** The regions as shapes of a patch whose left top lies at a point of the drawing. */
function patchFrom(regions: readonly Region[], left: number, top: number, across: number, along: number): Patch {
  const shapes = regions.map(({ part, pieces, at }) => ({
    part,
    d: pieces.map((piece) => pathText(piece)).join(''),
    at: Array.from(at, (value, n) => value - (n % 2 === 0 ? left : top)),
  }));
  return { across, along, shapes };
}

type FieldOf = MotifChoice & Pick<Job['field'], 'alternation' | 'inset'>;

/** A few repeats of a field, with what stands inside them and by turns. */
async function fieldPatch(field: FieldOf, find: Find, { pitch: { across } }: Scale): Promise<Patch> {
  const motif = await find(field.motif);
  const [wide, high] = [REPEATS * across, REPEATS * across * HIGH];
  if (!motif) return { across: wide, along: high, shapes: [] };
  const pitch = { across, along: across * motif.ratio };
  const first = { drawn: drawMotif(motif, pitch, field.settings), lattice: motif.lattice, cell: pitch };
  const { alternation, inset } = field;
  const other = alternation?.other && (await find(alternation.other.motif));
  const families = familiesOf(
    first,
    alternation?.by,
    other && { drawn: drawMotif(other, pitch, alternation!.other!.settings), lattice: other.lattice },
  );
  const box = boxOf(wide, high);
  const layout = { pitch, phase: { across: 0, along: 0 } };
  const regions = composeField(layout, box, families);
  const guest = inset && (await find(inset.motif));
  if (guest && inset) {
    const { asDrawn } = await import('../../compose/finish.ts');
    const host = { motif, settings: field.settings };
    const within = { motif: guest, settings: inset.settings, size: inset.size };
    regions.push(...composeInset(layout as Layout, box, host, within, asDrawn));
  }
  return patchFrom(regions, box.left, box.top, wide, high);
}

type BorderOf = Pick<Edging, 'turn' | 'run'> & MotifChoice & { corner?: MotifChoice };

/** The left far corner of a border, and as much of both sides as a board shows. */
async function borderPatch(border: BorderOf, find: Find, width: number, order: Edging['order']): Promise<Patch> {
  const [wide, high] = [WIDTHS * width, WIDTHS * width * HIGH];
  const motif = await find(border.motif);
  if (!motif) return { across: wide, along: high, shapes: [] };
  const corner = border.corner && (await find(border.corner.motif));
  const pitch = width * motif.ratio;
  // An even number, of which the nearer half is seen whole.
  const count = 4 * Math.ceil((WIDTHS * HIGH * width) / pitch / 2 + 1);
  const [clear, own] = border.turn === 'butt' ? [0, 2] : [2, 2];
  const outer = boxOf(count * pitch + clear * width, count * pitch + own * width);
  const regions = await composeEdging({
    order,
    outer,
    width,
    repeats: { across: count, along: count },
    motif,
    settings: border.settings,
    turn: border.turn,
    run: border.run,
    ...(corner && border.corner ? { corner: { motif: corner, settings: border.corner.settings } } : {}),
  });
  const [left, top] = [outer.left, outer.top];
  const near = regions.map((region) => ({
    ...region,
    at: region.at.filter((_, n) => {
      const [x, y] = [region.at[n - (n % 2)]!, region.at[n - (n % 2) + 1]!];
      const reach = Math.max(width, pitch);
      return motif.made === 'tape' || (x - left < wide + reach && y - top < high + reach);
    }),
  }));
  return patchFrom(
    near.filter(({ at }) => at.length > 0),
    left,
    top,
    wide,
    high,
  );
}

function medallionPatch(motif: Motif, settings: Record<string, number>, room: Pair, { pitch }: Scale): Patch {
  const cell = { across: room.across * pitch.across, along: room.along * pitch.along };
  const [across, along] = [cell.across * 1.1, cell.along * 1.1];
  const regions = drawMotif(motif, cell, settings).map(
    ({ part, pieces }): Region => ({ element: 'medallion', part, pieces, cut: false, at: Float64Array.of(0, 0) }),
  );
  return patchFrom(regions, -across / 2, -along / 2, across, along);
}

/** Room of a medallion that is not in the job yet, in repeats. */
const MEDALLION = { across: 3, along: 3 };

const EMPTY: BorderOf = { motif: '', settings: {}, turn: 'block', run: 'reverse' };

/** What is drawn for a slot: the job as it stands, with one thing in place of another. */
type Drawable =
  | { kind: 'field'; field: FieldOf }
  | { kind: 'border' | 'inner'; border: BorderOf; width: number }
  | { kind: 'medallion'; medallion: MotifChoice & { repeats: Pair } };

/** How a border turns that nobody told how: by its own corner, else by a block where one is drawn, else as it can. */
function turning(motif: Motif, turn: Turn | undefined, corner: MotifChoice | undefined, named: boolean): Turn {
  if (turn) return turn;
  if (motif.corner && !named) return OWN;
  return corner ? 'block' : motif.refuses?.mitre ? 'butt' : 'mitre';
}

/** @param taken whether the job has it now, so that its settings hold */
function drawableOf(
  slot: Slot,
  { name, motif }: Candidate,
  { tree, job, taken, scale }: { tree: JobTree; job: Job | undefined; taken: boolean; scale: Scale },
): Drawable {
  const alone: MotifChoice = motif ? { motif: motif.name, settings: usual(motif) } : { motif: '', settings: {} };
  const field: FieldOf = job?.field ?? { motif: '', settings: {} };
  switch (slot) {
    case 'field':
      return { kind: 'field', field: taken && job ? field : { ...field, ...alone } };
    case 'alternate': {
      if (taken && job) return { kind: 'field', field };
      const by = field.alternation?.by ?? 'checker';
      return { kind: 'field', field: { ...field, alternation: motif ? { by, other: alone } : { by } } };
    }
    case 'inset': {
      if (taken && job) return { kind: 'field', field };
      const { inset, ...rest } = field;
      return { kind: 'field', field: motif ? { ...rest, inset: { ...alone, size: inset?.size ?? INSET } } : rest };
    }
    case 'medallion': {
      const had = job?.medallion;
      return { kind: 'medallion', medallion: taken && had ? had : { ...alone, repeats: had?.repeats ?? MEDALLION } };
    }
    default: {
      const isInner = slot.startsWith('inner');
      const had: BorderOf = (isInner ? job?.inner : job?.border) ?? EMPTY;
      const place = {
        kind: isInner ? ('inner' as const) : ('border' as const),
        width: isInner ? scale.inner : scale.border,
      };
      if (taken && job) return { ...place, border: had };
      if (slot.endsWith('turn')) return { ...place, border: { ...had, turn: name as Turn } };
      if (slot.endsWith('corner')) return { ...place, border: { ...had, corner: alone, turn: 'block' } };
      const [turns, corners] = isInner ? (['inner-turn', 'inner-corner'] as const) : (['turn', 'corner'] as const);
      const said = namedAt(tree, turns).name as Turn | '';
      const named = namedAt(tree, corners).name !== '';
      const turn = motif ? turning(motif, said === OWN ? undefined : said || undefined, had.corner, named) : had.turn;
      return { ...place, border: { ...had, ...alone, turn } };
    }
  }
}

async function patchOf(drawable: Drawable, find: Find, scale: Scale): Promise<Patch> {
  if (drawable.kind === 'field') return fieldPatch(drawable.field, find, scale);
  if (drawable.kind !== 'medallion') return borderPatch(drawable.border, find, drawable.width, drawable.kind);
  const { medallion } = drawable;
  const motif = await find(medallion.motif);
  if (!motif) return { across: 1, along: HIGH, shapes: [] };
  return medallionPatch(motif, medallion.settings, medallion.repeats, scale);
}

const kept = new Map<string, Patch>();
const MOST_KEPT = 300;

/** Drawings that the person gave may have changed under their names. */
export function boardsAnew(): void {
  kept.clear();
  last = undefined;
}

/** What boards of a slot are asked for. */
export interface BoardsWanted {
  slot: Slot;
  scale: Scale;
  /** Drawings that the person gave, by their paths. */
  own: readonly string[];
  /** One name only. */
  only?: string;
}

let last: { text: string; job: Result<Job> } | undefined;

/** Reads the job of a tree; the last one is kept, as several slots ask about the same job. */
const reader =
  (assets: Assets, slot: Slot) =>
  async (tree: JobTree): Promise<Result<Job>> => {
    const text = writeJob('', tree);
    if (last?.text === text) return last.job;
    try {
      const job = readJob(text, 'the job', allMotifs(), await houseOf(text, assets));
      last = { text, job };
      return job;
    } catch (error) {
      return bad({ code: 'motif/broken', path: [...pathOf(slot)], says: String(error) });
    }
  };

/** Everything that may be taken for a slot, each drawn as it would look in this work. */
export async function boardsOf({ tree }: Pick<Ask, 'tree'>, wanted: BoardsWanted, assets: Assets): Promise<Board[]> {
  const { slot, scale, own, only } = wanted;
  const find = finder(assets);
  const read = await reader(assets, slot)(tree);
  const job = read.ok ? read.value : undefined;
  const now = namedAt(tree, slot).name;
  const boards: Board[] = [];
  for (const one of candidatesOf(slot, own)) {
    if (only !== undefined && one.name !== only) continue;
    const motif = one.motif ?? (await find(one.name));
    const drawable = drawableOf(
      slot,
      { ...one, ...(motif ? { motif } : {}) },
      { tree, job, taken: one.name === now, scale },
    );
    const key = JSON.stringify([drawable, scale]);
    const patch = kept.get(key) ?? (await patchOf(drawable, find, scale));
    if (kept.size >= MOST_KEPT) kept.delete(kept.keys().next().value!);
    kept.set(key, patch);
    const says = motif && isDrawing(one.name) ? motif.summary : one.says;
    boards.push({
      name: one.name,
      says,
      parameters: motif?.parameters ?? {},
      hasRoom: motif?.rooms !== undefined,
      runsOneWay: motif !== undefined && runsOneWay(motif),
      patch,
    });
  }
  return boards;
}

/**
 * Why some of what there is cannot be taken for a slot, by its name, in sentences: each is tried in the job, and read.
 * @param wait is asked before each; with false it is given up
 * @returns nothing when it was given up
 */
export async function refusalsOf(
  { tree }: Pick<Ask, 'tree'>,
  { slot, own }: Pick<BoardsWanted, 'slot' | 'own'>,
  assets: Assets,
  wait: () => Promise<boolean> = async () => true,
): Promise<Record<string, string[]> | undefined> {
  const read = reader(assets, slot);
  const known = await read(tree).then((now) => (now.ok ? [] : now.issues));
  const taken = namedAt(tree, slot).name;
  const refusals: Record<string, string[]> = {};
  for (const { name } of candidatesOf(slot, own)) {
    if (name === taken) continue;
    if (!(await wait())) return undefined;
    const tried = takeChanges(tree, slot, name).reduce((whole, [path, value]) => withValue(whole, path, value), tree);
    const job = await read(tried);
    const why = job.ok ? [] : job.issues.filter((issue) => !known.some((had) => sameIssue(had, issue)));
    if (why.length > 0) refusals[name] = why.map(({ says }) => sentence(says));
  }
  return refusals;
}
