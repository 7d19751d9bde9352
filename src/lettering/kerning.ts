/** Kinds of lookup: pairs, and a pointer to one that lies far off. */
const PAIRS = 2;
const EXTENSION = 9;

/** Reads big-endian numbers of a table; beyond its end it throws a RangeError. */
class Table {
  readonly #view: DataView;

  constructor(bytes: Uint8Array) {
    this.#view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  }

  count = (at: number): number => this.#view.getUint16(at);
  number = (at: number): number => this.#view.getInt16(at);
  far = (at: number): number => this.#view.getUint32(at);
  tag = (at: number): string => String.fromCharCode(...[0, 1, 2, 3].map((n) => this.#view.getUint8(at + n)));
  list = (at: number): number[] => Array.from({ length: this.count(at) }, (_, n) => this.count(at + 2 + 2 * n));
}

/** Place of a glyph in a coverage table, or -1. */
function covered(table: Table, at: number, glyph: number): number {
  if (table.count(at) === 1) return table.list(at + 2).indexOf(glyph);
  for (let n = 0; n < table.count(at + 2); n++) {
    const range = at + 4 + 6 * n;
    const first = table.count(range);
    if (glyph >= first && glyph <= table.count(range + 2)) return table.count(range + 4) + glyph - first;
  }
  return -1;
}

function classOf(table: Table, at: number, glyph: number): number {
  if (table.count(at) === 1) {
    const n = glyph - table.count(at + 2);
    return n >= 0 && n < table.count(at + 4) ? table.count(at + 6 + 2 * n) : 0;
  }
  for (let n = 0; n < table.count(at + 2); n++) {
    const range = at + 4 + 6 * n;
    if (glyph >= table.count(range) && glyph <= table.count(range + 2)) return table.count(range + 4);
  }
  return 0;
}

const bits = (format: number): number => (format === 0 ? 0 : (format & 1) + bits(format >> 1));

/** How the advance of the first glyph changes, by a value record of this format. */
const ADVANCE = 4;
const advanceIn = (table: Table, at: number, format: number): number =>
  format & ADVANCE ? table.number(at + 2 * bits(format & (ADVANCE - 1))) : 0;

/** What one pair table says of a pair; nothing where the pair is not in it. */
function adjustment(table: Table, at: number, left: number, right: number): number | undefined {
  const place = covered(table, at + table.count(at + 2), left);
  if (place < 0) return undefined;
  const [first, second] = [table.count(at + 4), table.count(at + 6)];
  const size = 2 * (bits(first) + bits(second));
  if (table.count(at) === 1) {
    const pairs = at + table.count(at + 10 + 2 * place);
    for (let n = 0; n < table.count(pairs); n++) {
      const pair = pairs + 2 + n * (2 + size);
      if (table.count(pair) === right) return advanceIn(table, pair + 2, first);
    }
    return undefined;
  }
  const row = classOf(table, at + table.count(at + 8), left);
  const column = classOf(table, at + table.count(at + 10), right);
  const columns = table.count(at + 14);
  if (row >= table.count(at + 12) || column >= columns) return undefined;
  return advanceIn(table, at + 16 + size * (row * columns + column), first);
}

/** The default language of a script, where the font has it. */
function languageOf(table: Table, script: string): number | undefined {
  const scripts = table.count(4);
  for (let n = 0; n < table.count(scripts); n++) {
    const record = scripts + 2 + 6 * n;
    if (table.tag(record) !== script) continue;
    const at = scripts + table.count(record + 4);
    const language = table.count(at);
    return language === 0 ? undefined : at + language;
  }
  return undefined;
}

/** The pair tables of each lookup of kerning, in the order they apply. */
function lookups(table: Table, script: string): number[][] {
  const language = languageOf(table, script) ?? languageOf(table, 'DFLT') ?? languageOf(table, 'latn');
  if (language === undefined) return [];
  const [features, list] = [table.count(6), table.count(8)];
  const wanted = table
    .list(language + 4)
    .map((n) => features + 2 + 6 * n)
    .filter((record) => table.tag(record) === 'kern')
    .flatMap((record) => table.list(features + table.count(record + 4) + 2));
  return [...new Set(wanted)]
    .sort((a, b) => a - b)
    .map((n) => {
      const at = list + table.count(list + 2 + 2 * n);
      const parts = table.list(at + 4).map((offset) => at + offset);
      const type = table.count(at);
      if (type !== EXTENSION) return type === PAIRS ? parts : [];
      return parts.filter((part) => table.count(part + 2) === PAIRS).map((part) => part + table.far(part + 4));
    });
}

/**
 * Kerning of pairs by a font's GPOS table, in font units: every lookup of the feature `kern` adds what the first of its tables that knows the pair says
 * (OpenType 1.9, "GPOS: Glyph Positioning Table", pair adjustment). Nothing where the table has no kerning.
 * @param script such as `latn`
 */
export function readKerning(gpos: Uint8Array, script: string): ((left: number, right: number) => number) | undefined {
  const table = new Table(gpos);
  const found = lookups(table, script).filter((parts) => parts.length > 0);
  if (found.length === 0) return undefined;
  return (left, right) => {
    let sum = 0;
    for (const parts of found) {
      for (const at of parts) {
        const by = adjustment(table, at, left, right);
        if (by === undefined) continue;
        sum += by;
        break;
      }
    }
    return sum;
  };
}
