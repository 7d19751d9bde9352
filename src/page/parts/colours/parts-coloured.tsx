import { useId } from 'preact/hooks';
import type { Part } from '../../../motif/motif.ts';
import { Wrong } from '../../fields/field.tsx';
import { useStops } from '../../fields/stops.ts';
import { look } from '../../state/answer.ts';
import { endStep, sayAll, tree } from '../../state/job.ts';
import { textAt } from '../../state/tree.ts';
import { coloursTold } from './asking.ts';
import { KEYS } from './by-keys.tsx';
import { inText, PART_WORDS } from './part-words.ts';

const percent = (share: number): string => (share < 0.01 ? 'under 1 %' : `${Math.round(100 * share)} %`);

function OnePart({ part, share }: { part: Part; share: number }) {
  const name = useId();
  const { palette, colours } = look.value!.job;
  const said = textAt(tree.value, ['colours', part]);
  const now = said !== '' && palette[said] ? said : colours[part];
  return (
    <fieldset class="field of-part">
      <legend>
        {PART_WORDS[part]}{' '}
        <span class="usual">
          {percent(share)} of the work, in {now}
        </span>
      </legend>
      <div class="pots">
        {Object.entries(palette).map(([colour, hex]) => (
          <label key={colour} class={colour === now ? 'taken' : ''}>
            <input
              type="radio"
              name={name}
              checked={colour === now}
              onChange={() => {
                endStep();
                sayAll([[['colours', part], colour]], `${inText(part)} in ${colour}`);
              }}
            />
            <span class="paint" style={{ background: hex }} aria-hidden="true" />
            <span class="pot">{colour}</span>
          </label>
        ))}
      </div>
      <Wrong path={['colours', part]} />
    </fieldset>
  );
}

/** Which part of the pattern is painted in which colour, for the parts that the drawing has. */
export function PartsColoured() {
  const rows = useStops('.of-part');
  const told = coloursTold.value;
  if (!told || !look.value) return null;
  return (
    <section class="group" aria-labelledby="colours-parts" aria-describedby={KEYS} ref={rows}>
      <h3 id="colours-parts">What is painted in which</h3>
      {told.parts.map(({ part, share }) => (
        <OnePart key={part} part={part} share={share} />
      ))}
      <Wrong path={['colours']} />
    </section>
  );
}
