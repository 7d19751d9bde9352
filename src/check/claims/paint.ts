import { parseVolume } from '../../units/volume.ts';
import { type Claim, equal, type Proof, stated, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import { bestTins } from '../measure/cheapest.ts';
import { coveredArea } from '../measure/paint-area.ts';
import type { LayoutFile } from '../read/layout.ts';
import type { Outline } from '../read/outline.ts';
import { type PaintEntry, type PaintOf, readPaintEntry, readPaintTable } from '../read/paint.ts';
import { readPlan } from '../read/plan.ts';
import { readFlightEntry } from '../read/surface-entry.ts';

const FILE = 'paint.csv';
const LAYOUT = 'layout.json';
/** Areas as shares, volumes in ml as they are written. */
const AREA = 1e-3;
const ADDS_UP = 1e-6;

export const proof: Proof = {
  claims:
    'areas from the drawing; coats, loss, volumes, reserve, what is at hand, tins and their cost; paint.csv the same',
  files: ['job-sheet.html', 'layout.json', 'paint.csv', 'plan.svg', 'room.svg'],
  method: 'areas of outlines; volumes and prices reckoned anew, cheapest tins by trying all',
  tolerance: '0.1 % for areas; 1e-6 for sums',
};

/** Areas of each colour from the plan, and the paint they take: coats, loss, what is kept back, what is at hand, tins. */
export default function paint(set: FileSet): Claim[] {
  const layout = set.layout();
  if (!layout.ok) return [];
  const entry = set.read(LAYOUT, readPaintEntry);
  if (!entry.ok) return [unproven(LAYOUT, 'the paint is told', entry.says)];
  const table = set.text(FILE);
  const page = set.text('job-sheet.html');
  if (entry.value === undefined) {
    // Of a folder in which nothing speaks of paint, nothing is claimed of it.
    if (!table.ok && !(page.ok && page.value.includes('Paint to buy'))) return [];
    return [unproven(LAYOUT, 'the paint is told', 'layout.json has no entry paint')];
  }
  return [
    ...areas(set, layout.value, entry.value),
    ...panels(set, layout.value, entry.value),
    ...entry.value.paints.flatMap((one) => [...volumes(one, entry.value!.reserve), ...tins(one)]),
    written(set.read(FILE, readPaintTable), entry.value),
    films(layout.value, entry.value),
  ];
}

const colourOf = ({ colours }: LayoutFile, part: string): string => colours[part] ?? `nothing for ${part}`;

const within = (measured: number, told: number): boolean =>
  Math.abs(measured - told) <= AREA * Math.max(measured, told);

const squares = (mm2: number): number => Math.round(mm2);

/** A floor from wall to wall is painted as its room shows it; all else as its plan does. */
function areas(set: FileSet, layout: LayoutFile, { paints, panels: times }: PaintEntry): Claim[] {
  const file = layout.job.surface === 'floor' ? 'room.svg' : 'plan.svg';
  const plan = set.drawn(file, readPlan);
  if (!plan.ok) return [unproven(file, 'the areas of the colours can be measured', plan.says)];
  const painted = new Map<string, Outline[]>();
  for (const { part, outline } of plan.value.painted) {
    const colour = colourOf(layout, part);
    const same = painted.get(colour);
    if (same) same.push(outline);
    else painted.set(colour, [outline]);
  }
  const told = (name: string, on: 'ground' | 'pattern'): number =>
    paints
      .filter((one) => one.kind === 'colour' && one.name === name)
      .flatMap(({ uses }) => uses.filter((use) => use.on === on))
      .reduce((sum, { area }) => sum + area, 0);
  const names = new Set([
    ...painted.keys(),
    ...paints
      .filter(({ kind, uses }) => kind === 'colour' && uses.some(({ on }) => on === 'pattern'))
      .map(({ name }) => name),
  ]);
  const ground = coveredArea(plan.value.ground) * times;
  const areaClaim = (claim: string, measured: number, due: number): Claim =>
    stated(file, claim, within(measured, due), squares(measured), `${squares(due)} mm² within 0.1 %`);
  return [
    ...[...names].map((name) =>
      areaClaim(
        `${name} covers as much as its paint is reckoned for`,
        coveredArea(painted.get(name) ?? []) * times,
        told(name, 'pattern'),
      ),
    ),
    areaClaim(
      'the ground covers as much as its paint is reckoned for',
      ground,
      told(colourOf(layout, 'ground'), 'ground'),
    ),
    ...paints
      .filter(({ kind }) => kind !== 'colour')
      .map((one) => areaClaim(`${one.name} covers the whole ground`, ground, one.uses[0]?.area ?? 0)),
  ];
}

/** One panel, or as many as the flight has. */
function panels(set: FileSet, { job }: LayoutFile, entry: PaintEntry): Claim[] {
  const flight = job.surface === 'stairs' ? set.read(LAYOUT, readFlightEntry) : undefined;
  if (flight && !flight.ok) return [unproven(LAYOUT, 'every panel is painted', flight.says)];
  return [equal(LAYOUT, 'paint is reckoned for every panel', entry.panels, flight ? flight.value.steps.length : 1)];
}

const adds = (claim: string, told: number, due: number): Claim =>
  stated(LAYOUT, claim, Math.abs(told - due) <= ADDS_UP * Math.max(1, due), told, `${due.toFixed(3)} ml`);

/** What stays in a tool, as a share: 10 % in a brush, 15 % in a roller or foam (common practice, no source). */
const KEPT = { brush: 0.1, roller: 0.15, foam: 0.15 };

function volumes(one: PaintOf, reserve: number): Claim[] {
  const { name, uses, ml, needed, onHand, buy } = one;
  const due = uses.map(({ area, covers, loss }) => covers.reduce((sum, cover) => sum + area / cover, 0) / (1 - loss));
  const sum = due.reduce((all, value) => all + value, 0);
  return [
    equal(
      LAYOUT,
      `every coat of ${name} has what it covers`,
      uses.map(({ covers }) => covers.length).join(' + '),
      uses.map(({ coats }) => coats).join(' + '),
    ),
    adds(`the volume of ${name} is area over cover, for every coat, with what the tool keeps`, ml, sum),
    ...uses.map(({ on, tool, loss }) =>
      equal(LAYOUT, `what the tool keeps of ${name} on the ${on} is reckoned with`, loss, KEPT[tool]),
    ),
    ...uses.map((use, at) => adds(`the volume of ${name} on the ${use.on} adds up`, use.ml, due[at]!)),
    adds(`${name} has what is kept back for touching up`, needed, sum * (1 + reserve)),
    adds(`what is at hand of ${name} is taken off what is bought`, buy, Math.max(0, sum * (1 + reserve) - onHand)),
  ];
}

function tins({ name, tins: chosen, offered, cost, surplus, buy }: PaintOf): Claim[] {
  if (!chosen && !offered && cost === undefined) return [];
  const held = (chosen ?? []).reduce((sum, { size, count }) => sum + size * count, 0);
  const paid = (chosen ?? []).reduce((sum, { price, count }) => sum + price * count, 0);
  const number = (chosen ?? []).reduce((sum, { count }) => sum + count, 0);
  const sold = (chosen ?? []).every((tin) =>
    offered?.some(({ size, price }) => size === tin.size && price === tin.price),
  );
  const least = bestTins(buy, offered ?? []);
  const tooMany = (claim: string): Claim => unproven(LAYOUT, claim, 'there are too many ways to buy it');
  const [CHEAPER, FEWER] = [
    `no cheaper tins of ${name} hold enough`,
    `no fewer tins of ${name} at that cost hold enough`,
  ];
  return [
    stated(
      LAYOUT,
      `the tins of ${name} hold enough`,
      held >= buy * (1 - ADDS_UP),
      held,
      `${buy.toFixed(3)} ml or more`,
    ),
    equal(LAYOUT, `the tins of ${name} are tins that are sold`, sold ? 'they are' : 'they are not', 'they are'),
    stated(LAYOUT, `the tins of ${name} cost what is told`, Math.abs(paid - (cost ?? -1)) < 1e-6, paid, cost ?? 'told'),
    stated(
      LAYOUT,
      `what the tins of ${name} hold over is told`,
      Math.abs(Math.max(0, held - buy) - (surplus ?? -1)) <= ADDS_UP * Math.max(1, held),
      surplus ?? 'not told',
      `${Math.max(0, held - buy).toFixed(3)} ml`,
    ),
    least ? stated(LAYOUT, CHEAPER, paid <= least.cost + 1e-6, paid, `${least.cost} or less`) : tooMany(CHEAPER),
    least
      ? stated(
          LAYOUT,
          FEWER,
          number < least.count || (number === least.count && held <= least.held + 1e-3),
          `${number}, of ${held.toFixed(3)} ml`,
          `${least.count}, of ${least.held.toFixed(3)} ml, or less`,
        )
      : tooMany(FEWER),
  ];
}

/** Half the last figure of what the table has: 1 mm², 0.001 ml. */
const AS_WRITTEN = [0.5, 0, 0.5, 0, 5e-4, 5e-4, 5e-4, 5e-4];

/** Whether words such as `2 × 1/2 pint + 1 quart`, or a volume where no tins are told, are what is to buy. */
function buys(words: string, { buy, tins: chosen }: PaintOf): boolean {
  if (buy <= 0) return words === 'nothing';
  const read = words.split(' + ').map((part) => {
    const [, count, volume] = /^(?:(\d+) × )?(.+)$/.exec(part) ?? [];
    const parsed = parseVolume(volume ?? '');
    return { count: Number(count ?? 1), ml: parsed.ok ? parsed.ml : Number.NaN };
  });
  // A volume to buy is written up to the next measure, never down.
  if (!chosen)
    return read.length === 1 && read[0]!.count === 1 && read[0]!.ml >= buy - 1e-3 && read[0]!.ml <= 1.3 * buy + 30;
  return (
    read.length === chosen.length &&
    chosen.every((tin, at) => read[at]!.count === tin.count && Math.abs(read[at]!.ml / tin.size - 1) < 0.01)
  );
}

function written(table: ReturnType<typeof readPaintTable>, { paints }: PaintEntry): Claim {
  const claim = 'the table of paint says the same as the layout';
  if (!table.ok) return unproven(FILE, claim, table.says);
  const rows = table.value;
  if (rows.length !== paints.length) return equal(FILE, claim, `${rows.length} paints`, `${paints.length} paints`);
  const off = paints.find((one, at) => {
    const { name, kind, numbers, tins: bought, cost } = rows[at]!;
    const [ground, pattern] = (['ground', 'pattern'] as const).map((on) => one.uses.find((use) => use.on === on));
    const due = [
      ground?.area ?? 0,
      ground?.coats ?? 0,
      pattern?.area ?? 0,
      pattern?.coats ?? 0,
      one.ml,
      one.needed,
      one.onHand,
      one.buy,
    ];
    const same = due.every((value, of) => Math.abs(numbers[of]! - value) <= AS_WRITTEN[of]! + 1e-6);
    const priced = one.cost === undefined ? cost === '' : cost !== '' && Math.abs(Number(cost) - one.cost) < 0.006;
    return name !== one.name || kind !== one.kind || !same || !priced || !buys(bought, one);
  });
  return equal(FILE, claim, off ? `not of ${off.name}` : 'it does', 'it does');
}

/** As many films, and as large, as the sheets are cut from. */
function films(layout: LayoutFile, { films: told }: PaintEntry): Claim {
  const [first] = layout.films ?? [];
  const sized = (count: number, across = 0, along = 0) => (count === 0 ? '0' : `${count} of ${across} × ${along}`);
  return equal(
    LAYOUT,
    'as many films are bought as sheets are cut from',
    sized(told?.count ?? 0, told?.across, told?.along),
    sized(layout.films?.length ?? 0, first?.across, first?.along),
  );
}
