import type { Ink } from './ink.ts';

/** A piece of a page, mm. */
export interface Atom {
  height: number;
  /** Space above it; none at the head of a page. */
  space: number;
  /** Stays on the page of what follows it. */
  keep?: boolean;
  /** The least of it that may stand at the foot of a page: its height, unless it can be split. */
  least: number;
  draw(ink: Ink, x: number, top: number): void;
  /** What of it stands in so much room, and the rest; nothing where it does not go apart there. */
  split?(room: number): [Atom, Atom] | undefined;
  /** The same made smaller for a little less room. */
  fit?(room: number): Atom | undefined;
}

/** Something that is never split. */
export const solid = (
  height: number,
  space: number,
  draw: Atom['draw'],
  more: Pick<Atom, 'keep' | 'fit'> = {},
): Atom => ({ height, space, least: height, draw, ...more });

/** One row of several under each other. */
export interface Row {
  height: number;
  draw(ink: Ink, x: number, top: number): void;
}

interface Stacked {
  space: number;
  /** Stands above the rows, and again above those on the next page. */
  head?: Row;
  /** Rows that stay with the one after them. */
  leads?: ReadonlySet<Row>;
}

const sum = (rows: readonly Row[]): number => rows.reduce((total, { height }) => total + height, 0);

/** Rows under each other, parted between any two of them. */
export function stack(rows: readonly Row[], { space, head, leads }: Stacked): Atom {
  const above = head?.height ?? 0;
  const firm = (at: number): boolean => leads?.has(rows[at]!) === true;
  let first = 0;
  while (firm(first)) first++;
  return {
    height: above + sum(rows),
    space,
    least: above + sum(rows.slice(0, first + 1)),
    draw(ink, x, top) {
      head?.draw(ink, x, top);
      let y = top + above;
      for (const row of rows) {
        row.draw(ink, x, y);
        y += row.height;
      }
    },
    split(room) {
      let [count, used] = [0, above];
      while (count < rows.length && used + rows[count]!.height <= room) used += rows[count++]!.height;
      while (count > 0 && firm(count - 1)) count--;
      if (count === 0 || count === rows.length) return undefined;
      const more = { space, ...(head ? { head } : {}), ...(leads ? { leads } : {}) };
      return [stack(rows.slice(0, count), more), stack(rows.slice(count), more)];
    },
  };
}

/** Rows in columns, filled one after the other: even where they all fit, or else as full as the room allows. */
export function inColumns(
  rows: readonly Row[],
  columns: number,
  step: number,
  { space, head }: Pick<Stacked, 'space' | 'head'>,
): Atom {
  const above = head?.height ?? 0;
  const each = Math.ceil(rows.length / columns);
  const parts = Array.from({ length: columns }, (_, at) => rows.slice(at * each, (at + 1) * each)).filter(
    (part) => part.length > 0,
  );
  return {
    height: above + Math.max(...parts.map(sum)),
    space,
    least: above + sum(rows.slice(0, Math.min(each, 3))),
    draw(ink, x, top) {
      parts.forEach((part, at) => {
        head?.draw(ink, x + at * step, top);
        let y = top + above;
        for (const row of part) {
          row.draw(ink, x + at * step, y);
          y += row.height;
        }
      });
    },
    split(room) {
      let count = 0;
      for (let column = 0; column < columns; column++) {
        let used = above;
        while (count < rows.length && used + rows[count]!.height <= room) used += rows[count++]!.height;
      }
      if (count === 0 || count >= rows.length) return undefined;
      return [
        inColumns(rows.slice(0, count), columns, step, { space, ...(head ? { head } : {}) }),
        inColumns(rows.slice(count), columns, step, { space, ...(head ? { head } : {}) }),
      ];
    },
  };
}
