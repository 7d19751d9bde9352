import { useState } from 'preact/hooks';
import './lines.css';
import { upper } from '../../words.ts';
import { Words } from './reading.tsx';
import { RefitFiles } from './refit-files.tsx';
import { dropRefit, goTo, notMade, progress, view, walk } from './state.ts';
import { isMade, isOff } from './ticks.ts';
import type { Stop } from './walk.ts';
import { spoken } from './words.ts';

interface Entry {
  id: string;
  title: string;
  says: string;
  isDone: boolean;
}

/** Stops of one line under one entry, which leads to the first of its marks that is not made. */
function entriesOf(stops: readonly Stop[]): Entry[] {
  const ticks = progress.value?.ticks ?? [];
  const done = (stop: Stop) => isMade(ticks, stop);
  return stops.flatMap((stop): Entry[] => {
    if (stop.kind === 'mark') return [];
    if (stop.kind === 'line') {
      const marks = stops.filter((one) => one.kind === 'mark' && one.line.name === stop.line.name);
      const many = marks.filter(done).length;
      const isDone = many === marks.length;
      const open = many > 0 ? marks.find((one) => !done(one)) : undefined;
      const all = marks.length === 1 ? 'the mark is made' : `all ${marks.length} marks made`;
      const says = isDone ? all : `${many} of ${marks.length} mark${marks.length === 1 ? '' : 's'} made`;
      return [{ id: open?.id ?? stop.id, title: upper(spoken(stop.line)), says, isDone }];
    }
    const title = stop.kind === 'check' ? `Is it square? Check ${stop.at + 1}` : stop.title;
    const undone = stop.kind === 'check' ? 'not measured yet' : 'not done yet';
    const says = isOff(ticks, stop)
      ? 'off, to be put right'
      : !done(stop)
        ? undone
        : stop.kind === 'check'
          ? 'right'
          : 'done';
    return [{ id: stop.id, title, says, isDone: done(stop) }];
  });
}

function Refits() {
  const [asked, ask] = useState(false);
  const refits = progress.value?.refits ?? [];
  if (refits.length === 0) return null;
  const drop = (rubbed: boolean) => {
    ask(false);
    dropRefit(rubbed);
  };
  return (
    <section aria-labelledby="floor-refits">
      <h2 id="floor-refits">Re-fits</h2>
      {refits.map(({ entry, says }) => (
        <div key={entry.number} class="refit-said">
          <h3>Re-fit {entry.number}</h3>
          {says.map((line) => (
            <p key={line}>
              <Words>{line}</Words>
            </p>
          ))}
          <RefitFiles number={entry.number} />
        </div>
      ))}
      {asked ? (
        <fieldset class="ask">
          <legend>Are the marks from before this re-fit still on the floor?</legend>
          <button type="button" class="tall" onClick={() => drop(false)}>
            They are there: take the re-fit back
          </button>
          <button type="button" class="tall" onClick={() => drop(true)}>
            They are rubbed out: take it back, and I make them again
          </button>
          <button type="button" class="tall" onClick={() => ask(false)}>
            Keep the re-fit
          </button>
        </fieldset>
      ) : (
        <button type="button" class="tall" onClick={() => ask(true)}>
          Take re-fit {refits.length} back
        </button>
      )}
    </section>
  );
}

function AllOff() {
  const [asked, ask] = useState(false);
  const ticks = progress.value?.ticks ?? [];
  if (ticks.length === 0) return null;
  if (!asked)
    return (
      <button type="button" class="tall" onClick={() => ask(true)}>
        Take every tick off
      </button>
    );
  return (
    <fieldset class="ask">
      <legend>All {ticks.length} ticks go, and you begin with the first line again.</legend>
      <button
        type="button"
        class="tall"
        onClick={() => {
          ask(false);
          notMade(ticks.map(([id]) => id));
          goTo(walk.value[0]!.id);
        }}
      >
        Take all {ticks.length} off
      </button>
      <button type="button" class="tall" onClick={() => ask(false)}>
        Keep them
      </button>
    </fieldset>
  );
}

/** Every line, task and check in the order of work, to go to. */
export function Lines() {
  return (
    <div class="floor-lines">
      <h1 tabindex={-1}>Everything to do, in order</h1>
      <div class="scrolls">
        <ol>
          {entriesOf(walk.value).map(({ id, title, says, isDone }) => (
            <li key={title}>
              <button type="button" class={isDone ? 'to-do done' : 'to-do'} onClick={() => goTo(id)}>
                <b>
                  {isDone && <span aria-hidden="true">✓ </span>}
                  {title}
                </b>{' '}
                <span class="many">{says}</span>
              </button>
            </li>
          ))}
        </ol>
        <Refits />
        <AllOff />
      </div>
      <div class="thumb">
        <button
          type="button"
          class="main"
          onClick={() => {
            view.value = 'walk';
          }}
        >
          Back to where you were
        </button>
      </div>
    </div>
  );
}
