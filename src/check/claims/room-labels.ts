import { parseLength } from '../../units/index.ts';
import { type Claim, equal, type Proof, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { centre } from '../measure/finder.ts';
import { frameOf } from '../measure/frame.ts';
import { seenFrom } from '../measure/room-walls.ts';
import { readPath } from '../read/path.ts';
import type { RoomBorderEntry, WallEntry } from '../read/room-border.ts';

const FILE = 'plan.svg';
const LENGTHS = 'the lengths on the plan are those of its walls';
/** Labels are rounded to the tape's step; this much is added for numbers that lie half way, mm. */
const HALF_WAY = 1e-3;

/** A label so many times as long as it is high shows which way it runs. */
const LONG = 2;

/** `13' 0 1/2", 49 repeats`, or a bare length. */
const ALONG = /^(.+?)(?:, (\d+) repeats)?$/;
/** `49`, or `49 of 2 15/16"` where each wall has its own pitch. */
const LANDS = /^(\d+)(?: of (.+))?$/;

interface Label {
  words: string;
  middle: readonly [number, number];
  /** From left to right, or up the plan; a short one does not tell. */
  way: 'level' | 'upright' | undefined;
}

export const proof: Proof = {
  claims: 'length and count beside every wall; the table of walls',
  files: ['layout.json', 'plan.svg'],
  method: 'labels parsed, by the wall they lie along',
  tolerance: 'half a step of the tape',
};

/** What is written on the plan of a room: beside every wall its length and count, and in the table its name, length, strip and repeats. */
export default function roomLabels(set: FileSet): Claim[] {
  const layout = set.layout();
  if (!layout.ok || layout.value.job.surface !== 'room-border') return [];
  const { roomBorder: room, job } = layout.value;
  const plan = set.plan();
  if (!plan.ok || !room) return [unproven(FILE, LENGTHS, plan.ok ? 'no walls are told' : plan.says)];
  const written = (group: string) =>
    plan.value.svg.paths.flatMap(({ groups, attributes: { 'data-label': words, d = '' } }) =>
      words !== undefined && groups.includes(group) ? [{ words, d }] : [],
    );
  const reads = (words: string, mm: number): boolean => {
    const length = parseLength(words, job.units);
    return length.ok && Math.abs(length.mm - mm) <= job.step / 2 + HALF_WAY;
  };
  const told = written('words').map(({ words }) => words);
  return [alongWalls(written('dimensions').flatMap(lie), room, reads), table(told, room, reads)];
}

/** Where a label lies that is drawn at all. */
function lie({ words, d }: { words: string; d: string }): Label[] {
  const drawn = readPath(d);
  if (!drawn.ok || drawn.value.outlines.length === 0) return [];
  const frame = frameOf(drawn.value.outlines.map((outline) => outline.frame));
  const slant = (frame.right - frame.left) / (frame.bottom - frame.top);
  const way = slant > LONG ? 'level' : slant < 1 / LONG ? 'upright' : undefined;
  return [{ words, middle: centre(frame), way }];
}

type Reads = (words: string, mm: number) => boolean;

/** Every length stands behind the middle of the wall that is so long, written along it, and counts its repeats. */
function alongWalls(labels: Label[], { walls }: RoomBorderEntry, reads: Reads): Claim {
  const wallOf = ({ middle, way }: Label): WallEntry | undefined =>
    walls
      .map((wall) => ({ wall, seen: seenFrom(wall, middle) }))
      .filter(({ wall, seen: [along, off] }) => {
        const beside = Math.abs(along - wall.length / 2) <= wall.length / 8;
        return beside && off < 0 && (way === undefined || (way === 'level') === (wall.heading % 2 === 1));
      })
      .sort((a, b) => b.seen[1] - a.seen[1])[0]?.wall;
  const wrong = labels.find((label) => {
    const [, length = '', count] = ALONG.exec(label.words)!;
    const wall = wallOf(label);
    return !wall || !reads(length, wall.length) || (count !== undefined && Number(count) !== wall.repeats);
  });
  const said = labels.length === 0 ? 'none is written' : 'they are';
  return equal(FILE, LENGTHS, wrong ? `${wrong.words} is not` : said, 'they are');
}

/** The table beside the plan has one row a wall, in turn, after its heading. */
function table(words: string[], { walls, pitch }: RoomBorderEntry, reads: Reads): Claim {
  const claim = 'the table on the plan tells every wall as it is';
  const rows = walls.map((_, at) => words.slice(words.indexOf('1') + 5 * at, words.indexOf('1') + 5 * at + 5));
  const none = walls.some(({ repeats }) => repeats > 0) ? 'none' : 'a band';
  const lands = (text: string, wall: WallEntry): boolean => {
    const found = LANDS.exec(text);
    if (!found) return wall.repeats === 0 && text === none;
    const each = found[2] === undefined ? pitch === 'one' : pitch === 'each wall' && reads(found[2], wall.pitch);
    return Number(found[1]) === wall.repeats && each;
  };
  const wrong = walls.find((wall, at) => {
    const [number, name, length, strip, count] = rows[at]!;
    return !(
      number === `${at + 1}` &&
      name === wall.name &&
      reads(length ?? '', wall.length) &&
      reads(strip ?? '', wall.strip) &&
      lands(count ?? '', wall)
    );
  });
  return equal(FILE, claim, wrong ? `not ${wrong.name}` : 'all walls', 'all walls');
}
