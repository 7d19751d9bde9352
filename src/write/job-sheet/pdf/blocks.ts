import { INK, RED } from '../../ink.ts';
import type { Block, Figure } from '../block.ts';
import { type Atom, type Row, solid, stack } from './atom.ts';
import { boxSide, drawBox, FINE, type Kit, LINE, type } from './kit.ts';
import { mmOf } from './sizes.ts';
import { tableAtom } from './table.ts';
import { baseOf, lineHeight, textRows, widthOf } from './text.ts';

/** A page that begins with what follows. */
export const BREAK = Symbol('page');
export type Flowing = Atom | typeof BREAK;

const stacked = (rows: readonly Row[]): Row => ({
  height: rows.reduce((sum, { height }) => sum + height, 0),
  draw(ink, x, top) {
    let y = top;
    for (const row of rows) {
      row.draw(ink, x, y);
      y += row.height;
    }
  },
});

function headingAtom({ level, text, number }: Extract<Block, { kind: 'heading' }>, width: number, kit: Kit): Atom {
  const look = type(kit, level === 2 ? 'second' : 'third', 'bold');
  const ring = number === undefined ? 0 : 9;
  const rows = stacked(textRows(text, width, look, ring));
  const under = level === 2 ? 1.6 : 0.6;
  return solid(
    rows.height + under,
    level === 2 ? 9 : 6,
    (ink, x, top) => {
      if (number !== undefined) {
        const figure = type(kit, 'list', 'red');
        const middle = top + baseOf(look) - 0.35 * mmOf(look.size);
        ink.ring(x + 3.1, middle, 3.1, 0.4, RED);
        const shown = `${number}`;
        const from = x + 3.1 - widthOf(shown, figure) / 2;
        ink.text(figure.face, shown, from, middle + 0.35 * mmOf(figure.size), mmOf(figure.size), RED);
      }
      rows.draw(ink, x, top);
      if (level === 2) ink.rule(x, top + rows.height + 0.6, x + width, 0.5, INK);
    },
    { keep: true },
  );
}

function ticksAtoms({ items, look }: Extract<Block, { kind: 'ticks' }>, width: number, kit: Kit): Atom[] {
  const words = type(kit, look === 'list' ? 'list' : 'step');
  const box = boxSide(words.size);
  const indent = box + 3.2;
  const gap = look === 'list' ? 1 : 1.9;
  const one = (text: string, wide: number): Row => {
    const rows = stacked(textRows(text, wide, words, indent));
    return {
      height: rows.height + gap,
      draw(ink, x, top) {
        drawBox(ink, x + 0.2, top + baseOf(words), words.size);
        rows.draw(ink, x, top);
      },
    };
  };
  // A list is looked through: on a whole page it stands in two columns.
  if (look === 'list' && width > 120) {
    const half = (width - 8) / 2;
    const rows = items.map((item) => one(item, half));
    const each = Math.ceil(rows.length / 2);
    const [left, right] = [stacked(rows.slice(0, each)), stacked(rows.slice(each))];
    return [
      solid(Math.max(left.height, right.height), 2, (ink, x, top) => {
        left.draw(ink, x, top);
        right.draw(ink, x + half + 8, top);
      }),
    ];
  }
  const measure = look === 'list' ? width : Math.min(width, 172);
  return items.map((item, at) => {
    const row = one(item, measure);
    return solid(row.height, at === 0 ? 1.4 : 0, row.draw);
  });
}

function numbersAtom({ items }: Extract<Block, { kind: 'numbers' }>, width: number, kit: Kit): Atom {
  const [small, large] = [type(kit, 'name', 'soft'), type(kit, 'number', 'bold')];
  const wish = items.map(({ name, value }) => Math.max(widthOf(name, small), widthOf(value, large)) + 5.4);
  const lines: number[][] = [];
  let used = width;
  wish.forEach((wide, at) => {
    if (used + wide > width || lines.length === 0) {
      lines.push([]);
      used = 0;
    }
    lines.at(-1)!.push(at);
    used += wide;
  });
  const high = 14;
  return solid(high * lines.length, 4, (ink, x, top) => {
    lines.forEach((line, row) => {
      const spare = (width - line.reduce((sum, at) => sum + wish[at]!, 0)) / line.length;
      let left = x;
      const y = top + row * high;
      for (const at of line) {
        const wide = wish[at]! + spare;
        ink.frame(left, y, wide, high, FINE, LINE);
        ink.text(small.face, items[at]!.name, left + 2.6, y + 4.6, mmOf(small.size), small.colour);
        ink.text(large.face, items[at]!.value, left + 2.6, y + 11.2, mmOf(large.size), large.colour);
        left += wide;
      }
    });
  });
}

function careAtom({ items, last }: Extract<Block, { kind: 'care' }>, width: number, kit: Kit): Atom {
  const [title, what, words] = [type(kit, 'third', 'bold'), type(kit, 'body', 'bold'), type(kit, 'body')];
  const bar = 2.2;
  const inside = bar + 4.5;
  const names = Math.max(...items.map((item) => widthOf(item.what, what))) + 5;
  const wide = width - inside - 4;
  const rows = items.map(({ what: name, words: text }): Row => {
    const own = stacked(textRows(text, wide, words, names));
    return {
      height: own.height + 1.4,
      draw(ink, x, top) {
        ink.text(what.face, name, x, top + baseOf(words), mmOf(what.size), what.colour);
        own.draw(ink, x, top);
      },
    };
  });
  const lastRows = last === undefined ? [] : textRows(last, wide, what);
  const heading = lineHeight(title) + 1.4;
  const body = stacked([...rows, ...lastRows]);
  const high = heading + body.height + 6;
  return solid(high, 5, (ink, x, top) => {
    ink.frame(x, top, width, high, 0.4, RED);
    ink.fill(x, top, bar, high, RED);
    ink.text(title.face, 'Take care', x + inside, top + 3 + baseOf(title), mmOf(title.size), RED);
    body.draw(ink, x + inside, top + 3 + heading);
  });
}

