import type { Box, Point } from '../geometry/path.ts';
import type { Job, RugPlace } from '../job/job.ts';
import { MM_PER_INCH, writeLength } from '../units/index.ts';
import { listed } from '../words.ts';
import { sayCasings, spreadOf } from './casing.ts';
import type { Chosen } from './chosen.ts';
import type { Tape } from './corners.ts';
import { hasFreeEnds } from './free-ends.ts';
import { tableIn } from './lie.ts';
import { sayEnds } from './measured-runner.ts';
import { workIn } from './placed.ts';
import type { Placing } from './placing.ts';
import { axisAt, sayAxis, sayClearances } from './say-placing.ts';
import type { Site } from './site.ts';
import { nameOf } from './walls.ts';

/** How far behind the table's edge a chair stands that is pulled out, mm. Common practice, no source. */
const CHAIRS = { inch: 24 * MM_PER_INCH, metric: 600 };

/** What is over a mark of the tape by so little of a step is that mark. */
const HAIR = 0.05;

/** How far the rug reaches beyond the table on each side, and whether chairs that are pulled out still stand on it. */
function sayTable(placing: Placing, table: Extract<RugPlace, { way: 'table' }>, work: Box, tape: Tape): string[] {
  const write = (mm: number): string => writeLength(mm, tape.units, tape.step);
  const outline = tableIn(placing, table);
  const [xs, ys] = [outline.map(([x]) => x), outline.map(([, y]) => y)];
  const beyond: [string, number][] = [
    ['left', Math.min(...xs) - work.left],
    ['right', work.right - Math.max(...xs)],
    ['near end', work.bottom - Math.max(...ys)],
    ['far end', Math.min(...ys) - work.top],
  ];
  const chairs = table.chairs ?? CHAIRS[tape.system];
  const short = beyond.filter(([, mm]) => mm < chairs - tape.step / 2);
  const sides = beyond.map(([side, mm]) => `${mm < 0 ? `${write(-mm)} short of it` : write(mm)} at the ${side}`);
  const warning = () => {
    const ends = (side: string) => short.some(([name]) => name === side);
    const more = (a: number, b: number) => write(Math.ceil((2 * chairs + a - b) / tape.step - HAIR) * tape.step);
    const sizes = [
      ...(ends('left') || ends('right') ? [`${more(Math.max(...xs), Math.min(...xs))} across`] : []),
      ...(ends('near end') || ends('far end') ? [`${more(Math.max(...ys), Math.min(...ys))} along`] : []),
    ];
    return `Chairs pulled out by ${write(chairs)} would stand half off the rug at the ${listed(short.map(([side]) => side))}; a rug of ${sizes.join(' and ')} takes them.`;
  };
  return [
    `The rug lies centred under the table. Beyond its edge it reaches ${listed(sides)}.`,
    ...(short.length > 0 ? [warning()] : []),
  ];
}

/** Where a rug lies that is centred on a wall or under a table: the axis and the middle depend on its size. */
function sayPlace(placing: Placing, place: RugPlace | undefined, work: Box, tape: Tape): string[] {
  if (place === undefined || place.way === 'centred') return [];
  const write = (mm: number): string => writeLength(mm, tape.units, tape.step);
  const middle = (work.left + work.right) / 2;
  const level = (work.top + work.bottom) / 2;
  const said = sayAxis({ ...placing, middle }, tape);
  const from = write(axisAt(placing.room, 'near', middle)[1] - level);
  said.push(`The middle of the work lies on the axis, ${from} from the near wall.`);
  if (place.way === 'table') return [...said, ...sayTable(placing, place, work, tape)];
  return [
    ...said,
    `It is centred on the length of ${nameOf(place.wall)}; the edge beside it is ${write(place.off)} off, where they are nearest.`,
  ];
}

/** Everything there is to say of the room when the size of the work is known. */
export function sayPlaced(site: Pick<Site, 'placing'>, job: Job, layout: Chosen): string[] {
  const { placing } = site;
  if (!placing || (job.surface !== 'rug' && job.surface !== 'runner')) return [];
  const work = workIn(placing, job, layout);
  if (placing.ends) {
    const spreads = (['near', 'far'] as const).flatMap((wall) =>
      placing.openings
        .filter((one) => one.wall === wall)
        .map((one) => spreadOf(one, (point: Point) => placing.into(point), placing.middle)),
    );
    const bare = layout.work.across - layout.field.across < 1e-6;
    return [
      ...sayEnds(placing, layout.work.across, placing.ends, job),
      ...sayCasings(spreads, layout.field.across, job, bare ? 'work' : 'field'),
      ...sayClearances(placing, work, job, ['left', 'right']),
    ];
  }
  if (hasFreeEnds(job)) return sayClearances(placing, work, job);
  return [...sayPlace(placing, job.site.place, work, job), ...sayClearances(placing, work, job)];
}
