import { boxHeight, boxWidth } from '../geometry/measure.ts';
import type { Job } from '../job/job.ts';
import { offeredTins } from '../paint/offered.ts';
import { sayDays, sayPaint, sayTins } from '../paint/says.ts';
import { type PaintInput, type PaintPlan, planWhole } from '../paint/whole.ts';
import { writeCover } from '../units/cover.ts';
import { writeDuration } from '../units/duration.ts';
import { writeArea } from '../units/index.ts';
import { writeVolume } from '../units/volume.ts';
import type { Finished } from './finished.ts';
import { type Block, heading, words } from './job-sheet/block.ts';
import { writeLists } from './layout.ts';
import { row } from './marks.ts';

/** The paint of a rectangle of repeats: on a floor from wall to wall only what lies between its walls, on a flight every panel. */
export async function paintOfWork(
  {
    job,
    site,
    motifs,
    layout,
    drawing,
    sheets,
  }: Pick<Finished, 'job' | 'site' | 'motifs' | 'layout' | 'drawing' | 'sheets'>,
  films: PaintInput['films'],
): Promise<PaintPlan> {
  const { floor } = site;
  const { work } = drawing;
  const common = { job, motifs, sheets, films, layout };
  if (floor) {
    const { clipToPattern } = await import('../compose/floor.ts');
    const { clipToFloor } = await import('../compose/room-clip.ts');
    const { outlineOf } = await import('../site/walls.ts');
    const { pieceArea } = await import('../geometry/measure.ts');
    const bare = await clipToFloor(
      outlineOf(floor.room),
      floor.obstacles.map(({ outline }) => outline),
    );
    const ground = bare.floor.reduce((sum, piece) => sum + pieceArea(piece), 0);
    return planWhole({ ...common, ground, regions: (await clipToPattern(floor)).regions(drawing.regions) });
  }
  const { placeFlight } = await import('../stairs/flight.ts');
  const panels = job.surface === 'stairs' ? placeFlight(job, layout).length : 1;
  return planWhole({ ...common, ground: boxWidth(work) * boxHeight(work), regions: drawing.regions, panels });
}

const mixedWords = ({ name, kind }: PaintPlan['paints'][number]): string =>
  kind === 'colour' ? name : kind === 'clear' ? 'clear coats' : 'primer';

const areaOn = ({ uses }: PaintPlan['paints'][number], on: 'ground' | 'pattern') => uses.find((use) => use.on === on);

/** For other programs, and for `evenfield paint --json`: areas in mm², volumes in ml, lengths in mm, times in hours. */
export const paintEntry = (plan: PaintPlan, { paint }: Pick<Job, 'paint'>) => ({
  paint: {
    ...plan,
    paints: plan.paints.map((one) => {
      const offered = offeredTins(one, paint);
      return { ...one, ...(offered ? { offered } : {}) };
    }),
  },
});

/** The plan to the figures in which layout.json states it, so that both say the same. */
export const paintAsStated = (plan: PaintPlan, job: Pick<Job, 'paint'>): PaintPlan =>
  JSON.parse(writeLists(paintEntry(plan, job))).paint;

const HEAD =
  'paint,kind,ground_mm2,ground_coats,pattern_mm2,pattern_coats,used_ml,needed_ml,on_hand_ml,buy_ml,tins,cost'.split(
    ',',
  );

/** One row a paint. RFC 4180; areas to 1 mm², volumes to 0.001 ml. */
export function writePaintTable({ paints }: PaintPlan, { system }: Pick<Job, 'system'>): string {
  const rows = paints.map((one) => {
    const [ground, pattern] = [areaOn(one, 'ground'), areaOn(one, 'pattern')];
    return row([
      one.name,
      one.kind,
      (ground?.area ?? 0).toFixed(0),
      String(ground?.coats ?? 0),
      (pattern?.area ?? 0).toFixed(0),
      String(pattern?.coats ?? 0),
      one.ml.toFixed(3),
      one.needed.toFixed(3),
      one.onHand.toFixed(3),
      one.buy.toFixed(3),
      sayTins(one, system),
      one.cost === undefined ? '' : one.cost.toFixed(2),
    ]);
  });
  return [row(HEAD), ...rows].join('');
}

export const PAINT_HEAD = ['Paint', 'On', 'Area', 'Coats', 'One coat', 'Needed', 'To buy'];

/** The table as people read it, a row for every paint on every part of the work. */
export function paintRows({ paints }: PaintPlan, { system }: Pick<Job, 'system'>): string[][] {
  return paints.flatMap((one) =>
    one.uses.map(({ on, area, coats, covers }, at) => {
      const [least, most] = [Math.min(...covers), Math.max(...covers)];
      const cover =
        most - least < 1
          ? writeCover(least, system)
          : `${writeCover(least, system).split(' ')[0]} to ${writeCover(most, system)}`;
      return [
        at === 0 ? mixedWords(one) : '',
        one.kind === 'clear' ? 'everything' : on,
        writeArea(area, system),
        String(coats),
        cover,
        at === 0 ? writeVolume(one.needed, system) : '',
        at === 0 ? sayTins(one, system) : '',
      ];
    }),
  );
}

export const DAYS_HEAD = ['Day', 'What', 'Hands-on', 'Sheets laid'];

export const dayRows = ({ days }: PaintPlan): string[][] =>
  days.stints.map(({ day, what, hours, sheets }, at) => [
    days.stints[at - 1]?.day === day ? '' : String(day),
    what,
    writeDuration(hours),
    sheets === undefined ? '' : String(sheets),
  ]);

const swatchesOf = ({ paints }: PaintPlan, { palette }: Pick<Job, 'palette'>): string[] =>
  paints.flatMap((one) => one.uses.map(() => palette[one.name] ?? '#ffffff'));

const whole = (text: string): string => text.replaceAll(' ', '\u00a0');

/** A section of the job sheet: what to buy, what is at hand, and the days. */
export function paintBlocks(plan: PaintPlan, job: Job): Block[] {
  const { days } = plan;
  return [
    heading(2, 'Paint to buy, and the days it takes'),
    {
      kind: 'table',
      head: PAINT_HEAD,
      rows: paintRows(plan, job).map((cells) => cells.map((cell, at) => (at === 4 || at === 6 ? cell : whole(cell)))),
      narrow: [0, 1, 2, 3, 5],
      swatches: swatchesOf(plan, job),
    },
    ...sayPaint(plan, job).map((line) => words(line)),
    heading(3, 'Day by day'),
    words(
      `With ${writeDuration(days.recoat)} between coats and ${writeDuration(days.placement)} for each time a sheet is laid; wait between sheets that touch as long as the paint is wet.`,
    ),
    { kind: 'table', head: DAYS_HEAD, rows: dayRows(plan), narrow: [0, 2, 3] },
    words(sayDays(plan)),
  ];
}
