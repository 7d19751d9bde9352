import type { Issue, Result } from '../../../issue.ts';
import { type AnyFitted, type Assets, fitAny } from '../../../pipeline.ts';
import { valueAt, withValue } from '../../state/tree.ts';
import type { JobTree } from '../ask.ts';
import { writeJob } from '../write-job.ts';
import { trialsOf } from './hints.ts';
import { type Found, type Limit, limitsOf, narrower } from './limits.ts';
import type { Change, Offer, Path, Trial } from './offer.ts';

/** So many are shown; more would only be read with a sigh. */
const MOST = 6;

/** What the search needs of whoever asks: whether the answer is still wanted. Called between tries. */
export type GoesOn = () => Promise<boolean>;

const changed = (tree: JobTree, changes: readonly Change[]): JobTree =>
  changes.reduce((whole, [path, value]) => withValue(whole, path, value), tree);

const same = (a: Issue, b: Issue): boolean => a.code === b.code && String(a.path) === String(b.path);

const foundIn = ({ kind, value }: AnyFitted): Found =>
  kind === 'rectangle' ? { layout: value.fit.layouts[0]! } : { room: value.fit.layouts[0]! };

const saysOf = ({ value }: AnyFitted): string => value.fit.layouts[0]!.says;

/**
 * What would help a job that has something wrong with it, each tried, the least change first: what the issues themselves say to write; and where
 * nothing lands, every limit of the job let out by itself until something does, then written just so wide as it needs to be, and pairs of them if
 * none helps alone.
 * @returns nothing where `goesOn` said no meanwhile
 */
export async function findOffers(
  tree: JobTree,
  issues: readonly Issue[],
  assets: Assets | undefined,
  goesOn: GoesOn,
): Promise<Offer[] | undefined> {
  const at = (path: Path) => valueAt(tree, path);
  const attempt = (changes: readonly Change[], why: boolean): Promise<Result<AnyFitted>> =>
    fitAny(writeJob('', changed(tree, changes)), 'the job', 1, assets, why);
  const lands: Attempt = (changes) => attempt(changes, false);
  const offers: Offer[] = [];

  const offer = (trial: Trial, issue: number, result: Result<AnyFitted>): void => {
    const key = JSON.stringify(trial.changes);
    if (offers.some((one) => JSON.stringify(one.changes) === key)) return;
    offers.push({ ...trial, issue, ...(result.ok ? { leads: saysOf(result.value) } : {}) });
  };

  const number = issues.findIndex(({ code }) => code.startsWith('fit/') || code === 'site/room');
  if (number >= 0) {
    const { readJob } = await import('../../../job/read.ts');
    const { allMotifs } = await import('../../../motif/library.ts');
    const read = readJob(writeJob('', tree), 'the job', allMotifs());
    const job = read.ok ? read.value : undefined;
    const limits = !job ? [] : issues[number]!.code === 'fit/room' ? narrower(job, at) : limitsOf(job, at);
    for (const limit of limits) {
      const found = await letOut(limit, lands, goesOn);
      if (found === 'stop') return undefined;
      if (found) offer(found.trial, number, found.result);
    }
    if (offers.length === 0) {
      const pair = await letOutPairs(limits, lands, goesOn);
      if (pair === 'stop') return undefined;
      for (const { trial, result } of pair) offer(trial, number, result);
    }
  }
  const isLetOut = offers.length > 0;
  for (const [number, issue] of issues.entries()) {
    // What was let out and found goes before what the issue says in words.
    if (issue.code.startsWith('fit/') && isLetOut) continue;
    for (const trial of trialsOf(issue, at)) {
      if (!(await goesOn())) return undefined;
      const result = await attempt(trial.changes, true);
      const helps = result.ok || (!result.issues.some((one) => same(one, issue)) && isLess(result.issues, issues));
      if (helps) offer(trial, number, result);
    }
  }
  return bestOf(offers);
}

/** Fewer things wrong, or as many and all of them known before; and no key that the job file does not have. */
const isLess = (now: readonly Issue[], before: readonly Issue[]): boolean => {
  const fresh = now.filter((one) => !before.some((other) => same(one, other)));
  return fresh.length === 0 || (now.length < before.length && !fresh.some(({ code }) => code === 'job/unknown-key'));
};

type Tried = { trial: Trial; result: Result<AnyFitted> };
type Attempt = (changes: readonly Change[]) => Promise<Result<AnyFitted>>;

/** Lets a limit out further and further until something lands; then just so far as that needs. */
async function letOut(limit: Limit, attempt: Attempt, goesOn: GoesOn): Promise<Tried | 'stop' | undefined> {
  for (const wide of limit.tries) {
    if (!(await goesOn())) return 'stop';
    const loose = await attempt(wide);
    if (!loose.ok) continue;
    const trial = limit.tight(foundIn(loose.value));
    if (!trial) return undefined;
    if (JSON.stringify(trial.changes) === JSON.stringify(wide)) return { trial, result: loose };
    if (!(await goesOn())) return 'stop';
    const result = await attempt(trial.changes);
    return result.ok ? { trial, result } : undefined;
  }
  return undefined;
}

/** Limits that may be let out two at a time; more would take long and help little. */
const PAIRED = 6;

async function letOutPairs(limits: readonly Limit[], attempt: Attempt, goesOn: GoesOn): Promise<Tried[] | 'stop'> {
  const several = limits.filter(({ tries }) => tries.length > 1).slice(0, PAIRED);
  const tried: Tried[] = [];
  for (const [n, one] of several.entries())
    for (const other of several.slice(n + 1)) {
      if (!(await goesOn())) return 'stop';
      const loose = await attempt([...one.tries.at(-1)!, ...other.tries.at(-1)!]);
      if (!loose.ok) continue;
      const found = foundIn(loose.value);
      const [a, b] = [one.tight(found), other.tight(found)];
      if (!a || !b) continue;
      const trial: Trial = {
        says: `${a.says}, and ${b.says.charAt(0).toLowerCase()}${b.says.slice(1)}`,
        changes: [...a.changes, ...b.changes],
        by: a.by + b.by + 1,
      };
      const result = await attempt(trial.changes);
      if (result.ok) tried.push({ trial, result });
    }
  return tried;
}

/** The least change first. Where some lead to a plan, those that only put a slip right are kept beside them. */
function bestOf(offers: Offer[]): Offer[] {
  const order = (a: Offer, b: Offer): number => a.issue - b.issue || a.by - b.by;
  const sorted = [...offers].sort(order);
  const count = new Map<number, number>();
  return sorted.filter(({ issue }) => {
    const before = count.get(issue) ?? 0;
    count.set(issue, before + 1);
    return before < MOST;
  });
}
