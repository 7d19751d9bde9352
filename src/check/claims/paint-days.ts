import { type Claim, equal, type Proof, stated } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import type { LayoutFile } from '../read/layout.ts';
import { type PaintEntry, readPaintEntry } from '../read/paint.ts';

const FILE = 'layout.json';
const HAIR = 1e-6;
/** Days before furniture and before rugs come back, at the least (common practice, no source). */
const FURNITURE = 7;
const RUGS = 30;
/** Paint of another colour beside wet paint is put off so long at the least, hours (common practice, no source). */
const BESIDE = 1;

export const proof: Proof = {
  claims:
    'every coat in its order and wait, sheets laid as often as listed, hours of a day, walking, furniture and rugs',
  files: ['layout.json'],
  method: 'days reckoned anew from coats and placements',
  tolerance: '1e-6 h',
};

/** The days: every coat of every paint in its order, its sheets, its hours and its wait; and nobody comes too early. */
export default function paintDays(set: FileSet): Claim[] {
  const layout = set.layout();
  const entry = set.read(FILE, readPaintEntry);
  if (!layout.ok || !entry.ok || entry.value === undefined) return [];
  return [inOrder(entry.value), ...sheets(layout.value, entry.value), ...hours(entry.value), ...after(entry.value)];
}

interface Coat {
  what: string;
  /** What lies under it is waited for: this many hours after the coat before. */
  wait: number;
  colour?: string;
}

/** Every coat there is to paint, in the order in which paints lie on each other. */
function coats({ paints, days: { recoat } }: PaintEntry): Coat[] {
  const found: Coat[] = [];
  const all = (what: string, count: number, first: number, colour?: string): void => {
    for (let at = 1; at <= count; at++)
      found.push({
        what: count === 1 ? what : `${what}, coat ${at} of ${count}`,
        wait: found.length === 0 ? 0 : at === 1 ? first : recoat,
        ...(colour === undefined ? {} : { colour }),
      });
  };
  const of = (kind: string) => paints.filter((one) => one.kind === kind);
  const over = (name: string, one: (typeof paints)[number] | undefined) =>
    all(name, one?.uses.find(({ on }) => on === 'ground')?.coats ?? 0, recoat);
  const ground = of('colour').find(({ uses }) => uses.some(({ on }) => on === 'ground'));
  over('primer', of('primer')[0]);
  if (ground) over(`ground in ${ground.name}`, ground);
  let first = recoat;
  for (const { name, uses } of of('colour'))
    for (const use of uses) {
      if (use.on !== 'pattern') continue;
      all(`pattern in ${name}`, use.coats, first, name);
      first = Math.min(BESIDE, recoat);
    }
  over('clear coat', of('clear')[0]);
  return found;
}

function inOrder(entry: PaintEntry): Claim {
  const told = entry.days.stints.map(({ what }) => what).filter((what, at, all) => what !== all[at - 1]);
  const due = coats(entry).map(({ what }) => what);
  const off = Array.from({ length: Math.max(told.length, due.length) }).findIndex((_, at) => told[at] !== due[at]);
  return equal(
    FILE,
    'the days have every coat of every paint, in their order',
    off < 0 ? 'all' : (told[off] ?? 'nothing more'),
    off < 0 ? 'all' : (due[off] ?? 'nothing more'),
  );
}

/** How often sheets are laid in every coat of a colour is how often the layout has them, over all panels. */
function sheets(layout: LayoutFile, entry: PaintEntry): Claim[] {
  const { paints, panels, days } = entry;
  const laid = (name: string): number =>
    layout.sheets
      .filter(({ colour }) => colour === name)
      .reduce((sum, { passes }) => sum + passes.reduce((all, pass) => all + pass.length, 0), 0) * panels;
  const coatsOf = (colour: string): number =>
    paints.find(({ kind, name }) => kind === 'colour' && name === colour)?.uses.find(({ on }) => on === 'pattern')
      ?.coats ?? 0;
  const counted = (what: string): number =>
    days.stints.reduce((sum, stint) => sum + (stint.what === what ? (stint.sheets ?? 0) : 0), 0);
  const odd = coats(entry).find(({ what, colour }) => counted(what) !== (colour === undefined ? 0 : laid(colour)));
  return [
    equal(
      FILE,
      'sheets are laid as often over all days as the layout has them',
      days.stints.reduce((sum, stint) => sum + (stint.sheets ?? 0), 0),
      [...new Set(layout.sheets.map(({ colour }) => colour))].reduce(
        (sum, name) => sum + laid(name) * coatsOf(name),
        0,
      ),
    ),
    equal(
      FILE,
      'in every coat sheets are laid as often as the layout has them',
      odd ? `${counted(odd.what)} in ${odd.what}` : 'they are',
      odd ? `${odd.colour === undefined ? 0 : laid(odd.colour)}` : 'they are',
    ),
  ];
}

/** Begun as early as waits let it be, every coat is done within the working hours of the days it is told for, and no sheet is laid in less than its time. */
function hours(entry: PaintEntry): Claim[] {
  const { stints, working, placement } = entry.days;
  const waits = new Map(coats(entry).map(({ what, wait }) => [what, wait]));
  let clock = 0;
  let before: string | undefined;
  let late: string | undefined;
  for (const { what, day, hours: long } of stints) {
    const morning = 24 * (day - 1);
    const begins = Math.max(morning, clock + (what === before ? 0 : (waits.get(what) ?? 0)));
    clock = begins + long;
    before = what;
    if (clock > morning + working + HAIR) late ??= `${what} on day ${day}`;
  }
  const hasty = stints
    .map(({ what }) => what)
    .find((what) => {
      const own = stints.filter((stint) => stint.what === what);
      const [long, laid] = [
        own.reduce((sum, one) => sum + one.hours, 0),
        own.reduce((n, one) => n + (one.sheets ?? 0), 0),
      ];
      return long < laid * placement - HAIR;
    });
  return [
    equal(FILE, 'every coat has its wait and is done within working hours', late ?? 'all', 'all'),
    equal(FILE, 'every sheet has its time', hasty ?? 'all', 'all'),
  ];
}

function after({ days: { stints, walk, furniture, rugs } }: PaintEntry): Claim[] {
  const last = Math.max(0, ...stints.map(({ day }) => day));
  const notBefore = (claim: string, day: number, least: number): Claim =>
    stated(FILE, claim, day >= least, day, `day ${least} or later`);
  return [
    notBefore('nobody walks on the last coat before it is dry', walk, last),
    notBefore(
      'furniture comes back no sooner than a week after the last coat',
      furniture,
      Math.max(walk, last + FURNITURE),
    ),
    notBefore('rugs come back no sooner than a month after the last coat', rugs, Math.max(furniture, last + RUGS)),
  ];
}
