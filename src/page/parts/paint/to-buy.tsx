import type { ComponentChildren } from 'preact';
import { isMade, made } from '../../state/answer.ts';

/** The name, then what is needed and what to buy, then how that comes about. */
function chiefFirst<T>(row: readonly T[], needed: number): T[] {
  return needed < 1 ? [...row] : [row[0]!, ...row.slice(needed), ...row.slice(1, needed)];
}

/** A table that may be wider than the card, and is then moved by the arrow keys. */
function WideTable({
  label,
  head,
  kind = '',
  children,
}: {
  label: string;
  head: readonly string[];
  kind?: string;
  children: ComponentChildren;
}) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: moved by the arrow keys
    <section class="wide-table" tabIndex={0} aria-label={label}>
      <table class={`told-table ${kind}`.trim()}>
        <thead>
          <tr>
            {head.map((name) => (
              <th scope="col" key={name}>
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>{children}</tbody>
      </table>
    </section>
  );
}

/** How much of each paint, what to buy, and the days it takes. */
export function ToBuy() {
  const told = made.value?.told?.paint;
  if (!told) return null;
  const needed = told.head.findIndex((name) => name.toLowerCase() === 'needed');
  const paint = {
    ...told,
    head: chiefFirst(told.head, needed),
    rows: told.rows.map((row) => chiefFirst(row, needed)),
  };
  return (
    <div class={isMade.value ? 'to-buy' : 'to-buy stale'}>
      <WideTable label="Paint to buy" head={paint.head}>
        {paint.rows.map((row, n) => (
          <tr key={row.join('|')}>
            <th scope="row">
              {row[0] && <span class="swatch" style={{ background: paint.swatches[n] }} />}
              {row[0]}
            </th>
            {row.slice(1).map((cell, at) => (
              <td key={paint.head[at + 1]}>{cell}</td>
            ))}
          </tr>
        ))}
      </WideTable>
      {paint.says.map((line) => (
        <p key={line}>{line}</p>
      ))}
      <h3>Day by day</h3>
      <p>{paint.waits}</p>
      <WideTable label="Day by day" kind="days" head={paint.daysHead}>
        {paint.days.map((row, n) => (
          <tr key={n}>
            {row.map((cell, at) => (
              <td key={paint.daysHead[at]}>{cell}</td>
            ))}
          </tr>
        ))}
      </WideTable>
      <p>{paint.daysEnd}</p>
    </div>
  );
}
