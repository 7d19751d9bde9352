import { SURFACES, type Surface } from '../job/job.ts';
import type { Answers } from '../job/template.ts';
import { allMotifs } from '../motif/library.ts';
import type { Kind } from '../motif/motif.ts';
import type { Unit } from '../units/index.ts';
import {
  type Answer,
  readCountAnswer,
  readLengthAnswer,
  readMotifAnswer,
  readStepsAnswer,
  readSurfaceAnswer,
  readUnitAnswer,
} from './answer.ts';

/** What has been answered so far, as it goes into the file. */
export interface Given {
  title?: string;
  surface?: string;
  units?: string;
  run?: string;
  near?: string;
  far?: string;
  wide?: string;
  long?: string;
  nearWall?: string;
  rightWall?: string;
  farWall?: string;
  leftWall?: string;
  diagonal?: string;
  otherDiagonal?: string;
  roomAcross?: string;
  roomAlong?: string;
  steps?: string;
  riserWide?: string;
  riserHigh?: string;
  motif?: string;
  across?: string;
  border?: string;
}

export interface Question {
  key: keyof Given;
  /** The surfaces it is put for. */
  of: readonly Surface[];
  asks: string;
  /** What an empty answer means, where one is allowed. */
  empty?: string;
  /** What may be given instead, where there is something. */
  instead?: keyof Given;
  /** True when it need not be put, after what was answered. */
  settled?: (given: Given) => boolean;
  read: (text: string, given: Given) => Answer;
}

const length = (text: string, { units }: Given): Answer => readLengthAnswer(text, units as Unit | undefined);

const names = (kind: Kind): string =>
  allMotifs()
    .filter((motif) => motif.kind === kind)
    .map((motif) => motif.name)
    .join(', ');

/** The surfaces that a new file can be begun for. */
const ASKED: readonly Surface[] = SURFACES;
/** Those with a field, those with a border, those that may lie in a room of four walls. */
const FIELDS = ASKED.filter((surface) => surface !== 'room-border');
const BORDERED: Surface[] = ['runner', 'rug', 'floor-cloth'];
const ROOMS: Surface[] = ['rug', 'floor'];
const noWalls = ({ nearWall }: Given): boolean => nearWall === undefined;
const hasWalls = ({ nearWall }: Given): boolean => nearWall !== undefined;

const wall = (key: keyof Given, name: string): Question => ({
  key,
  of: ROOMS,
  asks: `How long is the ${name} wall?`,
  settled: noWalls,
  read: length,
});
const FREE: Surface[] = ['rug', 'floor-cloth'];

