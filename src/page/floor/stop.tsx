import { sentence, upper } from '../../words.ts';
import { Large, Words } from './reading.tsx';
import { following, progress, walk } from './state.ts';
import { Strip } from './strip.tsx';
import { isOff } from './ticks.ts';
import type { Stop } from './walk.ts';
import { sayStop, spoken, tape } from './words.ts';

type Of<Kind extends Stop['kind']> = Extract<Stop, { kind: Kind }>;

function MarkStop({ stop }: { stop: Of<'mark'> }) {
  const { line, mark, at } = stop;
  const parts = (line.spans ?? []).filter(({ to }) => to === mark.number);
  return (
    <>
      <h1 tabindex={-1}>
        {upper(spoken(line))}, mark {at + 1} of {line.marks.length}
      </h1>
      <Large reading={tape(mark.reads)} />
      <div class="about">
        <p class="use">{sentence(mark.for)}</p>
        {mark.refit !== undefined && (
          <p class="moved">
            Moved by re-fit {mark.refit}: it was <Words>{tape(mark.before!)}</Words>. Rub the old mark out.
          </p>
        )}
        <p>From {line.datum}, without moving the tape.</p>
        {parts.map(({ from, total }) => (
          <p key={from} class="part-total">
            To prove it: from {from === 0 ? 'where the tape is held' : `mark ${from}`} to here is{' '}
            <b>
              <Words>{tape(total)}</Words>
            </b>
            . Where that is out by more than a mark of the tape at either end, pull the marks between again.
          </p>
        ))}
        <Next />
        <Strip line={line} at={at} walk={walk.value} ticks={progress.value?.ticks ?? []} />
      </div>
    </>
  );
}

function LineStop({ stop: { line } }: { stop: Of<'line'> }) {
  const many = line.marks.length;
  return (
    <>
      <h1 tabindex={-1}>{upper(spoken(line))}</h1>
      <div class="about lead">
        <p class="use">Hold the tape at {line.datum}.</p>
        <p>
          {many === 1
            ? 'One mark is made from there.'
            : `Leave it there for all ${many} marks; never add one mark to the next.`}
        </p>
        {line.refits !== undefined && <p class="moved">Some of its marks were moved by a re-fit.</p>}
        <p>
          <Words>{line.says}</Words>
        </p>
        <Next />
      </div>
    </>
  );
}

function CheckStop({ stop }: { stop: Of<'check'> }) {
  const { check } = stop;
  const wrong = isOff(progress.value?.ticks ?? [], stop);
  const all = walk.value.filter(({ kind }) => kind === 'check').length;
  return (
    <>
      <h1 tabindex={-1}>
        Is it square? Check {stop.at + 1} of {all}
      </h1>
      <Large reading={tape(check.reads)} />
      <div class="about">
        <p class="use">
          <Words>{sentence(check.says)}</Words>
        </p>
        {wrong ? (
          <p class="moved" role="status">
            <Words>{sentence(check.otherwise)}</Words>
          </p>
        ) : (
          <Next />
        )}
      </div>
    </>
  );
}

function Next() {
  const next = following.value;
  return (
    <p class="next">
      {next ? (
        <>
          Next: <Words>{sayStop(next)}</Words>.
        </>
      ) : (
        'This is the last.'
      )}
    </p>
  );
}

/** What is to be done now. */
export function StopSaid({ stop }: { stop: Stop }) {
  if (stop.kind === 'mark') return <MarkStop stop={stop} />;
  if (stop.kind === 'line') return <LineStop stop={stop} />;
  if (stop.kind === 'check') return <CheckStop stop={stop} />;
  return (
    <>
      <h1 tabindex={-1}>{stop.title}</h1>
      <div class="about lead">
        <p class="use">{stop.says}</p>
        <Next />
      </div>
    </>
  );
}
