import { bad, good, type Issue, type Result } from '../issue.ts';
import type { Corner, Diagonal, Job, Wall } from '../job/job.ts';
import { readingDoubt, writeLength } from '../units/index.ts';
import { adjust } from './adjust.ts';
import { cornerAngles, fromFive, type Lengths } from './trilaterate.ts';
import {
  CORNERS,
  DIAGONALS,
  distance,
  ENDS,
  isWall,
  nameCorner,
  nameOf,
  READINGS,
  type Reading,
  type Room,
  readingBetween,
} from './walls.ts';

/** How lengths are written back, and how finely they were read. */
export type Tape = Pick<Job, 'units' | 'step' | 'system'>;

/** A reading that cannot be right if the other five are. */
interface Disagreement {
  reading: Reading;
  given: number;
  /** What it would have to be for all six to close. */
  wouldBe: number;
  /** By how much all six together may miss it when every one lies within its doubt. */
  allowed: number;
}

export interface Survey {
  room: Room;
  /** What each reading comes to in the room, less what was read, mm. */
  residuals: { reading: Reading; given: number; residual: number }[];
  /** One for each reading, the likeliest slip first; empty where the readings agree, or none is to spare. */
  disagreements: Disagreement[];
}

export const pathOf = (reading: Reading): string[] =>
  isWall(reading) ? ['site', 'room', reading] : ['site', 'room', 'diagonals', reading];

/** Three readings that make no triangle: the longest is as long as the other two end to end, or longer. */
function impossible(lengths: Lengths, { units, step }: Tape): Issue | undefined {
  const write = (mm: number): string => writeLength(mm, units, step);
  for (const diagonal of DIAGONALS)
    for (const corner of CORNERS.filter((one) => !ENDS[diagonal].includes(one))) {
      const three = [diagonal, ...ENDS[diagonal].map((end) => readingBetween(end, corner))];
      if (three.some((reading) => lengths[reading] === undefined)) continue;
      const [longest, ...others] = three.sort((a, b) => lengths[b]! - lengths[a]!) as [Reading, Reading, Reading];
      const together = lengths[others[0]!]! + lengths[others[1]!]!;
      if (lengths[longest]! < together) continue;
      const named = others.map((reading) => `${nameOf(reading)}, ${write(lengths[reading]!)},`).join(' and ');
      return {
        code: 'site/triangle',
        path: pathOf(longest),
        says: `${nameOf(longest)} is ${write(lengths[longest]!)}, but ${named} reach only ${write(together)} end to end: these three close no triangle`,
        hint: `measure the three again: ${[longest, ...others].map(nameOf).join(', ')}`,
      };
    }
  return undefined;
}

/** A corner that would point into the room; with four walls it means that a reading is wrong. */
function inward(room: Room): Corner | undefined {
  const angles = cornerAngles(room);
  return CORNERS.find((_, at) => angles[at]! >= Math.PI);
}

const inwardIssue = (corner: Corner, given: Diagonal | undefined): Issue => ({
  code: 'site/inward',
  path: given === undefined ? ['site', 'room'] : pathOf(given),
  says: `with these readings ${nameCorner(corner)} would point into the room; a room of four walls has all corners pointing outwards`,
  hint: `measure ${given === undefined ? 'both diagonals' : nameOf(given)} and the two walls at that corner again`,
});

/** Sum of the squares of what the corners lack of a right angle. */
const outOfSquare = (room: Room): number =>
  cornerAngles(room).reduce((sum, angle) => sum + (angle - Math.PI / 2) ** 2, 0);

/**
 * How strongly each length pulls on the one condition that six lengths between four points fulfil: with signed areas of the triangles
 * that leave out a corner each, the product of both ends' areas, times the length. It is the self-stress of the six lines.
 */
function pulls(room: Room): Record<Reading, number> {
  const areas = CORNERS.map((_, out) => {
    const [a, b, c] = CORNERS.filter((_, at) => at !== out).map((corner) => room[corner]);
    const twice = (b![0] - a![0]) * (c![1] - a![1]) - (b![1] - a![1]) * (c![0] - a![0]);
    return out % 2 === 0 ? twice : -twice;
  });
  const areaAt = (corner: Corner): number => areas[CORNERS.indexOf(corner as (typeof CORNERS)[number])]!;
  const pull = (reading: Reading): number => {
    const [a, b] = ENDS[reading];
    return areaAt(a) * areaAt(b) * distance(room[a], room[b]);
  };
  return Object.fromEntries(READINGS.map((reading) => [reading, pull(reading)])) as Record<Reading, number>;
}

/**
 * With one reading to spare, each of the six could be the wrong one: the figures alone cannot tell. Walls are put up square, so the
 * likeliest slip is the one without which the room comes out squarest.
 */
function disagreementsIn(
  room: Room,
  lengths: Record<Reading, number>,
  doubts: Record<Reading, number>,
): Disagreement[] {
  const pull = pulls(room);
  const slack = READINGS.reduce((sum, reading) => sum + Math.abs(pull[reading]) * doubts[reading], 0);
  const found = READINGS.flatMap((reading) => {
    const without = fromFive(lengths, reading);
    if (!without || inward(without)) return [];
    const [a, b] = ENDS[reading];
    const wouldBe = distance(without[a], without[b]);
    const allowed = slack / Math.abs(pull[reading]);
    return [{ reading, given: lengths[reading], wouldBe, allowed, square: outOfSquare(without) }];
  });
  if (found.every(({ given, wouldBe, allowed }) => Math.abs(given - wouldBe) <= allowed)) return [];
  return found.sort((a, b) => a.square - b.square).map(({ square: _, ...rest }) => rest);
}

/** Where the corners of a room lie, from its four walls and one or both diagonals. Both: reconciled by least squares.
 * Issues: `site/triangle`, `site/inward`. */
export function surveyRoom(
  { sides, diagonals }: { sides: Record<Wall, number>; diagonals: { [D in Diagonal]?: number } },
  tape: Tape,
): Result<Survey> {
  const lengths: Lengths = { ...sides, ...diagonals };
  const issue = impossible(lengths, tape);
  if (issue) return bad(issue);
  const given = DIAGONALS.filter((diagonal) => lengths[diagonal] !== undefined);
  const starts = given.map((diagonal) => fromFive(lengths, DIAGONALS.find((other) => other !== diagonal)!)!);
  const straight = starts.filter((start) => inward(start) === undefined);
  if (straight.length === 0) return bad(inwardIssue(inward(starts[0]!)!, given.length === 1 ? given[0] : undefined));
  if (given.length === 1) return good(surveyed(straight[0]!, lengths, []));
  const all = lengths as Record<Reading, number>;
  const doubts = Object.fromEntries(
    READINGS.map((reading) => [reading, readingDoubt(all[reading], tape.step, tape.system)]),
  ) as Record<Reading, number>;
  const room = adjust(straight[0]!, all, doubts);
  const corner = inward(room);
  if (corner) return bad(inwardIssue(corner, undefined));
  return good(surveyed(room, lengths, disagreementsIn(room, all, doubts)));
}

function surveyed(room: Room, lengths: Lengths, disagreements: Disagreement[]): Survey {
  const residuals = READINGS.filter((reading) => lengths[reading] !== undefined).map((reading) => {
    const [a, b] = ENDS[reading];
    return { reading, given: lengths[reading]!, residual: distance(room[a], room[b]) - lengths[reading]! };
  });
  return { room, residuals, disagreements };
}
