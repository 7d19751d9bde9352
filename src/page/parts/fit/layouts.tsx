import { effect, signal } from '@preact/signals';
import { upper } from '../../../words.ts';
import { isDrawn, issues, look } from '../../state/answer.ts';
import { at, choose, chosen, endStep, sayAll, steps, tree } from '../../state/job.ts';
import { textAt } from '../../state/tree.ts';
import { Drawn } from './drawn.tsx';
import { fingerprint, isKept, keepChanges, type Listed, letGo } from './keep.ts';
import { differences, numbersOf, type Row } from './numbers.ts';

/** The layout that lies beside the chosen one, by its place in the list. */
const beside = signal<number | undefined>(undefined);
/** The layout that was kept, until the list with it is there. */
const keeping = signal<string | undefined>(undefined);

/** What was kept is the first of the next list, or is found in it. */
effect(() => {
  const seen = look.value;
  const wanted = keeping.value;
  if (!seen || wanted === undefined || !isDrawn.value || !isKept(tree.peek())) return;
  const found = seen.layouts.findIndex((one) => fingerprint(one) === wanted);
  keeping.value = undefined;
  if (found > 0 && found !== chosen.peek()) choose(found);
  // The card has moved to the head of the list, and the keyboard goes with it.
  requestAnimationFrame(() => {
    if (document.activeElement === document.body) document.querySelector<HTMLElement>('.cards .keep')?.focus();
  });
});

/** Writes the numbers of a layout into the job, so that it stays the first. */
export function keep(rank: number): void {
  const seen = look.value;
  const listed = seen?.layouts[rank];
  if (!seen || !listed) return;
  endStep();
  beside.value = undefined;
  keeping.value = fingerprint(listed);
  if (chosen.value !== 0) choose(0);
  sayAll(keepChanges(tree.value, listed, seen.job), 'keeping this layout');
}

function release(): void {
  endStep();
  const history = steps.value
    .slice(0, at.value + 1)
    .map((step) => step.tree)
    .reverse();
  sayAll(letGo(tree.value, history), 'letting the layout go');
}

function Numbers({ rows }: { rows: readonly Row[] }) {
  return (
    <dl class="numbers">
      {rows.map(({ key, label, says }) => (
        <div key={key}>
          <dt>{label}</dt>
          <dd>{says}</dd>
        </div>
      ))}
    </dl>
  );
}

const nameOf = (rank: number): string => (rank === 0 ? 'The best' : `Number ${rank + 1}`);

function Card({ listed, rank }: { listed: Listed; rank: number }) {
  const seen = look.value!;
  const isChosen = seen.chosen === rank;
  const kept = rank === 0 && isKept(tree.value);
  const rows = numbersOf(listed, seen.job);
  return (
    <li class={isChosen ? 'chosen' : ''} aria-current={isChosen ? 'true' : undefined}>
      <h4>
        {kept ? 'The one you keep' : nameOf(rank)}
        {isChosen && <span class="flag"> is drawn in the plan</span>}
      </h4>
      <Drawn rank={rank} says={listed.says} />
      <Numbers rows={rows} />
      <details open={isChosen || undefined}>
        <summary>Why it is here</summary>
        <p>{upper(listed.says)}.</p>
      </details>
      <div class="do">
        <button
          type="button"
          aria-disabled={isChosen || undefined}
          onClick={() => {
            if (!isChosen) choose(rank);
          }}
        >
          {isChosen ? 'Chosen' : 'Choose this one'}
        </button>
        {!isChosen && (
          <button type="button" onClick={() => lay(rank)}>
            Lay beside the chosen one
          </button>
        )}
        {kept ? (
          <button type="button" class="keep" onClick={release}>
            Let it go again
          </button>
        ) : (
          <button type="button" class="keep" onClick={() => keep(rank)}>
            Keep this one
          </button>
        )}
      </div>
    </li>
  );
}

function lay(rank: number): void {
  beside.value = rank;
  requestAnimationFrame(() => {
    const found = document.getElementById('beside');
    found?.scrollIntoView({ block: 'nearest' });
    found?.focus({ preventScroll: true });
  });
}

/** Two layouts side by side, and every number in which they differ. */
function Beside() {
  const seen = look.value!;
  const other = beside.value;
  const [a, b] = [seen.layouts[seen.chosen], other === undefined ? undefined : seen.layouts[other]];
  if (!a || !b || other === undefined || other === seen.chosen) return null;
  const rows = differences(numbersOf(a, seen.job), numbersOf(b, seen.job));
  const names = [nameOf(seen.chosen), nameOf(other)] as const;
  return (
    <section class="beside" id="beside" tabindex={-1} aria-label={`${names[0]} and ${names[1]} side by side`}>
      <div class="both">
        <Drawn rank={seen.chosen} says={a.says} />
        <Drawn rank={other} says={b.says} />
      </div>
      <table>
        <caption>What differs</caption>
        <thead>
          <tr>
            <td />
            <th scope="col">{names[0]}, chosen</th>
            <th scope="col">{names[1]}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.label}>
              <th scope="row">{row.label}</th>
              <td>{row.a}</td>
              <td>{row.b}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <div class="do">
        <button type="button" onClick={() => choose(other)}>
          Choose {names[1].toLowerCase()} instead
        </button>
        <button
          type="button"
          onClick={() => {
            beside.value = undefined;
          }}
        >
          Put it away
        </button>
      </div>
    </section>
  );
}

/** So many lie open; the rest on asking. */
const FIRST = 3;

/** The layouts that land, as cards, the best first. */
export function Layouts() {
  const seen = look.value;
  // Those of another kind of work say nothing of this one.
  if (!seen || seen.job.surface !== textAt(tree.value, ['surface'])) return null;
  if (issues.value.some(({ code }) => code.startsWith('fit/'))) return null;
  const { layouts, searched } = seen;
  const cards = layouts.map((listed, rank) => <Card key={fingerprint(listed)} listed={listed} rank={rank} />);
  const open = Math.max(FIRST, seen.chosen + 1);
  return (
    <div class={isDrawn.value ? 'layouts' : 'layouts stale'}>
      {issues.value.length > 0 && <p class="plainly">What landed before the last change:</p>}
      <p class="plainly">
        {searched.toLocaleString('en')} {searched === 1 ? 'combination' : 'combinations'} looked at;{' '}
        {layouts.length === 1 ? 'this is the only kind that lands' : 'none lands better than the first'}.
        {isKept(tree.value) && ' The layout is kept: its counts and sizes stand in the job, whatever else you change.'}
      </p>
      <Beside />
      <ol class="cards">{cards.slice(0, open)}</ol>
      {cards.length > open && (
        <details class="more">
          <summary>
            {cards.length - open} more that {cards.length - open === 1 ? 'lands' : 'land'}
          </summary>
          <ol class="cards" start={open + 1}>
            {cards.slice(open)}
          </ol>
        </details>
      )}
    </div>
  );
}
