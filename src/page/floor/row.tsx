import { useEffect, useId, useRef, useState } from 'preact/hooks';
import './row.css';
import type { Issue, Result } from '../../issue.ts';
import type { Rows } from '../../refit/rows.ts';
import { engine } from '../engine/client.ts';
import type { Refitted } from '../engine/refit.ts';
import { readBack } from '../fields/read-back.ts';
import { look } from '../state/answer.ts';
import { base, chosen, tree } from '../state/job.ts';
import { Words } from './reading.tsx';
import { lastRow } from './refits.ts';
import { draft, progress, said, takeRefit, view } from './state.ts';
import { sentence, tape } from './words.ts';

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

/** The marks that move, with what they read before: one column where every line has the same. */
function Moved({ refit }: { refit: Refitted }) {
  const [first] = refit.lines;
  const reads = (at: number) => refit.lines.map(({ marks }) => marks[at]?.reads);
  const isStraight = (first?.marks ?? []).every((_, at) => new Set(reads(at)).size === 1);
  const inOrder = ['left-edge', 'axis', 'right-edge'].flatMap((name) =>
    refit.lines.filter((line) => line.name === name),
  );
  const lines = isStraight ? inOrder.slice(0, 1) : inOrder;
  const rows = (first?.marks ?? []).flatMap((mark, at) =>
    reads(at).some((one) => one !== mark.before) ? [{ mark, at }] : [],
  );
  if (!first || rows.length === 0) return null;
  const heads: Record<string, string> = { axis: 'Axis', 'left-edge': 'Left', 'right-edge': 'Right' };
  return (
    <table>
      <caption>
        {isStraight ? 'The new marks of the axis and of both edges' : 'The new marks of the axis and of each edge'}
      </caption>
      <thead>
        <tr>
          <th scope="col">No.</th>
          <th scope="col">Was</th>
          {lines.map(({ name }) => (
            <th scope="col" key={name}>
              {isStraight ? 'Now' : heads[name]}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ mark, at }) => (
          <tr key={mark.number}>
            <th scope="row">{mark.number}</th>
            <td>
              <Words>{tape(mark.before)}</Words>
            </td>
            {lines.map(({ name, marks }) => (
              <td key={name} class="now">
                <Words>{tape(marks[at]!.reads)}</Words>
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

const rowsLeft = (many: number): string => (many === 1 ? 'The one row that is left' : `All ${many} rows that are left`);

function Over({ refit, onOver }: { refit: Refitted; onOver: (rows: number) => void }) {
  const id = useId();
  const { remaining, fewest, entry } = refit;
  const others = Array.from({ length: remaining - 1 }, (_, n) => n + 1);
  return (
    <div class="field">
      <label for={id}>Spread the difference over</label>
      <select id={id} value={entry.over} onChange={({ currentTarget }) => onOver(Number(currentTarget.value))}>
        <option value={remaining}>{rowsLeft(remaining)}</option>
        {others.map((many) => (
          <option key={many} value={many}>
            {many === 1 ? 'The next row alone' : `The next ${many} rows`}
            {many === fewest ? ': the fewest that hide it' : ''}
          </option>
        ))}
      </select>
    </div>
  );
}

function Found({ refit, onOver }: { refit: Refitted; onOver: (rows: number) => void }) {
  const { entry, says, fewest, remaining } = refit;
  const stays = Math.abs(entry.change.left) < 1e-6 && Math.abs(entry.change.right) < 1e-6;
  return (
    <section class="found" aria-labelledby="floor-found">
      <h2 id="floor-found" tabindex={-1}>
        {entry.shows ? 'An eye would see this' : stays ? 'All is well' : 'An eye will not see this'}
      </h2>
      {says.map((line) => (
        <p key={line}>
          <Words>{line}</Words>
        </p>
      ))}
      {!stays && <Over refit={refit} onOver={onOver} />}
      {!stays && fewest !== undefined && fewest !== entry.over && fewest !== remaining && (
        <button type="button" class="tall" onClick={() => onOver(fewest)}>
          Spread it over {fewest === 1 ? 'the next row alone' : `the next ${fewest} rows`}: the fewest that hide it
        </button>
      )}
      <Moved refit={refit} />
      {!stays && (
        <p>
          Rub out the old marks that move, so that nobody takes one for the other. Sheets stay as they are cut: centre
          each between its marks.
        </p>
      )}
    </section>
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
