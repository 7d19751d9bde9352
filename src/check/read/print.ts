import { z } from 'zod';
import { type Read, read, refuse } from './read.ts';

const mm = z.number().min(-1e6).max(1e6);
const above = mm.positive();
const size = z.object({ across: above, along: above });
const count = z.number().int().min(1).max(1e5);

const drawing = z.object({
  /** The file that shows the same drawing whole. */
  file: z.string().regex(/^(?:stencil-[\w-]+|plan)\.svg$/),
  /** Left, top, right and bottom of what is printed, in coordinates of that file. */
  box: z.tuple([mm, mm, mm, mm]),
  page: count,
  rows: count,
  columns: count,
  paper: size,
  tile: size,
  step: size,
});

const print = z.object({
  file: z.literal('tiles.pdf'),
  paper: size.extend({ name: z.string() }),
  overlap: above,
  factor: above,
  pages: count,
  svg: z.boolean(),
  drawings: z.array(drawing),
});

export type PrintFile = z.infer<typeof print>;
export type PrintedDrawing = PrintFile['drawings'][number];

/** What layout.json says about the printed pages; nothing where it says nothing. */
export function readPrint(text: string): Read<PrintFile | undefined> {
  const data = JSON.parse(text);
  if (data?.print === undefined) return read(undefined);
  const found = print.safeParse(data.print);
  if (found.success) return read(found.data);
  return refuse(`print ${found.error.issues[0]?.path.join('.') ?? ''} is not a value that this tool writes`);
}
