import { leaveFloor } from './open.ts';
import { back, goTo, later, made, notMade, off, progress, view, walk } from './state.ts';
import { isMade, isOff, nextOpen } from './ticks.ts';
import type { Stop } from './walk.ts';

const DONE: Record<Stop['kind'], string> = {
  line: 'The tape is there',
  mark: 'Made',
  task: 'Done',
  check: 'It is right',
};

/** A thumb that bounces does not tick twice, ms. */
const BOUNCE = 200;
let pressed = 0;

export function once(work: () => void): () => void {
  return () => {
    const now = performance.now();
    if (now - pressed < BOUNCE) return;
    pressed = now;
    work();
  };
}

/** What is done with the stop that is shown. */
export function Does({ now }: { now: Stop }) {
  const ticks = progress.value?.ticks ?? [];
  const isDone = isMade(ticks, now);
  const wrong = isOff(ticks, now);
  const [second, doSecond] = wrong ? ['Put it right later', later] : ['It is off', off];
  return (
    <div class={now.kind === 'check' || isDone ? 'does three' : 'does'}>
      <button type="button" disabled={walk.value[0] === now} onClick={once(back)}>
        Back
      </button>
      {isDone ? (
        <button type="button" onClick={once(() => notMade([now.id]))}>
          {now.kind === 'check' ? 'Not right after all' : 'Not made after all'}
        </button>
      ) : (
        now.kind === 'check' && (
          <button type="button" onClick={once(doSecond)}>
            {second}
          </button>
        )
      )}
      <button type="button" class="main" key="main" onClick={once(made)}>
        {isDone ? (
          <>
            <span class="was-made">{now.kind === 'check' ? 'Right' : 'Made'} ✓</span> Go on
          </>
        ) : (
          DONE[now.kind]
        )}
      </button>
    </div>
  );
}

/** What is left once the last stop is passed; nothing where all is done. */
export const leftOver = (): Stop | undefined => nextOpen(walk.value, progress.value?.ticks ?? [], '');

export function EndDoes() {
  const open = leftOver();
  return (
    <div class="does">
      <button type="button" onClick={once(back)}>
        Back
      </button>
      <button type="button" class="main" onClick={once(open ? () => goTo(open.id) : leaveFloor)}>
        {open ? 'Go to what is left' : 'Leave the floor'}
      </button>
    </div>
  );
}

export function Others() {
  return (
    <div class="others">
      <button
        type="button"
        onClick={() => {
          view.value = 'row';
        }}
      >
        My row is off
      </button>
      <button
        type="button"
        onClick={() => {
          view.value = 'lines';
        }}
      >
        All lines
      </button>
    </div>
  );
}
