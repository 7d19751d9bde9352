import { useId } from 'preact/hooks';
import { look } from '../../state/answer.ts';
import { paletteSeen, seenAs } from '../../state/seen-as.ts';
import { WorkDrawn } from './work-drawn.tsx';

const WAYS = [
  ['as it is', 'As it is'],
  ['protan', 'By people who see no red'],
  ['deutan', 'By people who see no green'],
  ['tritan', 'By people who see no blue'],
  ['faded', 'When it has faded'],
] as const;

/** The work as others see it; the one that is chosen shows on the plan. */
export function SeenAs() {
  const name = useId();
  const seen = look.value;
  if (!seen) return null;
  return (
    <section class="group" aria-labelledby="colours-seen">
      <h3 id="colours-seen">As it is seen</h3>
      <p class="usual">The one that you choose shows on the plan. No file changes by it.</p>
      <fieldset class="rail">
        <legend class="unseen">Show the plan as it is seen</legend>
        <ul class="wide">
          {WAYS.map(([way, words]) => (
            <li key={way} class={`board${seenAs.value === way ? ' taken' : ''}`}>
              <label>
                <input
                  type="radio"
                  name={name}
                  checked={seenAs.value === way}
                  onChange={() => {
                    seenAs.value = way;
                  }}
                />
                <WorkDrawn palette={paletteSeen(seen, way)} colours={seen.job.colours} says="" />
                <span class="called">{words}</span>
              </label>
            </li>
          ))}
        </ul>
      </fieldset>
    </section>
  );
}
