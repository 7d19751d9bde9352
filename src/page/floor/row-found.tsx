import { useId } from 'preact/hooks';
import type { Refitted } from '../engine/refit.ts';
import { look } from '../state/answer.ts';
import { Words } from './reading.tsx';
import { tape } from './words.ts';

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

const hasBorder = (): boolean => look.value?.schedule.lines.some(({ name }) => /^(inner-)?border-/.test(name)) ?? false;

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

/** What a re-fit comes to, and over how many rows it is spread. */
export function Found({ refit, onOver }: { refit: Refitted; onOver: (rows: number) => void }) {
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
      {!stays && hasBorder() && (
        <p>
          The marks of the border stay where they are, beside the rows too: a border is not fitted again. It still ends
          where it should; a repeat of it may stand a little before or behind the row beside it.
        </p>
      )}
      {!stays && <p>Once you take them, the new marks can be saved and printed: All lines, at its end.</p>}
    </section>
  );
}
