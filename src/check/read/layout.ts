import { z } from 'zod';
import { floorShape } from './floor.ts';
import { type Read, read, refuse } from './read.ts';
import { roomBorder } from './room-border.ts';

const mm = z.number().min(-1e6).max(1e6);
const above = mm.positive();
const landing = z.enum(['whole', 'half', 'cut']);
const pair = <T extends z.ZodType>(of: T) => z.object({ across: of, along: of });
/** A name that stays inside the folder. */
const fileName = z.string().regex(/^[\w][\w.-]*$/, 'a plain file name');

const layout = z.object({
  overall: pair(above),
  border: mm.min(0),
  reserve: pair(mm.min(0)),
  endGap: mm.min(0),
  field: pair(above),
  repeats: pair(z.number().positive().max(1e5)),
  pitch: pair(above),
  landing: z.object({
    left: landing,
    right: landing,
    near: landing,
    far: landing,
    centreAcross: landing,
    centreAlong: landing,
  }),
  borderRepeats: pair(z.number().int().min(0).max(1e5)),
  phase: pair(z.number().min(-1).max(1)),
  work: pair(above),
  gaps: z.object({ near: mm.min(0), far: mm.min(0), left: mm.min(0), right: mm.min(0) }),
  /** A second border: its outer edge lies `offset` inside the inner edge of the first. */
  inner: z
    .object({ width: above, offset: pair(mm.min(0)), repeats: pair(z.number().int().min(0).max(1e5)) })
    .optional(),
});

const box = z.object({ left: mm, top: mm, right: mm, bottom: mm });

/** A line of lettering: where its base line crosses the axis, what it reaches, its room, and the foot and the turn of each letter. */
const lettering = z.object({
  text: z.string().min(1).max(1000),
  face: z.string(),
  place: z.enum(['centre', 'near', 'far']),
  arc: z.number().min(-360).max(360),
  capHeight: above,
  width: above,
  base: mm,
  reach: box,
  room: box,
  stands: z
    .array(z.tuple([mm, mm, z.number().min(-10).max(10)]))
    .min(1)
    .max(1000),
});

/** How a border goes round. */
const way = z.object({ turn: z.enum(['block', 'mitre', 'own', 'butt']), run: z.enum(['reverse', 'round']) });

const placement = z.object({
  turn: z.number().int().min(0).max(3),
  x: mm,
  y: mm,
  open: z.array(z.number().int().min(0)),
});

const sheet = z.object({
  file: fileName,
  colour: z.string(),
  windows: z.number().int().min(0),
  keys: z.number().int().min(0),
  origin: z.tuple([mm, mm]),
  /** What a cutter is given: the ids of the lines in their order, how far the blade runs on, the colour of each kind of line. */
  cut: z.object({
    order: z.string(),
    outline: z.enum(['cut', 'draw', 'none']),
    mirrored: z.boolean(),
    overcut: mm.min(0),
    lines: z.record(z.string(), z.string().regex(/^#(?:[0-9a-f]{3}|[0-9a-f]{6})$/i)),
  }),
  /** Where the sheet carries parts of shapes that are split: the number of the split, and the lines, in sheet coordinates. */
  part: z
    .object({
      of: z.number().int().min(1),
      left: mm.optional(),
      top: mm.optional(),
      right: mm.optional(),
      bottom: mm.optional(),
      lap: mm.min(0),
    })
    .optional(),
  passes: z.array(z.array(placement)),
});

const file = z.object({
  evenfield: z.literal(1),
  job: z.object({
    title: z.string(),
    surface: z.string(),
    units: z.enum(['in', 'ft', 'mm', 'cm', 'm']),
    step: above,
    bridge: above,
    window: above,
    gaps: z.enum(['open', 'painted']).optional(),
    lap: mm.min(0).optional(),
    /** Where two colours touch: how far the one painted first reaches under the other, or how far apart they are. */
    meeting: z
      .object({ way: z.enum(['overlap', 'gap']), by: above.max(10), order: z.array(z.string()).max(100) })
      .optional(),
  }),
  /** One rectangle of repeats; a border round a room tells its walls instead. */
  layout: layout.optional(),
  roomBorder: roomBorder.optional(),
  floor: floorShape.optional(),
  motifs: z.object({ field: z.object({ name: z.string() }).optional() }).optional(),
  border: way.optional(),
  inner: way.optional(),
  alternation: z
    .object({ by: z.enum(['row', 'column', 'checker']), other: z.object({ name: z.string() }).optional() })
    .optional(),
  inset: z.object({}).optional(),
  medallion: z.object({ repeats: pair(z.number().positive().max(1e5)) }).optional(),
  lettering: z.array(lettering).max(3).optional(),
  palette: z.record(z.string(), z.string()),
  colours: z.record(z.string(), z.string()),
  taped: z.array(z.object({ part: z.string(), elements: z.array(z.string()).optional() })),
  /** The pieces of film that sheets are cut from; written as files of their own only where asked for. */
  films: z
    .array(
      z.object({
        file: z.string().optional(),
        across: above,
        along: above,
        sheets: z.array(z.object({ file: z.string(), x: mm, y: mm, turned: z.boolean() })),
      }),
    )
    .optional(),
  sheets: z.array(sheet),
});

/** `layout` is there for all surfaces but a room border, for which the families that read it are left out. */
export type LayoutFile = Omit<z.infer<typeof file>, 'layout'> & { layout: z.infer<typeof layout> };
export type LayoutNumbers = LayoutFile['layout'];
export type LetteringEntry = z.infer<typeof lettering>;
export type BorderWay = z.infer<typeof way>;
export type SheetEntry = LayoutFile['sheets'][number];
export type PlacementEntry = z.infer<typeof placement>;

/** Whether a piece is masked off with tape: its part is, everywhere or on the elements named. */
export const isTaped = (piece: { part: string; element: string }, taped: LayoutFile['taped']): boolean =>
  taped.some(({ part, elements }) => part === piece.part && (elements?.includes(piece.element) ?? true));

/** Reads layout.json. Its numbers are claims to be measured, so only their kinds and bounds are looked at here. */
export function readLayout(text: string): Read<LayoutFile> {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return refuse('the file is not complete JSON');
  }
  const found = file.safeParse(data);
  if (found.success) {
    const { layout: rectangle, job } = found.data;
    if (rectangle === undefined && job.surface !== 'room-border') return refuse('layout is not a group');
    if ((job.surface === 'floor') !== (found.data.floor !== undefined))
      return refuse('floor is not a group, or the surface is none');
    return read(found.data as LayoutFile);
  }
  const [first] = found.error.issues;
  const place = first?.path.join('.') || 'the file';
  return refuse(`${place} ${whatIsWrong(first)}`.slice(0, 300));
}

function whatIsWrong(issue: z.core.$ZodIssue | undefined): string {
  if (issue?.code === 'too_small') return `is less than ${issue.inclusive ? '' : 'or just '}${issue.minimum}`;
  if (issue?.code === 'too_big') return `is more than ${issue.maximum}`;
  if (issue?.code !== 'invalid_type') return 'is not a value that this tool writes';
  const kind = {
    array: 'a list',
    object: 'a group',
    record: 'a group',
    tuple: 'a list',
    string: 'text',
    int: 'a whole number',
  };
  return `is not ${(kind as Record<string, string>)[issue.expected] ?? `a ${issue.expected}`}`;
}
