/** Whole micrometres, the finest step written. Halves go away from zero, so that mirror images stay mirror images. */
export const toMicrons = (mm: number): number => (mm < 0 ? -Math.round(-mm * 1000) : Math.round(mm * 1000));

/** Whole micrometres as millimetres: no trailing zeros, no trailing point, no minus zero. */
export function formatMicrons(microns: number): string {
  if (microns < 0) return `-${formatMicrons(-microns)}`;
  const whole = Math.floor(microns / 1000);
  const rest = microns - whole * 1000;
  if (rest === 0) return `${whole}`;
  if (rest % 100 === 0) return `${whole}.${rest / 100}`;
  if (rest % 10 === 0) return rest < 100 ? `${whole}.0${rest / 10}` : `${whole}.${rest / 10}`;
  return rest < 10 ? `${whole}.00${rest}` : rest < 100 ? `${whole}.0${rest}` : `${whole}.${rest}`;
}

/** The same without a nought before the point, as SVG lets numbers be written: `.5`, `-.5`. */
export const shortMicrons = (microns: number): string => withoutNought(formatMicrons(microns));

const withoutNought = (number: string): string => number.replace(/^(-?)0\./, '$1.');

/** Millimetres to 1 µm, as every written file shows them. The number must be finite. */
export function formatMm(mm: number): string {
  if (!Number.isFinite(mm)) throw new RangeError(`cannot write ${mm} as a length`);
  return formatMicrons(toMicrons(mm));
}

/** The same without a nought before the point, for attributes of SVG. */
export const shortMm = (mm: number): string => withoutNought(formatMm(mm));
