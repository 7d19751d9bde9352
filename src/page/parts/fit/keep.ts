import type { Layout } from '../../../fit/layout.ts';
import type { Job, Range } from '../../../job/job.ts';
import type { Tree } from '../../../job/tree.ts';
import type { RoomLayout } from '../../../room-border/layout.ts';
import { writeLength } from '../../../units/index.ts';
import type { JobTree } from '../../engine/ask.ts';
import { type Path, textAt, valueAt } from '../../state/tree.ts';

export type Changes = (readonly [Path, Tree | undefined])[];

/** A layout as the list has it: of repeats, or of a border along walls. */
export interface Listed {
  says: string;
  layout?: Layout;
  room?: RoomLayout;
}

/** Everything that keeping a layout may say; letting it go says what stood there before. */
const PLACES: readonly Path[] = [
  ['field', 'repeats'],
  ['field', 'landing'],
  ['border'],
  ['overall'],
  ['end gap'],
  ['reserve'],
  ['stairs', 'margin'],
];

const FINEST = 25.4 / 64;
/** Closer than this, mm, two lengths are one. */
const SAME = 1e-4;

const isOpen = ({ from, to }: Range): boolean => to - from > 1e-9;

/** A length that reads back as it is, or the narrowest range round it that the tape shows. */
function exactly(mm: number, { units, system, step }: Job): string {
  for (const fine of system === 'inch' ? [step, FINEST] : [step, 0.1])
    if (Math.abs(mm / fine - Math.round(mm / fine)) < SAME) return writeLength(mm, units, fine);
  return around({ from: mm, to: mm }, { units, step } as Job);
}

/** A range of the tape's marks that holds another. */
function around({ from, to }: Range, { units, step }: Pick<Job, 'units' | 'step'>): string {
  const low = Math.floor(from / step + SAME) * step;
  const high = Math.max(low + step, Math.ceil(to / step - SAME) * step);
  return `${writeLength(Math.max(0, low), units, step)} to ${writeLength(high, units, step)}`;
}

const counted = (count: number): string => String(count);

/** The border as a branch that says its width. */
function widthChange(tree: JobTree, width: string): Changes {
  const border = valueAt(tree, ['border']);
  if (typeof border === 'string') return [[['border'], { motif: border, width }]];
  return [[['border', 'width'], width]];
}

function keepRepeats(
  tree: JobTree,
  { repeats, landing, border, overall, endGap, gaps, reserve }: Layout,
  job: Job,
): Changes {
  const changes: Changes = [
    [['field', 'repeats', 'across'], counted(repeats.across)],
    [['field', 'repeats', 'along'], counted(repeats.along)],
  ];
  if (job.surface === 'floor') return changes;
  if (landing.left !== 'cut' && landing.near !== 'cut')
    changes.push([
      ['field', 'landing'],
      landing.left === landing.near ? landing.left : { across: landing.left, along: landing.near },
    ]);
  if (border > 0) changes.push(...widthChange(tree, exactly(border, job)));
  // With a shape that may not be pulled, the repeats decide one length along; it is kept open as far as the tape shows it.
  const fixed = !isOpen(job.field.stretch);
  const along = job.overall.along;
  const slack = !fixed ? undefined : isOpen(job.endGap) ? 'gap' : isOpen(job.reserve.along) ? 'reserve' : 'size';
  if (isOpen(job.endGap))
    changes.push([
      ['end gap'],
      slack === 'gap' ? around({ from: endGap, to: endGap }, job) : exactly(Math.min(gaps.near, gaps.far), job),
    ]);
  const inner = job.inner ? job.inner.width + job.inner.gap : 0;
  if (isOpen(job.reserve.across) || isOpen(job.reserve.along)) {
    const [x, y] = [reserve.across - inner, reserve.along - inner];
    changes.push([
      ['reserve'],
      { across: exactly(x, job), along: slack === 'reserve' ? around({ from: y, to: y }, job) : exactly(y, job) },
    ]);
  }
  if (job.overall.across && isOpen(job.overall.across))
    changes.push([['overall', 'across'], exactly(overall.across, job)]);
  if (along && isOpen(along))
    changes.push([
      ['overall', 'along'],
      slack === 'size' ? around({ from: overall.along, to: overall.along }, job) : exactly(overall.along, job),
    ]);
  return changes;
}