/** A figure as wide as its share of a page, or as the room there is. */
function figureAtom(figure: Figure, width: number, kit: Kit, smaller = 1): Atom | undefined {
  const ready = kit.figures.get(figure);
  if (!ready) return undefined;
  const wide = Math.min(width, figure.share * kit.width) * smaller;
  const look = type(kit, 'caption', 'soft');
  const says = stacked(textRows(figure.says, width, look));
  const high = wide * ready.ratio;
  return solid(
    high + 1.4 + says.height,
    4,
    (ink, x, top) => {
      ready.draw(ink, x + (width - wide) / 2, top, wide);
      says.draw(ink, x, top + high + 1.4);
    },
    {
      fit: (room) =>
        room - says.height - 1.4 > 0.6 * high
          ? figureAtom(figure, width, kit, (smaller * (room - says.height - 1.4)) / high)
          : undefined,
    },
  );
}

/** What begins a part of its own. */
const begins = (block: Block): boolean => block.kind === 'heading' || block.kind === 'page' || block.kind === 'beside';

/** @param tables a table is a part of its own, so that the words before it may stand beside a figure without it */
function partsOf(blocks: readonly Block[], tables: boolean): Block[][] {
  const parts: Block[][] = [];
  for (const block of blocks) {
    const last = parts.at(-1);
    if (last && !begins(block) && !(tables && block.kind === 'table')) last.push(block);
    else parts.push([block]);
  }
  return parts;
}

const GUTTER = 8;

/** The figure, and beside it as many whole parts as find room there; the rest goes below. */
function besideAtoms({ figure, side, blocks }: Extract<Block, { kind: 'beside' }>, width: number, kit: Kit): Flowing[] {
  const ready = kit.figures.get(figure);
  if (!ready) return atomsOf(blocks, width, kit);
  const parts = partsOf(blocks, side === 'right');
  const make = (wide: number): [Atom, Block[]] => {
    const high = wide * ready.ratio;
    const room = width - wide - GUTTER;
    const beside: { atom: Atom; top: number }[] = [];
    let [taken, y] = [0, 0];
    for (const part of room >= 50 ? parts : []) {
      const own = atomsOf(part, room, kit).filter((one) => one !== BREAK);
      let end = y;
      const placed = own.map((atom) => {
        const top = end === 0 ? 0 : end + atom.space;
        end = top + atom.height;
        return { atom, top };
      });
      // A sheet's own words may reach a little below its figure.
      if (end > Math.max(high, taken === 0 && side === 'right' ? 60 : 0)) break;
      beside.push(...placed);
      y = end;
      taken++;
    }
    const left = side === 'left' && beside.length > 0 ? room + GUTTER : 0;
    const middle = beside.length === 0 ? (width - wide) / 2 : side === 'left' ? 0 : room + GUTTER;
    const atom = solid(
      Math.max(high, y),
      side === 'left' ? 5 : 9,
      (ink, x, top) => {
        ready.draw(ink, x + middle, top, wide);
        for (const one of beside) one.atom.draw(ink, x + (left > 0 ? wide + GUTTER : 0), top + one.top);
      },
      {
        keep: side === 'right' && parts[taken]?.[0]?.kind === 'table',
        fit: (space) => {
          if (space < 0.6 * high || y > space) return undefined;
          const [smaller, rest] = make((wide * space) / high);
          return rest.length === parts.slice(taken).flat().length ? smaller : undefined;
        },
      },
    );
    return [atom, parts.slice(taken).flat()];
  };
  const [atom, rest] = make(Math.min(width, figure.share * kit.width));
  return [atom, ...atomsOf(rest, width, kit)];
}

/** Words of more lines than this may go over to the next page. */
const MANY_LINES = 12;

/** Blocks as pieces of pages of one width. */
export const atomsOf = (blocks: readonly Block[], width: number, kit: Kit): Flowing[] =>
  blocks.flatMap((block, at) => oneBlock(block, blocks[at + 1]?.kind, width, kit));

function oneBlock(block: Block, next: Block['kind'] | undefined, width: number, kit: Kit): Flowing[] {
  switch (block.kind) {
    case 'heading':
      return [headingAtom(block, width, kit)];
    case 'words': {
      const look =
        block.look === 'large'
          ? type(kit, 'large')
          : block.look === 'soft'
            ? type(kit, 'soft', 'soft')
            : type(kit, 'body');
      const rows = textRows(block.text, Math.min(width, 178), look);
      const space = block.look === 'large' ? 3.5 : 1.8;
      if (rows.length > MANY_LINES) return [stack(rows, { space })];
      const whole = stacked(rows);
      const keep = ['table', 'figure'].includes(next ?? '');
      return rows.length === 0 ? [] : [solid(whole.height, space, whole.draw, { keep })];
    }
    case 'numbers':
      return [numbersAtom(block, width, kit)];
    case 'ticks':
      return ticksAtoms(block, width, kit);
    case 'table':
      return block.rows.length === 0 ? [] : [tableAtom(block, width, kit, 2.4)];
    case 'figure': {
      const atom = figureAtom(block, width, kit);
      return atom ? [atom] : [];
    }
    case 'beside':
      return besideAtoms(block, width, kit);
    case 'care':
      return [careAtom(block, width, kit)];
    case 'page':
      return [BREAK];
  }
}
