import type { Motifs } from '../fit/problem.ts';
import type { Job } from '../job/job.ts';
import { motifWords } from '../motif/words.ts';
import { writeLength } from '../units/index.ts';
import type { RoomLayout } from './layout.ts';

export const pulledWords = (stretch: number): string => {
  const percent = Math.abs(stretch - 1) * 100;
  if (percent < 0.005) return 'true to shape';
  return `${stretch > 1 ? 'drawn out' : 'drawn in'} ${percent < 0.1 ? 'under 0.1' : percent.toFixed(1)} %`;
};

/** The line that explains a layout. */
export function explainRoom(layout: RoomLayout, job: Job, { border }: Partial<Motifs>): string {
  const length = (mm: number) => writeLength(mm, job.units, job.step);
  const { width, runs, corners, pitch } = layout;
  const band = `border ${length(width)} wide along ${runs.length} walls`;
  const strips = runs.map(({ strip }) => strip);
  const between = (values: number[]): string => {
    const [least, most] = [length(Math.min(...values)), length(Math.max(...values))];
    return least === most ? least : `${least} to ${most}`;
  };
  const off = `${between(strips)} off ${between(strips).includes(' to ') ? 'the walls' : 'every wall'}`;
  const gone = corners.filter(({ painted }) => !painted).length;
  const blocks = gone === 0 ? '' : `; ${gone === 1 ? 'one corner' : `${gone} corners`} left plain beside a door`;
  if (border!.made === 'tape') return `${band}, ${off}${blocks}`;
  const total = runs.reduce((sum, { repeats }) => sum + repeats, 0);
  const counts = `${total} repeats of ${motifWords(border!.name)}, whole on every wall: ${runs.map(({ repeats }) => repeats).join(', ')}`;
  const lengths = runs.filter(({ repeats }) => repeats > 0).map((run) => run.pitch);
  const each =
    pitch === 'one'
      ? `each ${length(lengths[0] ?? 0)}, ${pulledWords(layout.stretch)}`
      : `${between(lengths)} each, at most ${pulledWords(layout.stretch)}`;
  return `${counts}; ${each}; ${band}, ${off}${blocks}`;
}
