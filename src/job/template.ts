import { type System, systemOf, type Unit } from '../units/index.ts';
import { PALETTE } from './colours.ts';
import { SURFACES, type Surface } from './job.ts';
import { writeScalar } from './scalar.ts';
import { SURFACE_WORDS } from './surface-words.ts';

/** What a person answered, as typed. */
export interface Answers {
  title: string;
  surface: Surface;
  units: Unit;
  /** Runner: threshold to threshold, and the openings. */
  run?: string;
  near?: string;
  far?: string;
  /** Rug, whole floor, room border: the room, wall to wall. */
  room?: { across: string; along: string };
  /** Rug and whole floor, in place of that: four walls, and one diagonal or both. */
  walls?: { near: string; right: string; far: string; left: string; diagonal: string; other?: string };
  /** Stairs: how many risers of one size. */
  steps?: { count: string; across: string; high: string };
  /** Rug and floor cloth; a runner may have `across`. */
  overall?: { across?: string; along?: string };
  /** Motif of the field; a room border has none. */
  motif: string;
  /** Repeats across. */
  across?: string;
  /** Motif of the border, or `none`. */
  border?: string;
}

const UNIT: Record<Unit, string> = { in: 'inches', ft: 'feet', mm: 'millimetres', cm: 'centimetres', m: 'metres' };

/** Examples for the lines that are left as comments. */
const USUAL: Record<System, Record<'tape' | 'overall' | 'gap' | 'pitch' | 'width' | 'reserve' | 'sheet', string>> = {
  inch: {
    tape: '1/16 in',
    overall: '{ across: 34" to 38" }',
    gap: '0 to 1/2"',
    pitch: '4" to 8"',
    width: '{ from: 2", to: 4", wish: 3" }',
    reserve: '1/2"',
    sheet: '{ across: 18", along: 24", rim: 1" }',
  },
  metric: {
    tape: '1 mm',
    overall: '{ across: 86 to 96 cm }',
    gap: '0 to 10 mm',
    pitch: '10 to 20 cm',
    width: '{ from: 5 cm, to: 10 cm, wish: 7.5 cm }',
    reserve: '10 mm',
    sheet: '{ across: 45 cm, along: 60 cm, rim: 25 mm }',
  },
};

/** `key: value`, padded so that what it means stands in one column. */
const line = (text: string, says: string): string => `${text.padEnd(43)} # ${says}`;

const pair = (values: { [key: string]: string | undefined }): string =>
  `{ ${Object.entries(values)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => `${key}: ${writeScalar(value!)}`)
    .join(', ')} }`;

const EXAMPLE = {
  inch: {
    doors: '[{ wall: 4, starts: 20", ends: 52" }]',
    opening: '[{ wall: near, starts: 20", ends: 52" }]',
    strip: '2" to 6"',
    margin: '{ sides: 1/2" to 3", risers: 1/4" to 1 1/2" }',
  },
  metric: {
    doors: '[{ wall: 4, starts: 50 cm, ends: 132 cm }]',
    opening: '[{ wall: near, starts: 50 cm, ends: 132 cm }]',
    strip: '50 to 150 mm',
    margin: '{ sides: 12 to 75 mm, risers: 6 to 40 mm }',
  },
};

/** The room: the walls of a room border in turn, four walls with a diagonal, or wall to wall. */
function roomLines({ surface, room, walls, units }: Answers): string[] {
  const example = EXAMPLE[systemOf(units)];
  if (room && surface === 'room-border') {
    const each = [room.along, room.across, room.along, room.across].map((length) => `    - ${pair({ length })}`);
    return [
      line('  walls:', 'in turn, from the near left corner up the left wall'),
      ...each,
      line(`  # doors: ${example.doors}`, 'edges of the casing'),
    ];
  }
  if (walls) {
    const { diagonal, other, ...sides } = walls;
    return [
      line('  room:', 'from corner to corner'),
      ...Object.entries(sides).map(([side, length]) => `    ${side}: ${writeScalar(length)}`),
      line('    diagonals:', 'with both, a wrong reading is found'),
      `      near-left to far-right: ${writeScalar(diagonal)}`,
      ...(other === undefined ? [] : [`      near-right to far-left: ${writeScalar(other)}`]),
      line(`  # openings: ${example.opening}`, 'edges of the casing'),
      line('  # axis: { parallel to: left }', 'what the work is laid along'),
    ];
  }
  return room ? [line(`  room: ${pair(room)}`, 'wall to wall')] : [];
}

