import { upper } from '../../../words.ts';
import { Line } from '../../fields/field.tsx';
import { look, made } from '../../state/answer.ts';
import { tree } from '../../state/job.ts';
import { isBranch, valueAt } from '../../state/tree.ts';

/** What is in the cupboard: a line for every paint of the work, and for any that the job tells of besides. */
export function OnHand() {
  const job = look.value?.job;
  if (!job) return null;
  const said = valueAt(tree.value, ['paint', 'on hand']);
  const needed = made.value?.told?.paint.rows.map(([name]) => name!).filter(Boolean) ?? Object.values(job.colours);
  const names = [...new Set([...needed, ...(isBranch(said) ? Object.keys(said) : [])])];
  return (
    <details>
      <summary>What you have already</summary>
      <p class="usual">Leave a line empty for what is not there. Pints, quarts and gallons are U.S. measures.</p>
      <div class="two-up">
        {names.map((name) => (
          <Line
            key={name}
            path={['paint', 'on hand', name]}
            label={upper(name)}
            example={job.system === 'inch' ? '1/2 pint' : '250 ml'}
          />
        ))}
      </div>
    </details>
  );
}
