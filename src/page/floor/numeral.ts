/** A reading of the tape in the pieces it is set from. */
export interface Numeral {
  whole: string;
  top?: string;
  bottom?: string;
  unit: string;
}

const INCH = '″';

/** Takes `84 3/8"`, `3/8"`, `1504 mm` or `-1/16"` apart. */
export function numeralOf(reading: string): Numeral {
  const [, sign = '', whole = '', top, bottom, unit = ''] =
    /^(-?)(?:(\d+(?:\.\d+)?)(?!\/|\d))?\s*(?:(\d+)\/(\d+))?\s*(.*)$/.exec(reading) ?? [];
  const set = { whole: `${sign && '−'}${whole}`, unit: unit === '"' ? INCH : unit };
  return top && bottom ? { ...set, top, bottom } : set;
}

/** The figures of a fraction beside those of the whole number, and of a unit that is written out. */
export const SMALLER = { fraction: 0.52, unit: 0.32 };

/** How wide the figures of Barlow Bold are, thousandths of its height. */
export const WIDE: Readonly<Record<string, number>> = {
  0: 570,
  1: 354,
  2: 560,
  3: 540,
  4: 605,
  5: 539,
  6: 537,
  7: 496,
  8: 541,
  9: 531,
  '.': 270,
  c: 537,
  m: 835,
};
const WIDEST = 605;

const widthIn = (text: string): number => [...text].reduce((sum, one) => sum + (WIDE[one] ?? WIDEST) / 1000, 0);

/** What stands between the whole number and its fraction or unit, in heights. */
export const BETWEEN = { fraction: 0.12, unit: 0.25, inch: 0.02 };

/** How wide a reading comes out, in heights of its type. */
export function widthOf({ whole, top, bottom, unit }: Numeral): number {
  const fraction = top && bottom ? BETWEEN.fraction + SMALLER.fraction * Math.max(widthIn(top), widthIn(bottom)) : 0;
  const written = unit === INCH ? BETWEEN.inch + 0.42 : SMALLER.unit * (BETWEEN.unit + widthIn(unit));
  return widthIn(whole) + fraction + written;
}
