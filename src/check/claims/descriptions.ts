import { type Claim, equal, type Proof, unproven } from '../claim.ts';
import type { FileSet, Sheet } from '../file-set.ts';
import { met } from '../measure/floor-room.ts';
import { plainWords } from '../read/blocks.ts';
import type { FloorEntry } from '../read/floor.ts';
import { LENGTH, type Said, saidOf } from '../read/said.ts';
import { readSvg } from '../read/svg.ts';

/** Drawings that begin with the title of the work. */
const TITLED = ['plan.svg', 'marks.svg', 'template.svg', 'room.svg', 'cloth.svg', 'flight.svg'];
/** Drawings whose description repeats what the job sheet says, sentence by sentence. */
const REPEATED = ['room.svg', 'cloth.svg', 'flight.svg'];
const L = `(${LENGTH})`;

export const proof: Proof = {
  claims:
    'titles and descriptions of drawings and sheets: sizes, counts, times laid, walls, and sentences that the job sheet has as well',
  files: [
    'cloth.svg',
    'flight.svg',
    'job-sheet.html',
    'layout.json',
    'marks.svg',
    'plan.svg',
    'room.svg',
    'stencil-*.svg',
    'template.svg',
  ],
  method: 'words of the SVG parsed and compared with what the file draws, the layout and the job sheet',
  tolerance: 'half a step of the tape; 0.001 mm where in millimetres',
};

/** What drawings say of themselves, to those who hear them read or open them elsewhere, is so. */
export default function descriptions(set: FileSet): Claim[] {
  const said = saidOf(set);
  return [
    ...TITLED.filter((name) => set.content(name) !== undefined).flatMap((name) => {
      const claim = `${name.replace('.svg', '')} describes itself as it is`;
      const svg = set.read(name, readSvg);
      if (!svg.ok || !said.ok) return [unproven(name, claim, svg.ok ? (said as { says: string }).says : svg.says)];
      const [title = '', ...rest] = svg.value.words.split('\n').map(plainWords);
      const names = title.startsWith(`${plainWords(said.value.layout.job.title)}: `);
      const wrong = wrongSentence(name, rest.join(' '), said.value);
      return [
        equal(
          name,
          `${name.replace('.svg', '')} has the title of the work`,
          names ? 'it has' : title.slice(0, 60),
          'it has',
        ),
        equal(name, claim, wrong?.slice(0, 90) ?? 'it does', 'it does'),
      ];
    }),
    ...set.sheets().flatMap(ofSheet),
  ];
}

/** `A sheet 601.714 by 367.517 mm, …, with 8 windows and 11 keys. It is laid 6 times, in 4 passes.` */
function ofSheet({ entry, drawn }: Sheet): Claim[] {
  const claim = 'the sheet describes itself as it is';
  if (!drawn.ok) return [unproven(entry.file, claim, drawn.says)];
  const { svg, windows, keys } = drawn.value;
  const found =
    /A sheet ([\d.]+) by ([\d.]+) mm, .*?with (\d+) windows? and (\d+) keys?\. It is laid (\d+) times?, in (\d+) pass(?:es)?\./.exec(
      plainWords(svg.words),
    );
  const due = [svg.width, svg.height, windows.size, keys.size, entry.passes.flat().length, entry.passes.length];
  const at = due.findIndex((one, i) => Math.abs(Number(found?.[i + 1] ?? Number.NaN) - one) > 1e-3 + 1e-9);
  const missing = found === null;
  return [
    equal(entry.file, claim, missing ? 'it says nothing' : at < 0 ? 'it does' : `not ${found[at + 1]}`, 'it does'),
    equal(
      entry.file,
      'the sheet is named by its colour',
      plainWords(svg.words).startsWith(`Stencil for ${plainWords(entry.colour)}: `) ? 'it is' : 'it is not',
      'it is',
    ),
  ];
}

type Fact = [words: RegExp, due: (said: Said) => readonly number[] | undefined];

/** Facts by the drawing that states them: the lengths in turn. */
const FACTS: Record<string, Fact[]> = {
  'plan.svg': [
    [
      new RegExp(`Overall ${L} across and ${L} along`),
      ({ layout: { layout } }) => [layout.overall.across, layout.overall.along],
    ],
    [new RegExp(`Field ${L} by ${L}:`), ({ layout: { layout } }) => [layout.field.across, layout.field.along]],
    [new RegExp(`repeats of ${L} by ${L}\\.`), ({ layout: { layout } }) => [layout.pitch.across, layout.pitch.along]],
    [new RegExp(`Border ${L} (?:all round|wide)`), ({ layout }) => [layout.roomBorder?.width ?? layout.layout.border]],
  ],
  'template.svg': [
    [
      new RegExp(`One repeat, ${L} across and ${L} along`),
      ({ layout }) => {
        const repeat = layout.roomBorder?.walls.find(({ repeats }) => repeats > 0);
        if (layout.roomBorder) return repeat && [repeat.pitch, layout.roomBorder.width];
        return [layout.layout.pitch.across, layout.layout.pitch.along];
      },
    ],
  ],
};

