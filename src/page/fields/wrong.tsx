import { ended, upper } from '../../words.ts';
import './wrong.css';
import type { Issue } from '../../issue.ts';
import type { Offer } from '../engine/offers/offer.ts';
import { dueWords } from '../state/due-words.ts';
import { tree } from '../state/job.ts';
import { offersFor, take } from '../state/offers.ts';
import { type Path, textAt } from '../state/tree.ts';
import { issuesLeftAt, useShown } from './shown.ts';

/** The button goes with its issue, so the keyboard goes on at the field, or at the head of the part. */
function takeAndStay(offer: Offer, button: HTMLElement): void {
  const home =
    button.closest('.field')?.querySelector<HTMLElement>('input, select') ??
    button.closest('.part')?.querySelector<HTMLElement>('h2 button');
  take(offer);
  requestAnimationFrame(() => home?.focus());
}

/** A sentence, its first letter large unless it begins with what was typed. */
const sentence = ({ says, path }: Issue): string => {
  const typed = textAt(tree.value, path);
  return ended(typed !== '' && says.startsWith(typed.slice(0, 8)) ? says : upper(says));
};

interface Said {
  asked?: readonly string[];
}

/** Nothing is wrong where something is only not there yet. */
export const isDue = ({ code }: Issue): boolean => code === 'job/missing' || code === 'job/no-value';

/** An issue in a sentence without a key of the job file: what is still to be told, or what is wrong. */
export function sayIssue(issue: Issue): string {
  if (!isDue(issue)) return sentence(issue);
  const { code, path, says } = issue;
  const bare = code === 'job/no-value' || / is missing$/.test(says) || / is missing;/.test(says);
  const words = dueWords(path);
  return bare ? `Still to write${words === '' ? '' : `: ${words}`}.` : upper(ended(says));
}

/**
 * One issue, what to write instead, and what would help as buttons; with `offers`, what each of them leads to is told too. `asked`: readings that stand as
 * buttons elsewhere.
 */
export function IssueSaid({ issue, offers: led = false, asked = [] }: Said & { issue: Issue; offers?: boolean }) {
  const found = offersFor(issue).filter(({ changes }) => !asked.some((reading) => reading === changes[0]?.[1]));
  if (isDue(issue)) return <p>{sayIssue(issue)}</p>;
  return (
    <div class="issue">
      <p>
        {sayIssue(issue)} {issue.hint && found.length === 0 && <span class="hint">Try: {ended(issue.hint)}</span>}
      </p>
      {found.length > 0 && (
        <ul class={led ? 'offers led' : 'offers'}>
          {found.map((offer) => (
            <li key={offer.says}>
              <button type="button" onClick={({ currentTarget }) => takeAndStay(offer, currentTarget)}>
                {offer.says}
              </button>
              {led && offer.leads && <p>{upper(offer.leads)}.</p>}
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}

/**
 * What is wrong at a place of the job, each with what to write instead, and as buttons what was tried and helps. Issues that a field further below shows
 * are left to it.
 */
export function Wrong({ path, id, asked = [] }: Said & { path: Path; id?: string }) {
  useShown(path);
  const wrong = issuesLeftAt(path);
  return (
    <div class={wrong.length === 0 ? '' : wrong.every(isDue) ? 'due' : 'wrong'} id={id} role="status">
      {wrong.map((issue) => (
        <IssueSaid key={issue.says} issue={issue} asked={asked} />
      ))}
    </div>
  );
}
