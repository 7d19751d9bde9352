/** One value of a colour function: a number with what stands behind it. */
export interface Value {
  number: number;
  /** `%`, a unit of angle, or nothing. */
  unit: string;
}

export interface Call {
  /** In small letters. */
  name: string;
  values: Value[];
  /** What stands behind a slash, or fourth behind commas. */
  opacity?: Value;
}

const VALUE = /^([+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:e[+-]?\d+)?)(%|deg|grad|rad|turn|)$/;

function readValue(word: string): Value | undefined {
  // A channel that is left out is 0 where nothing is mixed; CSS Color 4, 4.4.
  if (word === 'none') return { number: 0, unit: '' };
  const [, digits, unit] = VALUE.exec(word) ?? [];
  if (digits === undefined || unit === undefined) return undefined;
  const number = Number(digits);
  return Number.isFinite(number) ? { number, unit } : undefined;
}

/** A name and values in brackets, by blanks or by commas, as CSS Color 4 writes colours; nothing where it is not that. */
export function readCall(text: string): Call | undefined {
  const [, name, inside] = /^([a-z]+)\(([^()]*)\)$/.exec(text.trim().toLowerCase()) ?? [];
  if (name === undefined || inside === undefined) return undefined;
  const [before, after, ...more] = inside.split('/');
  if (before === undefined || more.length > 0) return undefined;
  const words = before.includes(',') ? before.split(',') : before.trim().split(/\s+/);
  if (after !== undefined) words.push(after);
  const values = words.map((word) => readValue(word.trim()));
  if (values.some((value) => value === undefined)) return undefined;
  const [one, two, three, opacity, ...rest] = values as Value[];
  if (one === undefined || two === undefined || three === undefined || rest.length > 0) return undefined;
  return { name, values: [one, two, three], ...(opacity === undefined ? {} : { opacity }) };
}
