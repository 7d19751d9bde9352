import { Line, Wrong } from '../../fields/field.tsx';
import { look } from '../../state/answer.ts';
import { say, tree } from '../../state/job.ts';
import { type Path, valueAt } from '../../state/tree.ts';

const MOST = 8;

/** The tins that the shop has, each with its price. */
export function Tins({ path }: { path: Path }) {
  const tins = valueAt(tree.value, path);
  const rows = Array.isArray(tins) ? tins : [];
  const isInch = look.value?.job.system !== 'metric';
  return (
    <details open={rows.length > 0}>
      <summary>The tins your shop has, and what they cost</summary>
      <p class="usual">
        With these, the cheapest tins that hold enough are found. Without them, only volumes are told.
      </p>
      {rows.map((_, n) => (
        <div class="tin" key={n}>
          <Line path={[...path, n, 'size']} label={`Tin ${n + 1} holds`} example={isInch ? '1 quart' : '750 ml'} />
          <Line path={[...path, n, 'price']} label="Its price" example="24" />
          <button type="button" onClick={() => say([...path, n], undefined)}>
            Leave tin {n + 1} out
          </button>
        </div>
      ))}
      {rows.length < MOST && (
        <button
          type="button"
          onClick={() => say([...path, rows.length], { size: isInch ? '1 quart' : '750 ml', price: '24' })}
        >
          Add a tin
        </button>
      )}
      {rows.length === 0 && <Wrong path={path} />}
    </details>
  );
}
