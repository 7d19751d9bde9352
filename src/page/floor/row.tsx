import { useEffect, useId, useRef, useState } from 'preact/hooks';
import './row.css';
import type { Issue, Result } from '../../issue.ts';
import type { Rows } from '../../refit/rows.ts';
import { sentence } from '../../words.ts';
import { engine } from '../engine/client.ts';
import type { Refitted } from '../engine/refit.ts';
import { readBack } from '../fields/read-back.ts';
import { look } from '../state/answer.ts';
import { base, chosen, tree } from '../state/job.ts';
import { Words } from './reading.tsx';
import { lastRow } from './refits.ts';
import { Found } from './row-found.tsx';
import { draft, progress, said, takeRefit, view } from './state.ts';
import { tape } from './words.ts';

const ask = () => ({ base: base.value, tree: tree.value, chosen: look.value?.chosen ?? chosen.value });

function Wrong({ issues, id }: { issues: readonly Issue[]; id: string }) {
  return (
    <div id={id} class={issues.length > 0 ? 'wrong' : ''} role="status">
      {issues.map(({ says, hint }) => (
        <p key={says}>
          <Words>{sentence(says)}</Words>{' '}
          {hint && (
            <>
              <b>Try:</b> <Words>{sentence(hint)}</Words>
            </>
          )}
        </p>
      ))}
    </div>
  );
}

interface ReadingProps {
  side: 'left' | 'right';
  label: string;
  says?: string;
  issues: readonly Issue[];
}

function Reading({ side, label, says, issues }: ReadingProps) {
  const id = useId();
  const text = progress.value?.draft?.[side] ?? '';
  const back = readBack(text, look.value?.job.units);
  const own = issues.filter(({ path }) => path[0] === side);
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <input
        id={id}
        type="text"
        value={text}
        autocomplete="off"
        autocapitalize="off"
        spellcheck={false}
        aria-invalid={own.length > 0 || undefined}
        aria-describedby={`${id}-says ${id}-wrong`}
        onInput={({ currentTarget: { value } }) => draft({ [side]: value })}
      />
      <div id={`${id}-says`} class="says">
        {back && !back.wrong && <output for={id}>{back.says}</output>}
        {says && <p>{says}</p>}
      </div>
      <Wrong id={`${id}-wrong`} issues={own} />
    </div>
  );
}

const leave = (): void => {
  draft(undefined);
  view.value = 'walk';
};

function Asked({ rows }: { rows: Rows }) {
  const id = useId();
  const [answer, setAnswer] = useState<Result<Refitted>>();
  const call = useRef(0);
  const kept = progress.value?.draft;
  const usual = look.value ? lastRow(look.value.schedule, progress.value?.ticks ?? [], rows.ends) : 1;
  const row = Math.min(kept?.row ?? usual, rows.ends.length - 1);
  const typed = `${row} ${kept?.left} ${kept?.right}`;
  useEffect(() => {
    if (!kept) draft({ row });
  }, []);
  useEffect(() => {
    call.current += 1;
    setAnswer(undefined);
  }, [typed]);
  const work = async (over?: number): Promise<void> => {
    call.current += 1;
    const own = call.current;
    const { left = '', right = '' } = progress.value?.draft ?? {};
    const before = (progress.value?.refits ?? []).map(({ entry }) => entry);
    const found = await engine.refit(ask(), { row, left, right, before, ...(over === undefined ? {} : { over }) });
    if (call.current !== own) return;
    setAnswer(found);
    said.value = found.ok ? found.value.says.join(' ') : found.issues.map(({ says }) => says).join(' ');
    requestAnimationFrame(() => {
      const place = document.querySelector<HTMLElement>('#floor-found, .row-off [aria-invalid]');
      place?.focus({ preventScroll: true });
      place?.scrollIntoView({ block: found.ok ? 'start' : 'center' });
    });
  };
  const issues = answer && !answer.ok ? answer.issues : [];
  const apart = issues.filter(({ path }) => path[0] !== 'left' && path[0] !== 'right');
  const refit = answer?.ok ? answer.value : undefined;
  const changes = refit && (Math.abs(refit.entry.change.left) >= 1e-6 || Math.abs(refit.entry.change.right) >= 1e-6);
  return (
    <form
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        if (!refit) void work();
      }}
    >
      <div class="scrolls">
        <p>
          Measure from {rows.from} to where the last painted row truly ends. What is left is then divided evenly, so
          that the last row of all lands where it should.
        </p>
        <div class="field">
          <label for={id}>The last row that is painted, counted from the near end</label>
          <select id={id} value={row} onChange={({ currentTarget }) => draft({ row: Number(currentTarget.value) })}>
            {rows.ends.slice(0, -1).map((end, n) => (
              <option key={end} value={n + 1}>
                Row {n + 1}, by the layout to {tape(end)}
              </option>
            ))}
          </select>
        </div>
        <Reading
          side="left"
          label="Where it truly ends, on the left edge"
          says={`Write it as the tape reads, such as ${tape(rows.ends[row - 1]!)}.`}
          issues={issues}
        />
        <Reading
          side="right"
          label="The same on the right edge"
          says="Leave it empty where the row lies straight."
          issues={issues}
        />
        <Wrong id={`${id}-wrong`} issues={apart} />
        {refit && <Found refit={refit} onOver={(over) => void work(over)} />}
      </div>
      <div class="thumb">
        <div class="does">
          <button type="button" onClick={leave}>
            Not now
          </button>
          {refit ? (
            <button type="button" class="main" key="take" onClick={changes ? () => takeRefit(refit) : leave}>
              {changes ? 'Take the new marks' : 'Back to the marks'}
            </button>
          ) : (
            <button type="submit" class="main" key="work">
              Work out the new marks
            </button>
          )}
        </div>
      </div>
    </form>
  );
}

/** `My row is off`: asks for the reading and fits again what is left. */
export function RowOff() {
  const [rows, setRows] = useState<Result<Rows>>();
  useEffect(() => {
    let isHere = true;
    void engine.rows(ask()).then((found) => isHere && setRows(found));
    return () => {
      isHere = false;
    };
  }, []);
  return (
    <div class="row-off">
      <h1 tabindex={-1}>My row is off</h1>
      {rows?.ok && <Asked rows={rows.value} />}
      {rows && !rows.ok && (
        <div class="scrolls">
          <p>There is nothing to fit again here.</p>
          <Wrong id="floor-no-rows" issues={rows.issues} />
        </div>
      )}
      {!rows?.ok && (
        <div class="thumb">
          <button type="button" class="main" onClick={leave}>
            Back to the marks
          </button>
        </div>
      )}
    </div>
  );
}
