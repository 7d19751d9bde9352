import type { Surface } from './job.ts';

/** What a surface is called: within a sentence, and as a heading. */
export const SURFACE_WORDS: Record<Surface, { inText: string; heading: string }> = {
  runner: { inText: 'a runner', heading: 'Runner' },
  rug: { inText: 'a rug', heading: 'Painted rug' },
  'floor-cloth': { inText: 'a floor cloth', heading: 'Floor cloth' },
  floor: { inText: 'a whole floor', heading: 'Whole floor' },
  'room-border': { inText: 'a border round a room', heading: 'Room border' },
  stairs: { inText: 'a flight of stairs', heading: 'Stairs' },
};
