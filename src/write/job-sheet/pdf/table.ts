import { FAINT, INK } from '../../ink.ts';
import type { Table } from '../block.ts';
import { type Atom, inColumns, type Row, stack } from './atom.ts';
import { drawBox, FINE, type Kit, LINE, type } from './kit.ts';
import { mmOf } from './sizes.ts';
import { baseOf, lineHeight, linesOf, type Type, widthOf } from './text.ts';

const GAP = 4;
const COLUMN_GAP = 9;
/** Above and under the words of a row, mm. */
const PAD = 1.1;
const SWATCH = 4.4;
const BOX_ROOM = 8.5;

interface Column {
  x: number;
  width: number;
  type: Type;
  right: boolean;
}

/** How wide each column is: the narrow ones by what stands in them, the others share the rest by what they hold. */
function columnsOf(block: Table, width: number, kit: Kit): Column[] {
  const { head, rows, ticked, reading, narrow = [], swatches } = block;
  const from = ticked ? BOX_ROOM : 0;
  const looks = head.map(
    (text, at): Type =>
      at === reading ? type(kit, 'reading', 'bold') : type(kit, 'cell', text === 'No.' ? 'soft' : 'plain'),
  );
  const swatch = (at: number) => (swatches && at === 0 ? SWATCH + 2 : 0);
  const natural = head.map((text, at) =>
    Math.max(
      widthOf(text, type(kit, 'head', 'soft')),
      ...rows.map((row) => widthOf(row[at] ?? '', looks[at]!) + swatch(at)),
    ),
  );
  const room = width - from - GAP * (head.length - 1);
  const firm = head.map((_, at) => narrow.includes(at) && natural[at]! < room / 2);
  const taken = natural.reduce((sum, wide, at) => sum + (firm[at] ? wide : 0), 0);
  const wish = natural.map((wide, at) => (firm[at] ? 0 : Math.max(14, Math.min(wide, room)) ** 0.75));
  const wishes = wish.reduce((sum, one) => sum + one, 0);
  let x = from;
  return head.map((_, at) => {
    const share = firm[at] ? natural[at]! : ((room - taken) * wish[at]!) / wishes;
    const column = { x, width: share, type: looks[at]!, right: at === reading };
    x += share + GAP;
    return column;
  });
}

function rowOf(block: Table, at: number, columns: Column[], width: number, kit: Kit): Row {
  const { ticked, swatches } = block;
  const cells = block.rows[at]!.map((text, n) => {
    const column = columns[n]!;
    const indent = swatches && n === 0 ? SWATCH + 2 : 0;
    return { column, indent, lines: linesOf(text, column.width - indent, column.type) };
  });
  // All first lines share one base line.
  const base = PAD + Math.max(...columns.map(({ type }) => baseOf(type)));
  const under = Math.max(
    ...cells.map(({ lines, column }) => (Math.max(1, lines.length) - 1) * lineHeight(column.type)),
  );
  const deep = 0.32 * mmOf(Math.max(...columns.map(({ type }) => type.size)));
  const height = base + under + deep + PAD;
  return {
    height,
    draw(ink, x, top) {
      if (ticked) drawBox(ink, x + 0.2, top + base, type(kit, 'step').size);
      if (swatches) {
        const y = top + base - 0.35 * mmOf(columns[0]!.type.size) - SWATCH / 2;
        ink.fill(x + columns[0]!.x, y, SWATCH, SWATCH, swatches[at]!);
        ink.frame(x + columns[0]!.x, y, SWATCH, SWATCH, FINE, FAINT);
      }
      for (const { column, indent, lines } of cells) {
        lines.forEach((line, n) => {
          const back = column.right ? column.width - widthOf(line, column.type) : indent;
          const y = top + base + n * lineHeight(column.type);
          ink.text(column.type.face, line, x + column.x + back, y, mmOf(column.type.size), column.type.colour);
        });
      }
      ink.rule(x, top + height, x + width, FINE, LINE);
    },
  };
}

function headOf(block: Table, columns: Column[], width: number, kit: Kit): Row {
  const look = type(kit, 'head', 'soft');
  const lines = block.head.map((text, at) => linesOf(text, columns[at]!.width, look));
  const most = Math.max(1, ...lines.map(({ length }) => length));
  const height = most * lineHeight(look) + 0.9;
  return {
    height,
    draw(ink, x, top) {
      lines.forEach((own, at) => {
        const { x: from, width: wide, right } = columns[at]!;
        own.forEach((line, n) => {
          const back = right ? wide - widthOf(line, look) : 0;
          const y = top + baseOf(look) + (most - own.length + n) * lineHeight(look);
          ink.text(look.face, line, x + from + back, y, mmOf(look.size), look.colour);
        });
      });
      ink.rule(x, top + height, x + width, 0.35, INK);
    },
  };
}

function partRow(text: string, width: number, kit: Kit): Row {
  const look = type(kit, 'cell', 'bold');
  const lines = linesOf(text, width, look);
  const height = 2.4 + lines.length * lineHeight(look) + 0.4;
  return {
    height,
    draw(ink, x, top) {
      lines.forEach((line, n) => {
        ink.text(look.face, line, x, top + 2.4 + baseOf(look) + n * lineHeight(look), mmOf(look.size), look.colour);
      });
      ink.rule(x, top + height, x + width, FINE, LINE);
    },
  };
}

/** A table whose head stands again on every page it reaches, no row of it ever cut. */
export function tableAtom(block: Table, width: number, kit: Kit, space: number): Atom {
  const { columns: many = 1, parts = [] } = block;
  const each = (width - COLUMN_GAP * (many - 1)) / many;
  const columns = columnsOf(block, each, kit);
  const rows = block.rows.map((_, at) => rowOf(block, at, columns, each, kit));
  const head = headOf(block, columns, each, kit);
  if (many > 1) return inColumns(rows, many, each + COLUMN_GAP, { space, head });
  const titles = new Map(parts.map(({ before, text }) => [before, partRow(text, each, kit)]));
  const all = rows.flatMap((row, at) => {
    const title = titles.get(at);
    return title ? [title, row] : [row];
  });
  return stack(all, { space, head, leads: new Set(titles.values()) });
}
