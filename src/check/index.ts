import type { Claim, Claims, Family } from './claim.ts';
import { fileSet } from './file-set.ts';
import { firstLine } from './read/read.ts';

const FAMILIES = import.meta.glob<Family>('./claims/*.ts', { eager: true, import: 'default' });

/** What is claimed of one rectangle of repeats alone. A border round a room is none: `room-border` and `room-marks` prove it instead. */
const OF_RECTANGLES = new Set(
  'adds-up alternate border dimensions guide-lines laid-over landing lettering marks meeting mirror overlap plan-size repeats square template'
    .split(' ')
    .map((name) => `./claims/${name}.ts`),
);

/**
 * Reads the written files of one job back and proves or refutes every claim about them with what it measures.
 * Nothing is taken from memory, and layout.json is itself only claimed to be right. Never throws: what cannot be read is refuted.
 * @param files name to content, as they lie in the folder
 */
export async function checkFiles(files: ReadonlyMap<string, string | Uint8Array>): Promise<Claims> {
  const set = fileSet(files);
  const claims: Claim[] = [];
  const layout = set.layout();
  const isRoomBorder = layout.ok && layout.value.job.surface === 'room-border';
  for (const place of Object.keys(FAMILIES).sort()) {
    if (isRoomBorder && OF_RECTANGLES.has(place)) continue;
    try {
      claims.push(...(await FAMILIES[place]!(set)));
    } catch (error) {
      const name = place.replace(/^.*\/|\.ts$/g, '').replaceAll('-', ' ');
      claims.push({
        claim: `${name} can be measured`,
        holds: false,
        measured: firstLine(error),
        allowed: 'measured',
        file: '',
      });
    }
  }
  return { holds: claims.every((claim) => claim.holds), claims };
}
