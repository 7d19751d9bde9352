import { numeralOf, SMALLER, widthOf } from './numeral.ts';

/** A reading of the tape as large as there is room for. */
export function Large({ reading }: { reading: string }) {
  const set = numeralOf(reading);
  return (
    <p class="large" style={`--wide:${widthOf(set).toFixed(2)};--fraction:${SMALLER.fraction};--unit:${SMALLER.unit}`}>
      <span class="unseen">{reading}</span>
      <span class="figures" aria-hidden="true">
        {set.whole}
        {set.top && (
          <span class="fraction">
            <span>{set.top}</span>
            <span>{set.bottom}</span>
          </span>
        )}
        <span class={set.unit === '″' ? 'inch' : 'unit'}>{set.unit}</span>
      </span>
    </p>
  );
}

/** Words in which fractions are set as such. */
export function Words({ children }: { children: string }) {
  const parts = children
    .replace(/(\d)"/g, '$1″')
    .replace(/(\d)'/g, '$1′')
    .split(/((?<![\d/])\d+\/\d+(?![\d/])″?)/);
  return <>{parts.map((part, n) => (n % 2 ? <span class="f">{part}</span> : part))}</>;
}
