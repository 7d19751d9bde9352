import type { Finished } from '../finished.ts';
import type { Block } from '../job-sheet/block.ts';
import { roomFile } from './file.ts';

/** The room on the job sheet, where it was measured all round. */
export async function roomBlocks(finished: Finished): Promise<Block[]> {
  if (!finished.site.placing) return [];
  const svg = await roomFile(finished);
  if (svg === undefined) return [];
  return [
    { kind: 'heading', level: 2, text: 'In the room' },
    {
      kind: 'figure',
      svg,
      says: 'Find the axis by its two distances along the near and far wall, then lay the work on it. The short lines are what is left to the walls; measure them before any paint goes on.',
      share: 1,
    },
  ];
}
