import { type Claim, equal, type Proof, unproven } from '../claim.ts';
import type { FileSet, Sheet } from '../file-set.ts';
import { seenFrom } from '../measure/room-walls.ts';
import type { PlacementEntry } from '../read/layout.ts';
import { LENGTH, type Said, saidOf } from '../read/said.ts';

const FILE = 'job-sheet.html';
const TURNS = ['as drawn', 'quarter turn right', 'half turn', 'quarter turn left'];

export const proof: Proof = {
  claims:
    'size, windows and keys of every sheet, and where it is laid: distance across and along, turn, open windows, pass by pass',
  files: ['job-sheet.html', 'layout.json', 'stencil-*.svg'],
  method: 'rows told out placement by placement and matched with the middle of the sheet at each placement',
  tolerance: 'half a step of the tape',
};

/** Where the job sheet says that sheets are laid is where they are laid; their size, windows and keys are those of their files. */
export default function jobSheetLays(set: FileSet): Claim[] {
  const read = saidOf(set);
  if (!read.ok) return [unproven(FILE, 'the job sheet says where every sheet is laid', read.says)];
  return set.sheets().flatMap((sheet) => claimsOf(sheet, read.value));
}

type Two = { across: string; along: string };
/** One placement as the sheet tells it, or one place along a wall. */
interface Told {
  at: Two | string;
  turn: string;
  open: string;
}

function claimsOf({ entry, drawn }: Sheet, said: Said): Claim[] {
  const name = entry.file.replace(/\.svg$/, '');
  const [what, where] = [
    `the job sheet has size, windows and keys of ${name} as they are`,
    `the job sheet says where ${name} is laid`,
  ];
  if (!drawn.ok) return [unproven(FILE, what, drawn.says)];
  const blocks = said.blocks.slice(said.blocks.findIndex(({ tag, cells }) => tag === 'h3' && cells[0] === entry.file));
  const end = blocks.findIndex(({ tag }, at) => at > 0 && /^h/.test(tag));
  const own = end < 0 ? blocks : blocks.slice(0, end);
  const { width, height } = drawn.value.svg.view;
  const size = new RegExp(`^(${LENGTH}) × (${LENGTH}), (\\d+) windows? and (?:(\\d+) keys?|no keys)\\.$`);
  const told = own.flatMap(({ cells }) => size.exec(cells[0]!) ?? []);
  const isSo =
    said.is(told[1] ?? '', width) &&
    said.is(told[2] ?? '', height) &&
    Number(told[3]) === drawn.value.windows.size &&
    Number(told[4] ?? 0) === drawn.value.keys.size;
  const rows = own.filter(({ tag, cells }) => tag === 'tr' && cells.length > 0).map(({ cells }) => cells);
  const wrong = wrongPass(
    entry.passes,
    rows,
    entry.windows,
    (place) => middleOf(place, entry.origin, width, height),
    said,
  );
  return [
    equal(FILE, what, isSo ? 'as they are' : (told[0] ?? 'it is not told'), 'as they are'),
    equal(FILE, where, wrong ?? 'it does', 'it does'),
  ];
}

/** Where the middle of a sheet lies: turned about the place its origin comes to. */
function middleOf(
  { turn, x, y }: PlacementEntry,
  [ox, oy]: [number, number],
  width: number,
  height: number,
): [number, number] {
  let [dx, dy] = [width / 2 - ox, height / 2 - oy];
  for (let at = 0; at < turn; at++) [dx, dy] = [-dy, dx];
  return [x + dx, y + dy];
}

/** The passes of the table: each with its count and its rows. */
function passesIn(rows: readonly string[][]): { count: number; rows: string[][] }[] {
  const passes: { count: number; rows: string[][] }[] = [];
  for (const cells of rows) {
    const words = cells.filter((cell) => cell !== '');
    const head = words.length === 1 ? /^Pass (\d+).*: (\d+) placements?$/.exec(words[0]!) : null;
    if (head && Number(head[1]) === passes.length + 1) passes.push({ count: Number(head[2]), rows: [] });
    else if (words[0] !== 'Done' && passes.length > 0) passes.at(-1)!.rows.push(cells.slice(-4));
  }
  return passes;
}

