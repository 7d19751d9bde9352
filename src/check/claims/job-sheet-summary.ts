import { type Claim, equal, type Proof, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { plainWords } from '../read/blocks.ts';
import { LENGTH, type Said, saidOf } from '../read/said.ts';

const FILE = 'job-sheet.html';
const LAYOUT = 'layout.json';

export const proof: Proof = {
  claims: 'title, the sentence of the layout, overall, field, repeats, border, reserve',
  files: ['job-sheet.html', 'layout.json'],
  method: 'sentences and facts parsed and compared with layout.json',
  tolerance: 'half a step of the tape',
};

/** What stands at the head of the job sheet: the work in one sentence, and its sizes. */
export default function jobSheetSummary(set: FileSet): Claim[] {
  const claim = 'the job sheet begins with what the layout says of itself';
  const read = saidOf(set);
  if (!read.ok) return [unproven(FILE, claim, read.says)];
  const said = read.value;
  const { json, lines, layout } = said;
  const own = (json.layout ?? json.roomBorder) as { says?: unknown } | undefined;
  const says = plainWords(String(own?.says ?? ''));
  const title = lines.includes(plainWords(layout.job.title));
  const wrong = wrongFact(said);
  const odd = wrongWords(says, said);
  return [
    equal(FILE, 'the job sheet has the title of the work', title ? 'it has' : 'it has not', 'it has'),
    equal(FILE, claim, says !== '' && lines.includes(says) ? 'it does' : 'it does not', 'it does'),
    equal(LAYOUT, 'what the layout says of itself is so', odd ?? 'all of it', 'all of it'),
    equal(FILE, 'the sizes at the head of the job sheet are those of the work', wrong ?? 'all', 'all'),
  ];
}

const TWO = new RegExp(`^(${LENGTH}) × (${LENGTH})$`);
/** A repeat may be told in pieces, such as squares, up to so many a repeat. */
const PIECES = [1, 2, 3, 4];

/** `3½` and `½` as numbers. */
const halvesOf = (words: string): number => Number(words.replace('½', '') || 0) + (words.includes('½') ? 0.5 : 0);

/** Counts and the size of one, as pieces of repeats: as many to a repeat both ways. */
function arePieces(said: Said, counts: readonly number[], sizes: readonly string[]): boolean {
  const { repeats, pitch } = said.layout.layout;
  const due = [
    [repeats.across, pitch.across],
    [repeats.along, pitch.along],
  ] as const;
  return PIECES.some((each) =>
    due.every(
      ([count, size], at) => Math.abs(counts[at]! - count * each) < 1e-6 && said.is(sizes[at] ?? '', size / each),
    ),
  );
}

/** The list of sizes: each name and what it must be. */
function wrongFact(said: Said): string | undefined {
  const { blocks, layout } = said;
  const facts = new Map<string, string>();
  blocks.forEach(({ tag, cells }, at) => {
    if (tag === 'dd' && blocks[at - 1]?.tag === 'dt') facts.set(blocks[at - 1]!.cells[0]!, cells[0]!);
  });
  const wrong = layout.roomBorder ? wrongOfRoom(said, facts) : wrongOfRectangle(said, facts);
  return wrong === undefined ? undefined : `not ${wrong}: ${facts.get(wrong) ?? 'it is missing'}`;
}

function wrongOfRoom({ layout, is }: Said, facts: Map<string, string>): string | undefined {
  const { width, walls } = layout.roomBorder!;
  const strips = walls.map(({ strip }) => strip);
  const repeats = walls.reduce((sum, one) => sum + one.repeats, 0);
  const range = (facts.get('Strip off the walls') ?? '').split(' to ');
  if (!is(facts.get('Border') ?? '', width)) return 'Border';
  if (!is(range[0] ?? '', Math.min(...strips)) || !is(range.at(-1) ?? '', Math.max(...strips)))
    return 'Strip off the walls';
  if (repeats > 0 && facts.get('Repeats') !== String(repeats)) return 'Repeats';
  return undefined;
}

function wrongOfRectangle(said: Said, facts: Map<string, string>): string | undefined {
  const { layout, is } = said;
  const { overall, field, border, reserve, inner } = layout.layout;
  const strip = inner ? inner.offset : reserve;
  const two = (words: string | undefined, size: { across: number; along: number }): boolean => {
    const found = TWO.exec(words ?? '');
    return found !== null && is(found[1]!, size.across) && is(found[2]!, size.along);
  };
  const either = (words: string, size: { across: number; along: number }): boolean =>
    two(words, size) || (is(words, size.across) && is(words, size.along));
  if (layout.job.surface !== 'floor') {
    if (!two(facts.get('Overall, across × along'), overall)) return 'Overall, across × along';
    if (!two(facts.get('Field'), field)) return 'Field';
  }
  const [each] = [...facts].filter(([name]) => /^Each /.test(name));
  const count = [...facts].find(([, words]) => /^[\d½]+ × [\d½]+$/.test(words));
  if (!each || !count || !arePieces(said, count[1].split(' × ').map(halvesOf), each[1].split(' × ')))
    return count?.[0] ?? 'the count of repeats';
  const border_ = facts.get('Border');
  if (border > 0 ? !is(border_ ?? '', border) : border_ !== undefined && !/^none/i.test(border_)) return 'Border';
  const told = facts.get('Reserve');
  if (told !== undefined && !either(told, strip)) return 'Reserve';
  if (inner && !is(facts.get('Inner border') ?? '', inner.width)) return 'Inner border';
  return undefined;
}

/** Of the sentence, whatever is told in a way that is known: counts, sizes of repeats and borders, margins. */
function wrongWords(says: string, said: Said): string | undefined {
  const { layout, is } = said;
  const border = new RegExp(`border (${LENGTH}) (?:all round|wide)`).exec(says);
  if (layout.roomBorder) {
    const counts = /on every wall: ([\d, ]+);/.exec(says)?.[1];
    const due = layout.roomBorder.walls.map(({ repeats }) => repeats).join(', ');
    if (counts !== undefined && counts !== due) return `not ${counts}`;
    return border && !is(border[1]!, layout.roomBorder.width) ? `not ${border[0]}` : undefined;
  }
  const { border: width, borderRepeats, gaps } = layout.layout;
  const counts = /^([\d½]+) × ([\d½]+) /.exec(says);
  const each = new RegExp(`each (${LENGTH}) across by (${LENGTH}) along`).exec(says);
  if (!counts || !each || !arePieces(said, counts.slice(1).map(halvesOf), each.slice(1)))
    return `not ${counts?.[0] ?? 'how many repeats'}`;
  if (border && !is(border[1]!, width)) return `not ${border[0]}`;
  const round = /, (\d+) repeats on each end and (\d+) on each side/.exec(says);
  if (round && (Number(round[1]) !== borderRepeats.across || Number(round[2]) !== borderRepeats.along))
    return `not${round[0].slice(1)}`;
  for (const [all, more, by, less] of says.matchAll(
    new RegExp(`the (near|far|left|right) margin (${LENGTH}) wider than the (near|far|left|right) one`, 'g'),
  )) {
    const sides = gaps as Record<string, number>;
    if (!is(by!, sides[more!]! - sides[less!]!)) return `not ${all}`;
  }
  return undefined;
}
