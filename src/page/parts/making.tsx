import { isDrawn, isMade, isTried, made, makeAll, making, notMade, proofs } from '../state/answer.ts';
import './making.css';
import { Picture } from './picture.tsx';

/** How what is shown stands to the job as it is now: finished, being made, of an earlier state, or refused and why. */
export function Making({ what }: { what: string }) {
  return (
    <div class="making">
      <p role="status">{says(what)}</p>
      {!making.value && isDrawn.value && !isTried.value && (
        <button type="button" onClick={() => void makeAll()}>
          Make {what} now
        </button>
      )}
    </div>
  );
}

function says(what: string): string {
  const old = made.value ? ` What is shown below is from before your last change.` : '';
  if (!isDrawn.value) return `First put right what is marked on this card; then ${what} can be made.${old}`;
  if (making.value) return `Making ${what}: this may take a few seconds. You can go on.${old}`;
  if (isMade.value) return '';
  if (isTried.value)
    return `Made as far as it goes: some of it does not hold, and nothing is handed over that would not.`;
  return `Not made yet from your last change.${old}`;
}

/** Why nothing was made, with the places drawn where there are any. */
export function Refused() {
  if (notMade.value.length === 0 || !isTried.value) return null;
  const drawn = [...(proofs.value?.files ?? [])].filter(([name]) => name.endsWith('.svg'));
  return (
    <section class="refused" aria-label="What does not hold">
      <h3>What does not hold</h3>
      {notMade.value.map(({ says: why, hint }) => (
        <div class="wrong" key={why}>
          <p>{why}.</p>
          {hint && <p class="hint">Try: {hint}</p>}
        </div>
      ))}
      {drawn.map(([name, svg]) => (
        <figure key={name}>
          <Picture svg={String(svg)} />
          <figcaption>
            {name.replace('-proof.svg', '.svg')}: the places that are too narrow are ringed and numbered; below the
            sheet stands how wide each is.
          </figcaption>
        </figure>
      ))}
    </section>
  );
}
