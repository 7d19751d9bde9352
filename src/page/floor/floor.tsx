import { effect } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import './floor.css';
import { isDrawn, issues, look } from '../state/answer.ts';
import { tree } from '../state/job.ts';
import { textAt } from '../state/tree.ts';
import { AWAKE, awake, stayAwake } from './awake.ts';
import { takeFloorKeys } from './keys.ts';
import { Lines } from './lines.tsx';
import { leaveFloor, takeWayBack } from './open.ts';
import { Words } from './reading.tsx';
import { RowOff } from './row.tsx';
import {
  back,
  changed,
  counts,
  goTo,
  keepTicks,
  lastTicked,
  later,
  made,
  notMade,
  off,
  progress,
  said,
  stop,
  undoTick,
  unkept,
  view,
  walk,
} from './state.ts';
import { StopSaid } from './stop.tsx';
import { isMade, isOff, nextOpen } from './ticks.ts';
import type { Stop } from './walk.ts';
import { sayStop, spoken, upper } from './words.ts';

const DONE: Record<Stop['kind'], string> = {
  line: 'The tape is there',
  mark: 'Made',
  task: 'Done',
  check: 'It is right',
};

/** A thumb that bounces does not tick twice, ms. */
const BOUNCE = 200;
let pressed = 0;

function once(work: () => void): () => void {
  return () => {
    const now = performance.now();
    if (now - pressed < BOUNCE) return;
    pressed = now;
    work();
  };
}

function Does({ now }: { now: Stop }) {
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

const leftOver = (): Stop | undefined => nextOpen(walk.value, progress.value?.ticks ?? [], '');

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

function EndDoes() {
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

function Others() {
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

/** That the marks are others than the last time, before anything is made by them. */
function Changed() {
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

function Walk() {
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

/** What is told of a stop to those who do not see it. */
function tellStop(now: Stop | undefined): string {
  if (!now) return 'That was the last one.';
  if (now.kind === 'mark')
    return `${upper(spoken(now.line))}, mark ${now.at + 1} of ${now.line.marks.length}: ${sayStop(now)}`;
  return upper(sayStop(now));
}

function Waiting() {
  const isWrong = issues.value.length > 0;
  return (
    <div class="walk">
      <h1 tabindex={-1}>{isWrong ? 'There are no marks yet' : 'One moment'}</h1>
      <p>
        {isWrong
          ? 'The job cannot be drawn as it stands. Leave the floor: the job card says what is missing.'
          : 'The marks are being worked out.'}
      </p>
    </div>
  );
}

/** The marks on the floor, one at a time, for a phone held in one hand. It takes the place of the job card. */
export function Floor() {
  const page = useRef<HTMLElement>(null);
  const ready = look.value !== undefined && progress.value !== undefined && walk.value.length > 0;
  const shown = !ready ? 'none' : changed.value ? 'changed' : view.value;
  useEffect(() => {
    const ends = [
      keepTicks(),
      takeWayBack(),
      takeFloorKeys(),
      stayAwake(),
      effect(() => {
        if (view.value === 'walk' && walk.value.length > 0) said.value = changed.value || tellStop(stop.value);
      }),
    ];
    document.documentElement.classList.add('on-floor');
    return () => {
      for (const end of ends) end();
      document.documentElement.classList.remove('on-floor');
      requestAnimationFrame(() => {
        const part = document.getElementById('part-marks');
        part?.scrollIntoView({ block: 'start' });
        part?.querySelector<HTMLElement>('h2 button')?.focus({ preventScroll: true });
      });
    };
  }, []);
  useEffect(() => {
    scrollTo(0, 0);
    page.current?.querySelector('h1')?.focus({ preventScroll: true });
  }, [shown]);
  return (
    <main class={`floor at-${shown}`} aria-label="On the floor" ref={page}>
      <div class="floor-head">
        <button type="button" onClick={leaveFloor}>
          Leave the floor
        </button>
        <p>{textAt(tree.value, ['title'])}</p>
        {shown === 'walk' && lastTicked.value && (
          <button type="button" onClick={once(undoTick)}>
            Undo last tick
          </button>
        )}
      </div>
      {shown === 'none' && <Waiting />}
      {shown === 'changed' && <Changed />}
      {shown === 'walk' && <Walk />}
      {shown === 'lines' && <Lines />}
      {shown === 'row' && <RowOff />}
      <p class="unseen" role="status" aria-live="polite">
        {said.value}
      </p>
    </main>
  );
}