/** In the order they are put. */
export const QUESTIONS: Question[] = [
  {
    key: 'surface',
    of: ASKED,
    asks: `What will you paint: ${ASKED.slice(0, -1).join(', ')} or ${ASKED.at(-1)}?`,
    read: readSurfaceAnswer,
  },
  {
    key: 'units',
    of: ASKED,
    asks: 'What shall a number without a unit mean: in, ft, mm, cm or m?',
    empty: 'in',
    read: readUnitAnswer,
  },
  { key: 'run', of: ['runner'], asks: 'How long is the run, from threshold to threshold?', read: length },
  {
    key: 'near',
    of: ['runner'],
    asks: 'How wide is the opening at the near end, over the casing?',
    empty: 'there is none',
    read: length,
  },
  {
    key: 'far',
    of: ['runner'],
    asks: 'How wide is the opening at the far end, over the casing?',
    empty: 'as the near one',
    settled: ({ near }) => near === undefined,
    read: length,
  },
  {
    key: 'wide',
    of: ['runner'],
    asks: 'How wide shall the runner be, over everything?',
    instead: 'near',
    settled: ({ near, far }) => near !== undefined || far !== undefined,
    read: length,
  },
  { key: 'wide', of: FREE, asks: 'How wide shall it be, over everything?', read: length },
  { key: 'long', of: FREE, asks: 'How long shall it be, over everything?', read: length },
  {
    key: 'nearWall',
    of: ROOMS,
    asks: 'How long is the near wall, from corner to corner, where the room was measured by its four walls and a diagonal?',
    empty: 'it was not',
    settled: ({ roomAcross, roomAlong }) => roomAcross !== undefined || roomAlong !== undefined,
    read: length,
  },
  wall('rightWall', 'right'),
  wall('farWall', 'far'),
  wall('leftWall', 'left'),
  {
    key: 'diagonal',
    of: ROOMS,
    asks: 'How long is the diagonal from the near left corner to the far right one?',
    settled: noWalls,
    read: length,
  },
  {
    key: 'otherDiagonal',
    of: ROOMS,
    asks: 'How long is the other diagonal?',
    empty: 'not measured',
    settled: noWalls,
    read: length,
  },
  {
    key: 'roomAcross',
    of: ['rug'],
    asks: 'How wide is the room it lies in, wall to wall?',
    empty: 'not known',
    settled: hasWalls,
    read: length,
  },
  {
    key: 'roomAcross',
    of: ['floor'],
    asks: 'How wide is the room, wall to wall?',
    instead: 'nearWall',
    settled: hasWalls,
    read: length,
  },
  { key: 'roomAcross', of: ['room-border'], asks: 'How wide is the room, wall to wall?', read: length },
  {
    key: 'roomAlong',
    of: ['rug', 'floor', 'room-border'],
    asks: 'How long is the room?',
    settled: ({ roomAcross }) => roomAcross === undefined,
    read: length,
  },
  { key: 'steps', of: ['stairs'], asks: 'How many steps has the flight?', read: readStepsAnswer },
  { key: 'riserWide', of: ['stairs'], asks: 'How wide is a riser, from side to side?', read: length },
  {
    key: 'riserHigh',
    of: ['stairs'],
    asks: 'How high is the lowest riser, from the tread below to the nosing above?',
    read: length,
  },
  {
    key: 'motif',
    of: FIELDS,
    asks: `Which motif for the field: ${names('field')}?`,
    empty: 'diamond',
    read: (text) => readMotifAnswer(text, 'field', false),
  },
  {
    key: 'across',
    of: FIELDS,
    asks: 'How many repeats across?',
    empty: 'as many as fit best',
    read: readCountAnswer,
  },
  {
    key: 'border',
    of: BORDERED,
    asks: `Which motif for the border: ${names('border')} or none?`,
    empty: 'plain-band',
    read: (text) => readMotifAnswer(text, 'border', true),
  },
  {
    key: 'border',
    of: ['stairs'],
    asks: `Which motif for a border: ${names('border')} or none?`,
    empty: 'none',
    read: (text) => readMotifAnswer(text, 'border', true),
  },
  {
    key: 'border',
    of: ['room-border'],
    asks: `Which motif: ${names('border')}?`,
    empty: 'sawtooth',
    read: (text) => readMotifAnswer(text, 'border', false),
  },
];

/** Whether a question belongs to the surface chosen and is still open. */
export const isOpen = ({ key, of, settled }: Question, given: Given): boolean =>
  given[key] === undefined &&
  (given.surface === undefined || of.includes(given.surface as Surface)) &&
  settled?.(given) !== true;

const some = <T extends object>(values: T): { [K in keyof T]?: NonNullable<T[K]> } =>
  Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)) as never;

/** The answers as the writer of job files takes them. Those that must be there are. */
export function toAnswers(given: Given, title: string): Answers {
  const { surface, units, run, near, far, wide, long, roomAcross, roomAlong, motif, across, border } = given;
  const { nearWall, rightWall, farWall, leftWall, diagonal, otherDiagonal, steps, riserWide, riserHigh } = given;
  const walls =
    nearWall && rightWall && farWall && leftWall && diagonal
      ? { near: nearWall, right: rightWall, far: farWall, left: leftWall, diagonal, ...some({ other: otherDiagonal }) }
      : undefined;
  const flight = steps && riserWide && riserHigh ? { count: steps, across: riserWide, high: riserHigh } : undefined;
  const room =
    roomAcross !== undefined && roomAlong !== undefined ? { across: roomAcross, along: roomAlong } : undefined;
  const overall = wide !== undefined || long !== undefined ? some({ across: wide, along: long }) : undefined;
  return {
    title: given.title ?? title,
    surface: surface as Surface,
    units: (units ?? 'in') as Unit,
    motif: motif ?? 'diamond',
    ...some({ run, near, far, room, walls, steps: flight, overall, across, border }),
  };
}
