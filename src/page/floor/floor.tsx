import { effect } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import './floor.css';
import { upper } from '../../words.ts';
import { issues, look } from '../state/answer.ts';
import { tree } from '../state/job.ts';
import { textAt } from '../state/tree.ts';
import { stayAwake } from './awake.ts';
import { once } from './does.tsx';
import { takeFloorKeys } from './keys.ts';
import { Lines } from './lines.tsx';
import { leaveFloor, takeWayBack } from './open.ts';
import { RowOff } from './row.tsx';
import { changed, keepTicks, lastTicked, progress, said, stop, undoTick, view, walk } from './state.ts';
import type { Stop } from './walk.ts';
import { Changed, Walk } from './walking.tsx';
import { sayStop, spoken } from './words.ts';

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