function wrongSentence(name: string, words: string, said: Said): string | undefined {
  const { layout, lines, is } = said;
  for (const [pattern, due] of FACTS[name] ?? []) {
    const found = pattern.exec(words);
    const lengths = found && due(said);
    if (found && lengths && !found.slice(1).every((length, at) => is(length, lengths[at]!))) return `not ${found[0]}`;
  }
  if (name === 'plan.svg' && !layout.roomBorder) {
    if (!/Overall .* across/.test(words)) return 'it tells no size';
    const counts = /: ([\d.]+) by ([\d.]+) repeats of/.exec(words);
    const { repeats } = layout.layout;
    if (counts && (Number(counts[1]) !== repeats.across || Number(counts[2]) !== repeats.along)) return counts[0];
  }
  if (layout.roomBorder && name === 'plan.svg') return wrongWalls(words, said);
  if (!REPEATED.includes(name)) return undefined;
  const page = lines.join(' ');
  // Each sentence with a number stands on the job sheet as well; the sizes that open it are told there in other words.
  return words
    .split(/(?<=\.) /)
    .filter((sentence) => /\d/.test(sentence) && !page.includes(sentence))
    .find((sentence) => !isKnown(name, sentence, said));
}

/** `1 wall 1 13' 0 1/2", strip 2 15/16", 49 repeats; 2 alcove …` */
function wrongWalls(words: string, { layout, is }: Said): string | undefined {
  const walls = layout.roomBorder!.walls;
  let at = 0;
  for (const [number, wall] of walls.entries()) {
    const start = words.indexOf(`${number + 1} ${plainWords(wall.name)} `, at);
    if (start < 0) return `not wall ${number + 1}`;
    const found = new RegExp(`^${L}, strip ${L}, (\\d+) repeat`).exec(
      words.slice(start + `${number + 1} ${plainWords(wall.name)} `.length),
    );
    if (
      wall.repeats > 0 &&
      (!found || !is(found[1]!, wall.length) || !is(found[2]!, wall.strip) || Number(found[3]) !== wall.repeats)
    )
      return `not ${wall.name}`;
    at = start + 1;
  }
  return undefined;
}

/** A sentence of sizes: walls of the room, edges of the cloth, cuts at the walls. */
function isKnown(name: string, sentence: string, said: Said): boolean {
  const lengths = sentence.match(new RegExp(LENGTH, 'g')) ?? [];
  const due = sizesOf(name, sentence, said);
  return due !== undefined && lengths.length === due.length && lengths.every((length, at) => said.is(length, due[at]!));
}

function sizesOf(name: string, sentence: string, { layout, json }: Said): number[] | undefined {
  if (name === 'cloth.svg') {
    const cloth = json.cloth as Record<string, { across: number; along: number }> | undefined;
    const kind = { finished: 'finished', trimmed: 'hemmed', cut: 'cut' }[sentence.split(' ')[0]!];
    const size = kind && cloth?.[kind];
    return size ? [size.across, size.along] : undefined;
  }
  if (/^Repeats cut at the walls: near /.test(sentence) && layout.floor) return cutSizes(sentence, layout.floor);
  if (/^Walls: near .*right .*far .*left/.test(sentence))
    return layout.floor ? wallSizes(layout.floor) : roomSizes(json);
  return undefined;
}

const WALLS = ['near', 'right', 'far', 'left'] as const;

function roomSizes(json: Said['json']): number[] | undefined {
  const walls = (json.room as { walls?: Record<string, number> } | undefined)?.walls;
  return walls ? WALLS.map((wall) => walls[wall]!) : undefined;
}

/** What each wall cuts, once where it is even; nothing where repeats are whole there, as the layout has it. */
function cutSizes(sentence: string, { walls }: FloorEntry): number[] {
  const told = sentence.split(', ');
  return WALLS.flatMap((wall, at) => {
    const { least, most, whole } = walls[wall].cut;
    if (/ whole\.?$/.test(told[at] ?? '')) return whole ? [] : [Number.NaN];
    return / to /.test(told[at] ?? '') ? [least, most] : [least];
  });
}

const wallSizes = ({ corners }: FloorEntry): number[] => WALLS.map((wall) => met(corners, wall).length);