function wrongPass(
  due: readonly PlacementEntry[][],
  rows: readonly string[][],
  windows: number,
  middle: (place: PlacementEntry) => [number, number],
  said: Said,
): string | undefined {
  const told = passesIn(rows);
  if (told.length !== due.length) return `${told.length} passes`;
  const at = due.findIndex((pass, number) => {
    const { count, rows } = told[number]!;
    return count !== pass.length || !sameLays(pass, rows.flatMap(spread), windows, middle, said);
  });
  return at < 0 ? undefined : `not pass ${at + 1}`;
}

/** Every row told out: each place across with each along, or each place along a wall. */
function spread([first = '', second = '', turn = '', open = '']: string[]): Told[] {
  const across = sidesOf(first, ['left', 'right']);
  if (!across) return second.split(', ').map((at) => ({ at: `${first}|${at}`, turn, open }));
  const along = sidesOf(second, ['far', 'near']) ?? second.split(', ');
  return across.flatMap((x) => along.map((y) => ({ at: { across: x, along: y }, turn, open })));
}

/** `3", 9" left; on the axis; 15" right` as `3" left`, `9" left` …; nothing where it tells no sides. */
function sidesOf(words: string, sides: readonly [string, string]): string[] | undefined {
  const found = words.split('; ').map((part) => {
    const side = sides.find((one) => part.endsWith(` ${one}`));
    if (side) {
      const lengths = part.slice(0, -side.length - 1).split(', ');
      return lengths.map((length) => `${length} ${side}`);
    }
    return /^on (?:it|the axis)$/.test(part) ? ['on the axis'] : undefined;
  });
  return found.every((one) => one !== undefined) ? found.flat() : undefined;
}

function sameLays(
  pass: readonly PlacementEntry[],
  told: readonly Told[],
  windows: number,
  middle: (place: PlacementEntry) => [number, number],
  said: Said,
): boolean {
  if (told.length !== pass.length) return false;
  const left = [...told];
  return pass.every((place) => {
    const open = place.open.length === windows ? 'all' : `only ${numbers(place.open)}`;
    const at = left.findIndex(
      (one) => one.turn === TURNS[place.turn] && one.open === open && isAt(one.at, middle(place), said),
    );
    if (at < 0) return false;
    left.splice(at, 1);
    return true;
  });
}

function isAt(at: Told['at'], [x, y]: [number, number], said: Said): boolean {
  const { layout } = said;
  if (typeof at === 'string') return isAlongWall(at, [x, y], said);
  const isLeftRight = isFrom(at.across, x, ['left', 'right'], said);
  if (layout.job.surface === 'floor') return isLeftRight && isFrom(at.along, y, ['far', 'near'], said);
  const { gaps, work } = layout.layout;
  const along = gaps.near + work.along / 2 - y;
  return isLeftRight && isPlace(at.along, along, said);
}

/** So far along from the beginning, or so far before it. */
function isPlace(words: string, along: number, { is }: Said): boolean {
  const before = / before it$/.test(words);
  return is(words.replace(/ before it$/, ''), before ? -along : along);
}

/** A distance to one side or the other of a line. */
function isFrom(words: string, value: number, [less, more]: [string, string], { is }: Said): boolean {
  if (words === 'on the axis') return Math.abs(value) < 1e-3;
  const side = value < 0 ? less : more;
  return words.endsWith(` ${side}`) && is(words.slice(0, -side.length - 1), Math.abs(value));
}

/** So far along a wall of a room border, or on the block at a corner. */
function isAlongWall(at: string, [x, y]: [number, number], said: Said): boolean {
  const [where = '', words = ''] = at.split('|');
  if (words === 'on its block') return /^corner \d+$/.test(where);
  return (said.layout.roomBorder?.walls ?? []).some((wall) => {
    const [along] = seenFrom(wall, [x, y]);
    return wall.name === where && isPlace(words, along, said);
  });
}

/** `1 to 3, 5`, counted from 1. */
function numbers(open: readonly number[]): string {
  const sorted = [...open].map((at) => at + 1).sort((a, b) => a - b);
  const said: string[] = [];
  for (let from = 0; from < sorted.length; ) {
    let to = from;
    while (sorted[to + 1] === sorted[to]! + 1) to++;
    if (to > from + 1) said.push(`${sorted[from]} to ${sorted[to]}`);
    else for (let at = from; at <= to; at++) said.push(String(sorted[at]));
    from = to + 1;
  }
  return said.join(', ');
}
