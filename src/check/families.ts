import type { Claim, Family } from './claim.ts';
import type { FileSet } from './file-set.ts';
import { firstLine } from './read/read.ts';

const FOUND = import.meta.glob<Family>('./claims/*.ts', { eager: true, import: 'default' });

/** Every family of claims by the name of its file, sorted. */
export const FAMILIES: ReadonlyMap<string, Family> = new Map(
  Object.keys(FOUND)
    .sort()
    .map((place) => [place.replace(/^.*\/|\.ts$/g, ''), FOUND[place]!]),
);

/** What is claimed of one rectangle of repeats alone. A border round a room is none: `room-border` and `room-marks` prove it instead. */
const OF_RECTANGLES = new Set(
  'adds-up alternate border dimensions guide-lines laid-over landing lettering marks meeting mirror overlap plan-size repeats square template'.split(
    ' ',
  ),
);

/** The names of the families that speak of these files. */
export function familiesFor(set: FileSet): string[] {
  const layout = set.layout();
  const isRoomBorder = layout.ok && layout.value.job.surface === 'room-border';
  return [...FAMILIES.keys()].filter((name) => !(isRoomBorder && OF_RECTANGLES.has(name)));
}

/** The claims of one family. Never throws: what cannot be measured is refuted. */
export async function claimsOf(name: string, set: FileSet): Promise<Claim[]> {
  try {
    return await FAMILIES.get(name)!(set);
  } catch (error) {
    const claim = `${name.replaceAll('-', ' ')} can be measured`;
    return [{ claim, holds: false, measured: firstLine(error), allowed: 'measured', file: '' }];
  }
}