/** The panel of a flight: its width, and the strips that leave it so high or so deep on every step. */
function keepPanel({ overall }: Layout, job: Job): Changes {
  const { stairs, site } = job;
  if (!stairs) return [];
  const kind = stairs.painted === 'risers' ? 'riser' : 'tread';
  const deep = (site.steps ?? []).flatMap((step) => step[kind]?.along ?? []);
  const strips = stairs.stands === 'middle' ? 2 : 1;
  const less = kind === 'tread' ? stairs.nosing : 0;
  const left = [Math.min(...deep), Math.max(...deep)].map((mm) => exactly((mm - less - overall.along) / strips, job));
  return [
    [['overall', 'across'], exactly(overall.across, job)],
    [['stairs', 'margin', stairs.painted], left[0] === left[1] ? left[0] : { from: left[0]!, to: left[1]! }],
  ];
}

function keepWalls(tree: JobTree, { width, runs }: RoomLayout, job: Job): Changes {
  const strips = runs.map(({ strip }) => strip);
  return [
    ...widthChange(tree, exactly(width, job)),
    [['reserve'], around({ from: Math.min(...strips), to: Math.max(...strips) }, job)],
  ];
}

/** What the job has to say so that this layout is the first, whatever else changes. */
export function keepChanges(tree: JobTree, { layout, room }: Listed, job: Job): Changes {
  if (layout) return [...keepRepeats(tree, layout, job), ...keepPanel(layout, job)];
  return room ? keepWalls(tree, room, job) : [];
}

const isSingle = (value: Tree | undefined): boolean => typeof value === 'string' && !/\sto\s/i.test(value);

/** Whether the job says a layout's counts and width, one value each, as a kept one does. */
export function isKept(tree: JobTree): boolean {
  const border = valueAt(tree, ['border']);
  const width = border === undefined || border === 'none' || isSingle(valueAt(border, ['width']));
  if (textAt(tree, ['surface']) === 'room-border') return border !== undefined && width;
  return (
    isSingle(valueAt(tree, ['field', 'repeats', 'across'])) &&
    isSingle(valueAt(tree, ['field', 'repeats', 'along'])) &&
    width
  );
}

/**
 * What the job says again once a kept layout is let go: what it said before it was kept, as far as that is known; otherwise the counts are left open.
 * @param history what the job said before, the last first
 */
export function letGo(tree: JobTree, history: readonly JobTree[]): Changes {
  const before = history.find((one) => one.surface === tree.surface && !isKept(one));
  if (!before) return [[['field', 'repeats', 'along'], undefined]];
  return PLACES.flatMap((path): Changes => {
    if (path[0] !== 'border') return [[path, valueAt(before, path)]];
    const [was, is] = [valueAt(before, path), valueAt(tree, path)];
    // Of the border only its width was kept; a motif taken since stays.
    if (typeof is !== 'object' || is === null || Array.isArray(is)) return [];
    return [[['border', 'width'], valueAt(was, ['width'])]];
  });
}

/** Coarse enough for the noise of reckoning, and with no mark of a tape on its edges. */
const rounded = (mm: number): number => Math.round(mm * 10 * Math.SQRT2);

/** Counts and sizes by which a layout is known again. */
export function fingerprint({ layout, room, says }: Listed): string {
  if (layout) {
    const { repeats, border, landing, overall, phase } = layout;
    const lengths = [border, overall.across, overall.along, phase.across, phase.along].map((mm) => rounded(mm));
    return [repeats.across, repeats.along, landing.left, landing.near, ...lengths].join(' ');
  }
  return room ? [rounded(room.width), ...room.runs.map(({ repeats }) => repeats)].join(' ') : says;
}
