import { type Claim, equal, type Proof, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { readRoomEntry } from '../read/room.ts';
import { LENGTH, rowsUnder, type Said, saidOf } from '../read/said.ts';
import { readClothEntry, readFlightEntry } from '../read/surface-entry.ts';

const FILE = 'job-sheet.html';
const L = `(${LENGTH})`;

export const proof: Proof = {
  claims:
    'how to cut and fold the canvas; every step and its panel; walls and cuts of a floor; walls of a room border; axis and corners in a room',
  files: ['job-sheet.html', 'layout.json'],
  method: 'sentences and rows parsed and compared with layout.json',
  tolerance: 'half a step of the tape',
};

/** What the job sheet tells of the canvas, the flight, the walls of a floor, a border round a room, or the room about the work. */
export default function jobSheetSurface(set: FileSet): Claim[] {
  const read = saidOf(set);
  if (!read.ok) return [unproven(FILE, 'the job sheet tells the surface as it is', read.says)];
  const said = read.value;
  const { surface } = said.layout.job;
  return [
    ...(surface === 'floor-cloth' ? cloth(said, set) : []),
    ...(surface === 'stairs' ? flight(said, set) : []),
    ...(surface === 'floor' ? floor(said) : []),
    ...(surface === 'room-border' ? walls(said) : []),
    ...(surface !== 'room-border' && said.json.room !== undefined ? room(said, set) : []),
  ];
}

/** A kind of sentence and what its lengths must be, in turn. */
type Sentence = [words: string, due: readonly number[]];

/** Of all sentences of a kind one that is told otherwise; `needed` where none is there. */
function wrongOf(said: Said, sentences: readonly Sentence[], needed = false): string | undefined {
  for (const [words, due] of sentences) {
    const found = said.lines.flatMap((line) => [...line.matchAll(new RegExp(words, 'g'))]);
    if (needed && found.length === 0) return `it says nothing like ${words.replaceAll(L, '…').slice(0, 50)}`;
    const wrong = found.find((one) => !one.slice(1).every((length, at) => said.is(length, due[at]!)));
    if (wrong) return `not ${wrong[0].slice(0, 90)}`;
  }
  return undefined;
}

const told = (claim: string, wrong: string | undefined): Claim => equal(FILE, claim, wrong ?? 'it does', 'it does');

function cloth(said: Said, set: FileSet): Claim[] {
  const claim = 'the job sheet tells how to cut, trim and fold the canvas as it is';
  const entry = set.read('layout.json', readClothEntry);
  if (!entry.ok) return [unproven(FILE, claim, entry.says)];
  const { cut, hem, trim, hemmed, finished, primed, corners } = entry.value;
  const both = (size: { across: number; along: number }): number[] => [size.across, size.along];
  const sentences: Sentence[] = [
    [`^Cut the canvas ${L} across by ${L} along`, both(cut)],
    ...(trim > 0
      ? [
          [
            `^Draw ${L} across by ${L} along on it, square, and check both diagonals: ${L}\\.`,
            [...both(hemmed), Math.hypot(hemmed.across, hemmed.along)],
          ] as Sentence,
        ]
      : []),
    ...(hem > 0 ? [[`^Rule the fold lines on the back, ${L} inside`, [hem]] as Sentence] : []),
    ...(hem > 0 && corners === 'mitred' ? [[`^Cut off each corner: ${L} from the corner`, [2 * hem]] as Sentence] : []),
  ];
  const more: Sentence[] = [
    [`along: ${L} by ${L} with a hem`, both(finished)],
    [`with a hem of ${L}`, [hem]],
    [`and ${L} to trim off`, [trim]],
    [
      `^It should now be ${L} across by ${L} along\\. Check both diagonals: ${L}\\.`,
      [...both(hemmed), Math.hypot(hemmed.across, hemmed.along)],
    ],
  ];
  const rows = rowsUnder(said.blocks, ['Size', 'Across', 'Along']) ?? [];
  const sizes = [cut, primed, hemmed, finished];
  const odd = sizes.findIndex(
    (size, at) => !said.is(rows[at]?.[1] ?? '', size.across) || !said.is(rows[at]?.[2] ?? '', size.along),
  );
  return [
    told(claim, wrongOf(said, sentences, true) ?? wrongOf(said, more)),
    told('the job sheet has the sizes of the canvas', odd < 0 ? undefined : `not row ${odd + 1}`),
  ];
}

function flight(said: Said, set: FileSet): Claim[] {
  const claim = 'the job sheet tells every step and where its panel stands';
  const entry = set.read('layout.json', readFlightEntry);
  if (!entry.ok) return [unproven(FILE, claim, entry.says)];
  const { across, along } = said.layout.layout.work;
  const head = said.blocks.findIndex(({ cells }) => cells.includes('Step') && cells.includes('Panel, from the left'));
  const rows = said.blocks.slice(head + 1).map(({ cells }) => cells.slice(1));
  const { is } = said;
  const wrong = entry.value.steps.find((step, at) => {
    const [number, size = '', line = '', beside = '', up = ''] = rows[at] ?? [];
    const { sides, below } = step.margins;
    const [wide = '', high = ''] = size.split(' × ');
    const from = (words: string, start: number, long: number) => {
      const [one = '', other = ''] = words.split(' to ');
      return is(one, start) && is(other, start + long);
    };
    return !(
      number === String(step.step) &&
      is(wide, step.across) &&
      is(high, step.along) &&
      is(line, step.across / 2) &&
      from(beside, sides, across) &&
      from(up, below, along)
    );
  });
  const panel: Sentence[] = [
    [`^The panel is ${L} by ${L} on every step`, [across, along]],
    [`^The plan is the panel, ${L} by ${L},`, [across, along]],
  ];
  return [
    told(claim, head < 0 ? 'it has no such table' : wrong ? `not step ${wrong.step}` : undefined),
    told('the job sheet tells the panel as large as it is', wrongOf(said, panel, true)),
  ];
}

function floor(said: Said): Claim[] {
  const { floor: entry } = said.layout;
  if (!entry) return [];
  const rows = said.blocks
    .filter(({ tag, cells }) => tag === 'tr' && / wall$/.test(cells[0]!))
    .map(({ cells }) => cells);
  const ends = (words: string, { cut }: (typeof entry.walls)['near']): boolean => {
    if (/^a whole /.test(words)) return cut.whole;
    const [least = '', most = least] = words.replace(/ of .*$/, '').split(' to ');
    return said.is(least, cut.least) && said.is(most, cut.most);
  };
  const wrong = (['near', 'right', 'far', 'left'] as const).find((name) => {
    const wall = entry.walls[name];
    const cells = rows.find(([first]) => first === `${name} wall`);
    return !cells || !said.is(cells[1] ?? '', wall.distance) || !ends(cells.at(-1)!, wall);
  });
  const [x, y] = [entry.walls.left.distance, entry.walls.near.distance];
  const centre: Sentence[] = [
    [
      `from there it is ${L} to the left wall and as much to the right one, ${L} to the near wall and as much to the far one`,
      [x, y],
    ],
  ];
  return [
    told('the job sheet tells every wall of the floor and its cut', wrong ? `not the ${wrong} wall` : undefined),
    told('the job sheet tells where the centre lines of the floor cross', wrongOf(said, centre)),
  ];
}

function walls(said: Said): Claim[] {
  const due = said.layout.roomBorder?.walls ?? [];
  const rows = rowsUnder(said.blocks, ['No.', 'Wall', 'Length', 'Strip', 'Repeats']) ?? [];
  const wrong = due.find((wall, at) => {
    const [number, name, long = '', strip = '', repeats = ''] = rows[at] ?? [];
    return !(
      number === String(at + 1) &&
      name === wall.name &&
      said.is(long, wall.length) &&
      said.is(strip, wall.strip) &&
      (wall.repeats === 0 || repeats.split(/[ ,]/)[0] === String(wall.repeats))
    );
  });
  return [
    told(
      'the job sheet tells every wall with its strip and its repeats',
      wrong ? `not ${wrong.name}` : rows.length === due.length ? undefined : `${rows.length} walls`,
    ),
  ];
}

const CORNER = '(near|far) (left|right) corner';

/** What the head of the sheet says of the room: the axis from a corner of each wall, and the corners of the work from the walls. */
function room(said: Said, set: FileSet): Claim[] {
  const claim = 'the job sheet tells axis and corners in the room as they are';
  const entry = set.read('layout.json', readRoomEntry);
  if (!entry.ok) return [unproven(FILE, claim, entry.says)];
  if (entry.value === undefined) return [];
  const { axis, clearances } = entry.value;
  const words = said.lines.join(' ');
  const wrongAxis = wrongOf(said, [
    [
      `It meets the near wall ${L} from the near left corner, and the far wall ${L} from the far left corner`,
      [axis.near['from left'], axis.far['from left']],
    ],
  ]);
  const corners = [...words.matchAll(new RegExp(`the ${CORNER} ${L} from the (near|far|left|right) wall`, 'g'))];
  const wrong = corners.find(([, near, left, length, wall]) => {
    const due = clearances.find((one) => one.corner === `${near}-${left}` && one.wall === wall);
    return !due || !said.is(length!, due.clear);
  });
  return [told(claim, wrongAxis ?? (wrong ? `not ${wrong[0]}` : undefined))];
}
