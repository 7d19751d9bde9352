import { z } from 'zod';
import { type Read, read, refuse } from './read.ts';
import { readTable } from './table.ts';

const size = z.number().min(0).max(1e15);
const above = z.number().positive().max(1e15);
const count = z.number().int().min(0).max(1e6);
const tin = z.object({ size: above, price: above });

const paint = z.object({
  name: z.string(),
  kind: z.enum(['primer', 'colour', 'clear']),
  uses: z
    .array(
      z.object({
        on: z.enum(['ground', 'pattern']),
        area: size,
        coats: count.max(10),
        covers: z.array(above).max(10),
        tool: z.enum(['brush', 'roller', 'foam']),
        loss: z.number().min(0).max(0.9),
        ml: size,
      }),
    )
    .max(2),
  ml: size,
  needed: size,
  onHand: size,
  buy: size,
  tins: z
    .array(tin.extend({ count: count.min(1) }))
    .max(10)
    .optional(),
  offered: z.array(tin).max(10).optional(),
  cost: size.optional(),
  surplus: size.optional(),
});

const entry = z.object({
  reserve: z.number().min(0).max(1),
  panels: count.min(1),
  paints: z.array(paint).min(1).max(100),
  films: z.object({ count, across: above, along: above }).optional(),
  tape: z.object({ length: above, roll: above, width: above, rolls: count.min(1) }).optional(),
  canvas: z.object({ roll: above, buy: above }).optional(),
  days: z.object({
    stints: z
      .array(z.object({ day: count.min(1), what: z.string(), hours: above, sheets: count.optional() }))
      .max(10_000),
    walk: count,
    furniture: count,
    rugs: count,
    recoat: size,
    placement: size,
    working: above.max(24),
  }),
});

export type PaintEntry = z.infer<typeof entry>;
export type PaintOf = z.infer<typeof paint>;

/** What layout.json says of the paint; nothing where it says nothing. */
export function readPaintEntry(text: string): Read<PaintEntry | undefined> {
  let data: unknown;
  try {
    data = JSON.parse(text)?.paint;
  } catch {
    return refuse('the file is not complete JSON');
  }
  if (data === undefined) return read(undefined);
  const found = entry.safeParse(data);
  if (found.success) return read(found.data);
  return refuse(`${['paint', ...(found.error.issues[0]?.path ?? [])].join('.')} is not as this tool writes it`);
}

const HEAD =
  'paint,kind,ground_mm2,ground_coats,pattern_mm2,pattern_coats,used_ml,needed_ml,on_hand_ml,buy_ml,tins,cost';

/** The rows of paint.csv: name, kind, the numbers from the area of the ground to what is to buy, the tins and their cost. */
export function readPaintTable(
  text: string,
): Read<{ name: string; kind: string; numbers: number[]; tins: string; cost: string }[]> {
  const table = readTable(text);
  if (!table.ok) return table;
  const [head, ...rows] = table.value;
  if (head?.join(',') !== HEAD) return refuse('its first row does not name its columns as this tool does');
  const odd = rows.findIndex((row) => row.length !== head.length);
  if (odd >= 0) return refuse(`row ${odd + 2} has ${rows[odd]!.length} fields, not ${head.length}`);
  return read(
    rows.map((row) => ({
      name: row[0]!,
      kind: row[1]!,
      numbers: row.slice(2, 10).map(Number),
      tins: row[10]!,
      cost: row[11]!,
    })),
  );
}