function siteLines(answers: Answers, usual: (typeof USUAL)[System]): string[] {
  const { surface, run, near, far, steps, overall } = answers;
  const site: string[] = [];
  if (run !== undefined) site.push(line(`  run: ${writeScalar(run)}`, 'from threshold to threshold'));
  const openings = near ?? far;
  if (openings !== undefined)
    site.push(line(`  openings: ${pair({ near: near ?? far, far: far ?? near })}`, 'widths over the casings'));
  site.push(...roomLines(answers));
  if (steps) {
    const { count, ...riser } = steps;
    site.push(line(`  steps: ${writeScalar(count)}`, 'or a list, each step as measured'));
    site.push(line(`  riser: ${pair(riser)}`, 'side to side, tread to nosing'));
  }
  const lines = site.length > 0 ? ['site:', ...site] : [];
  const sized = overall && (overall.across !== undefined || overall.along !== undefined);
  if (sized) lines.push(line(`overall: ${pair(overall)}`, 'over everything; a range is A to B'));
  else if (surface === 'runner')
    lines.push(line(`# overall: ${usual.overall}`, 'a width over everything, instead of the openings'));
  if (surface === 'stairs') lines.push('', ...stairsLines(answers));
  return lines;
}

const stairsLines = ({ units }: Answers): string[] => [
  'stairs:',
  line('  painted: risers', 'risers or treads'),
  line(`  # margin: ${EXAMPLE[systemOf(units)].margin}`, 'plain strips round the panel'),
];

function fieldLines({ surface, motif, across }: Answers, usual: (typeof USUAL)[System]): string[] {
  if (surface === 'room-border') return [];
  const repeats = across === undefined ? '  # repeats: { across: 5 }' : `  repeats: { across: ${writeScalar(across)} }`;
  return [
    'field:',
    line(`  motif: ${writeScalar(motif)}`, 'or { name: …, and its settings }'),
    line(repeats, 'how many; whole or half ones, or A to B'),
    line(`  # pitch: { across: ${usual.pitch} }`, 'size of one repeat'),
    line('  # stretch: 0.95 to 1.05', '1 keeps squares square'),
    ...(surface === 'floor' ? [] : [line('  # landing: either', 'whole, half or either')]),
    '',
  ];
}

/** The border of a surface where none is named. */
const usualBorder = (surface: Surface): string =>
  surface === 'stairs' ? 'none' : surface === 'room-border' ? 'sawtooth' : 'plain-band';

function borderLines({ surface, border = usualBorder(surface) }: Answers, usual: (typeof USUAL)[System]): string[] {
  if (surface === 'floor') return [];
  if (border === 'none') return [line('border: none', 'or the name of a motif')];
  return [
    'border:',
    line(`  motif: ${writeScalar(border)}`, 'none for no border'),
    line(`  # width: ${usual.width}`, 'allowed and wished for'),
    line('  # stretch: 0.85 to 1.15', 'of the repeats of the border'),
    line('  # corner: plain', 'motif of the corner blocks'),
  ];
}

function reserveLine({ surface, units }: Answers, usual: (typeof USUAL)[System]): string {
  if (surface === 'room-border')
    return line(`# reserve: ${EXAMPLE[systemOf(units)].strip}`, 'plain strip between wall and border');
  return line(
    `# reserve: ${usual.reserve}`,
    surface === 'floor' ? 'plain strip at the walls' : 'plain strip between field and border',
  );
}

/**
 * The text of a job file for these answers, with a comment on every line and the keys left out as comments that show
 * an example. Reads back without an issue when the answers are good.
 */
export function writeJobFile(answers: Answers): string {
  const { title, surface, units } = answers;
  const usual = USUAL[systemOf(units)];
  const palette = Object.entries(PALETTE).map(([name, hex]) => `${name}: '${hex}'`);
  return [
    `# ${SURFACE_WORDS[surface].inText.replace(/^a/, 'A')}, measured in ${UNIT[units]}.`,
    `# Lengths may be written as 12' 6 3/8", 34 1/2 in, 150.4 cm or 3.25 m; a number without a unit is in ${UNIT[units]}.`,
    '# Lines that begin with # are notes, or wishes not made: take the # away to make them.',
    'evenfield: 1',
    line(`title: ${writeScalar(title)}`, 'names the folder as well'),
    line(`units: ${units}`, 'what a number without a unit means'),
    line(`# tape: ${usual.tape}`, 'the finest mark you read'),
    line(`surface: ${surface}`, SURFACES.join(', ')),
    '',
    ...siteLines(answers, usual),
    ...(surface === 'runner' ? [line(`# end gap: ${usual.gap}`, 'left plain at both ends')] : []),
    '',
    ...fieldLines(answers, usual),
    ...borderLines(answers, usual),
    reserveLine(answers, usual),
    '',
    `# palette: { ${palette.join(', ')} }`,
    '# colours: { ground: cream, field: navy, alternate: brick, border: navy, corner: brick }',
    '',
    '# stencil:',
    line('#   bridge: 3 mm', 'least width between two windows'),
    line('#   window: 1.5 mm', 'least width of a window'),
    line(`#   sheet: ${usual.sheet}`, 'film or card'),
    '',
  ].join('\n');
}
