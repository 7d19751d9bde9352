import type { Issue } from '../../issue.ts';
import { inches, type System } from '../../units/index.ts';
import type { Cloth } from '../job.ts';
import type { Wishes } from '../shape/shape.ts';
import type { Path } from '../tree.ts';
import { type Writing, writeIn } from '../writing.ts';

/** Turned under. Common practice, no source. */
const HEM: Record<System, number> = { inch: inches(1), metric: 25 };
/** Canvas draws in unevenly at its edges while it is primed; so much is left there and cut off. Common practice, no source. */
const TRIM: Record<System, number> = { inch: inches(1), metric: 25 };

/** What a trial piece may be after sizing, as a share of what it was. Beyond it, something was measured wrong. */
const [LEAST_LEFT, MOST_LEFT] = [0.75, 1.05];

/** The canvas of a floor cloth, every default filled in; nothing on other surfaces. */
export function clothOf({ surface, cloth = {} }: Wishes, system: System): Cloth | undefined {
  if (surface !== 'floor-cloth') return undefined;
  const { hem = HEM[system], corners = 'mitred', trim = TRIM[system], shrinkage, rolls = [], waste = 0 } = cloth;
  return {
    hem,
    corners,
    trim,
    ...(shrinkage ? { swatch: shrinkage } : {}),
    rolls: [...new Set(rolls)].sort((a, b) => a - b),
    waste,
    ...(cloth['edge height'] === undefined ? {} : { edgeHeight: cloth['edge height'] }),
  };
}

const WAYS = ['across', 'along'] as const;

/** What cannot be true of a cloth, and a cloth where there is none. */
export function checkCloth({ surface, cloth, overall }: Wishes, writing: Writing): Issue[] {
  if (cloth === undefined || surface === undefined) return [];
  const issue = (code: string, path: Path, says: string, hint: string): Issue => ({ code, path, says, hint });
  if (surface !== 'floor-cloth')
    return [
      issue(
        'job/not-here',
        ['cloth'],
        'cloth has a meaning for a floor cloth alone',
        'surface: floor-cloth, or leave it out',
      ),
    ];
  const write = (mm: number) => writeIn(writing, mm);
  const { shrinkage, waste = 0, rolls = [] } = cloth;
  const issues: Issue[] = [];
  const small = Math.min(...WAYS.map((way) => overall?.[way]?.from ?? Number.POSITIVE_INFINITY));
  if (cloth.hem !== undefined && 2 * cloth.hem >= small)
    issues.push(
      issue(
        'job/hem',
        ['cloth', 'hem'],
        `a hem of ${write(cloth.hem)} from both sides meets in the middle of a cloth ${write(small)} wide`,
        `hem: ${write(HEM[writing.system])}`,
      ),
    );
  for (const way of WAYS) {
    if (!shrinkage) break;
    const [before, after] = [shrinkage.before[way], shrinkage.after[way]];
    const left = after / before;
    if (left >= LEAST_LEFT && left <= MOST_LEFT) continue;
    const change = `${Math.round(Math.abs(1 - left) * 100)} % ${left < 1 ? 'shorter' : 'longer'}`;
    issues.push(
      issue(
        'job/swatch',
        ['cloth', 'shrinkage', 'after', way],
        `the trial piece was ${write(before)} ${way} and is ${write(after)}, ${change}; from 25 % shorter to 5 % longer is believed`,
        left > 1 ? 'the larger size under `before`, or measure it again' : 'measure it again',
      ),
    );
  }
  rolls.forEach((roll, at) => {
    if (roll > 2 * waste) return;
    issues.push(
      issue(
        'job/roll',
        ['cloth', 'rolls', at],
        `a waste of ${write(waste)} at each side leaves nothing of a roll ${write(roll)} wide`,
        `waste: ${write(roll / 50)}`,
      ),
    );
  });
  return issues;
}
