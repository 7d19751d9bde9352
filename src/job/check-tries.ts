import type { Issue } from '../issue.ts';
import { listed } from '../words.ts';
import { borderWidth } from './defaults.ts';
import type { Range } from './job.ts';
import type { Wishes } from './shape/shape.ts';
import type { Path } from './tree.ts';
import { borderOf, reserveOf } from './wishes.ts';
import { type Writing, writeIn } from './writing.ts';

/** Sizes, borders, reserves and gaps of one direction, each with each: what the search looks through in a second or two. */
const MOST_TRIES = 1_000_000;

interface Open {
  path: Path;
  range: Range;
}

const stepsOf = ({ range }: Open, step: number): number => Math.floor((range.to - range.from) / step + 1e-6) + 1;

/** Everything that may be chosen in a direction, on the steps of the tape. */
function openIn(wishes: Wishes, writing: Writing, way: 'across' | 'along'): Open[] {
  const { overall, field, site } = wishes;
  const border = borderOf(wishes);
  const bare = border.motif?.name === 'none';
  const width = border.width ?? borderWidth(writing.system, overall?.across?.to);
  const found: [Path, Range | undefined][] = [
    [['overall', way], overall?.[way]],
    [['field', 'size', way], field?.size?.[way]],
    [['border', 'width'], bare ? undefined : width],
    [['reserve', way], reserveOf(wishes)[way]],
    [['end gap'], way === 'along' && site?.run !== undefined ? wishes['end gap'] : undefined],
  ];
  return found.flatMap(([path, range]) => (range === undefined ? [] : [{ path, range }]));
}

/** Ranges so wide that the search would not come to an end. */
export function checkTries(wishes: Wishes, writing: Writing): Issue[] {
  for (const way of ['across', 'along'] as const) {
    const open = openIn(wishes, writing, way).sort((a, b) => stepsOf(b, writing.step) - stepsOf(a, writing.step));
    const tries = open.reduce((all, one) => all * stepsOf(one, writing.step), 1);
    const [widest] = open;
    if (tries <= MOST_TRIES || widest === undefined) continue;
    const { path, range } = widest;
    const ranges = open.filter((one) => stepsOf(one, writing.step) > 1).map((one) => one.path.join('.'));
    const share = Math.max(writing.step, ((range.to - range.from) * MOST_TRIES) / tries / 2);
    return [
      {
        code: 'job/range-wide',
        path,
        says: `${listed(ranges, 'and')} ${ranges.length > 1 ? 'are ranges so wide together' : 'is a range so wide'} that more than a million ways ${way} would have to be tried, one for each step of the tape`,
        hint: `${writeIn(writing, range.from)} to ${writeIn(writing, range.from + share)}, or a narrower range of another`,
      },
    ];
  }
  return [];
}
