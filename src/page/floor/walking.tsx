import { isDrawn } from '../state/answer.ts';
import { AWAKE, awake } from './awake.ts';
import { Does, EndDoes, leftOver, Others } from './does.tsx';
import { Words } from './reading.tsx';
import { changed, counts, stop, unkept } from './state.ts';
import { StopSaid } from './stop.tsx';
import { sayStop } from './words.ts';

function EndSaid() {
  const { made: many, of, checks, checksRight, checksOff } = counts.value;
  const open = leftOver();
  return (
    <>
      <h1 tabindex={-1}>{open ? 'That was the last one' : 'Everything is marked'}</h1>
      <div class="about lead">
        <p class="use">
          {many} of {of} marks are made; {checksRight} of {checks} checks are right
          {checksOff > 0 ? `, ${checksOff} off` : ''}.
        </p>
        {open && (
          <p>
            Still to do: <Words>{sayStop(open)}</Words>.
          </p>
        )}
        {checksOff > 0 && <p class="moved">Put right what is off before any paint goes on; nothing later can.</p>}
      </div>
    </>
  );
}

/** That the marks are others than the last time, before anything is made by them. */
export function Changed() {
  return (
    <div class="walk">
      <h1 tabindex={-1}>The marks have changed</h1>
      <p class="moved">{changed.value}</p>
      <div class="thumb">
        <button
          type="button"
          class="main"
          onClick={() => {
            changed.value = '';
          }}
        >
          I have read it
        </button>
      </div>
    </div>
  );
}

/** The stop that is shown, and what a thumb reaches. */
export function Walk() {
  const now = stop.value;
  const { made: many, of } = counts.value;
  return (
    <div class="walk">
      <div class="what">{now ? <StopSaid stop={now} /> : <EndSaid />}</div>
      <p class="sum">
        {many} of {of} marks made in all. {AWAKE[awake.value]} {unkept.value}
        {!isDrawn.value && ' These marks are from before the last change of the job, which cannot be drawn yet.'}
      </p>
      <div class="thumb">
        <Others />
        {now ? <Does now={now} /> : <EndDoes />}
      </div>
    </div>
  );
}
