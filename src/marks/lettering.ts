import type { Lettered } from '../compose/drawing.ts';
import type { Layout } from '../fit/layout.ts';
import type { Job } from '../job/job.ts';
import { marksAt, type Place } from './place.ts';
import type { GuideLine } from './schedule.ts';

/** What a line of lettering is called, and what the names of its guide lines begin with. Each place has one line at most. */
const NAMES: Record<Lettered['place'], { words: string; name: string }> = {
  centre: { words: 'the lettering', name: 'lettering' },
  near: { words: 'the near lettering', name: 'near-lettering' },
  far: { words: 'the far lettering', name: 'far-lettering' },
};

const letteringWords = ({ place }: Pick<Lettered, 'place'>): string => NAMES[place].words;

/**
 * Where lettering lies along the work, mm from the near limit: both edges of its room, its middle, and the base line on which its letters stand.
 * A bent base line is marked where it crosses the axis.
 */
export function letteringAlong({ gaps, work }: Layout, lettering: readonly Lettered[] = []): Place[] {
  const along = (y: number) => gaps.near + work.along / 2 - y;
  return lettering.flatMap((line): Place[] => {
    const words = letteringWords(line);
    const { reach, base, arc } = line;
    return [
      { at: along(line.bottom), for: `room of ${words} begins` },
      { at: along(base), for: arc === 0 ? `base line of ${words}` : `base line of ${words} at the axis` },
      { at: along((reach.top + reach.bottom) / 2), for: `middle of ${words}` },
      { at: along(line.top), for: `room of ${words} ends` },
    ];
  });
}

/** Sideways along each line of lettering, from the axis outwards: the end of what is painted, and the edge of the room. */
export function letteringLines(job: Pick<Job, 'step'>, lettering: readonly Lettered[] = []): GuideLine[] {
  return lettering.flatMap((line) => {
    const { words, name } = NAMES[line.place];
    return (['left', 'right'] as const).map((side): GuideLine => {
      const out = (box: { left: number; right: number }) => (side === 'left' ? -box.left : box.right);
      const places = [
        { at: out(line.reach), for: `end of ${words}` },
        { at: out(line), for: `edge of the room of ${words}` },
      ];
      return {
        name: `${name}-${side}`,
        says: `Along ${words}, from the axis to the ${side}. Its middle lies on the axis.`,
        datum: 'the axis',
        runs: side,
        marks: marksAt(places, job.step),
      };
    });
  });
}
