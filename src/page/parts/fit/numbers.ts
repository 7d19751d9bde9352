import type { Layout } from '../../../fit/layout.ts';
import type { Job } from '../../../job/job.ts';
import type { RoomLayout } from '../../../room-border/layout.ts';
import { writeLength } from '../../../units/index.ts';
import { halves } from '../../../words.ts';
import type { Listed } from './keep.ts';

/** One number of a layout, said. */
export interface Row {
  key: string;
  label: string;
  says: string;
}

const stretched = (stretch: number): string => {
  const percent = Math.abs(stretch - 1) * 100;
  if (percent < 0.05) return 'true to shape';
  return `${stretch > 1 ? 'drawn out' : 'drawn in'} ${percent.toFixed(1)} %`;
};

const ENDS = { whole: 'whole', half: 'half', cut: 'cut' };

function ofRepeats(layout: Layout, job: Job): Row[] {
  const length = (mm: number) => writeLength(mm, job.units, job.step);
  const { overall, border, borderRepeats, repeats, pitch, stretch, endGap, landing, reserve, marks, gaps } = layout;
  const rows: Row[] = [];
  const add = (key: string, label: string, says: string | undefined | false): void => {
    if (says) rows.push({ key, label, says });
  };
  const floor = job.surface === 'floor';
  add('size', 'Over everything', !floor && `${length(overall.across)} × ${length(overall.along)}`);
  add('repeats', floor ? 'Repeats laid' : 'Repeats', `${halves(repeats.across)} × ${halves(repeats.along)}`);
  add('pitch', 'One repeat', `${length(pitch.across)} × ${length(pitch.along)}`);
  add('stretch', 'Its shape', stretched(stretch));
  add(
    'edges',
    'At the edges',
    !floor &&
      (landing.left === landing.near
        ? ENDS[landing.left]
        : `${ENDS[landing.left]} at the sides, ${ENDS[landing.near]} at the ends`),
  );
  add('border', 'Border', !floor && (border > 0 ? `${length(border)} wide` : 'none'));
  add(
    'border repeats',
    'Its repeats',
    borderRepeats.across > 1 && `${borderRepeats.across} on each end, ${borderRepeats.along} on each side`,
  );
  add('inner', 'Inner border', layout.inner && `${length(layout.inner.width)} wide`);
  const inner = job.inner ? job.inner.width + job.inner.gap : 0;
  const strips = [reserve.across - inner, reserve.along - inner].map(length);
  const strip = strips[0] === strips[1] ? strips[0]! : `${strips[0]} at the sides, ${strips[1]} at the ends`;
  add(
    'reserve',
    floor ? 'Strip at the walls' : 'Plain strip inside',
    reserve.across + reserve.along > 2 * inner + 0.01 && strip,
  );
  const ends =
    Math.abs(gaps.near - gaps.far) < 0.01 ? length(endGap) : `${length(gaps.near)} near, ${length(gaps.far)} far`;
  add('gaps', 'Left at each end', job.surface === 'runner' && endGap > 0.01 && ends);
  const said =
    marks.across === 'rounded' || marks.along === 'rounded'
      ? 'some rounded by less than a mark'
      : 'every one on the tape';
  add('marks', 'Marks', said);
  return rows;
}

function ofWalls({ width, runs, stretch, uneven, pitch }: RoomLayout, job: Job): Row[] {
  const length = (mm: number) => writeLength(mm, job.units, job.step);
  const between = (values: number[]): string => {
    const [least, most] = [length(Math.min(...values)), length(Math.max(...values))];
    return least === most ? least : `${least} to ${most}`;
  };
  const repeats = runs.map((run) => run.repeats).filter((count) => count > 0);
  return [
    { key: 'border', label: 'Border', says: `${length(width)} wide` },
    ...(repeats.length > 0
      ? [
          { key: 'repeats', label: 'Repeats, wall by wall', says: repeats.join(', ') },
          { key: 'pitch', label: 'One repeat', says: between(runs.map((run) => run.pitch)) },
          { key: 'stretch', label: pitch === 'one' ? 'Its shape' : 'Its shape, at most', says: stretched(stretch) },
        ]
      : []),
    { key: 'strip', label: 'Off the walls', says: between(runs.map(({ strip }) => strip)) },
    { key: 'uneven', label: 'Strips differ by', says: uneven < 0.01 ? 'nothing' : length(uneven) },
  ];
}

/** The numbers of a layout, as the job writes lengths. */
export function numbersOf({ layout, room }: Listed, job: Job): Row[] {
  if (layout) return ofRepeats(layout, job);
  return room ? ofWalls(room, job) : [];
}

/** What differs between two layouts: every number that one of them says otherwise. */
export function differences(a: readonly Row[], b: readonly Row[]): { label: string; a: string; b: string }[] {
  const keys = [...new Set([...a, ...b].map(({ key }) => key))];
  return keys.flatMap((key) => {
    const [one, other] = [a, b].map((rows) => rows.find((row) => row.key === key));
    if (one?.says === other?.says) return [];
    return [{ label: (one ?? other)!.label, a: one?.says ?? 'none', b: other?.says ?? 'none' }];
  });
}
