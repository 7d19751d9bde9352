import { isMade, made } from '../../state/answer.ts';

/** The name, then what is needed and what to buy, then how that comes about. */
function chiefFirst<T>(row: readonly T[], needed: number): T[] {
  return needed < 1 ? [...row] : [row[0]!, ...row.slice(needed), ...row.slice(1, needed)];
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
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a table that may be wider than the card is moved by the arrow keys */}
      <section class="wide-table" tabIndex={0} aria-label="Paint to buy">
        <table class="told-table">
          <thead>
            <tr>
              {paint.head.map((name) => (
                <th scope="col" key={name}>
                  {name}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
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
          </tbody>
        </table>
      </section>
      {paint.says.map((line) => (
        <p key={line}>{line}</p>
      ))}
      <h3>Day by day</h3>
      <p>{paint.waits}</p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a table that may be wider than the card is moved by the arrow keys */}
      <section class="wide-table" tabIndex={0} aria-label="Day by day">
        <table class="told-table days">
          <thead>
            <tr>
              {paint.daysHead.map((name) => (
                <th scope="col" key={name}>
                  {name}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {paint.days.map((row, n) => (
              <tr key={n}>
                {row.map((cell, at) => (
                  <td key={paint.daysHead[at]}>{cell}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <p>{paint.daysEnd}</p>
    </div>
  );
}
