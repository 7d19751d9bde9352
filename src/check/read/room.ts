import { z } from 'zod';
import { type Read, read, refuse } from './read.ts';
import { type Svg, USE } from './svg.ts';

export type Spot = readonly [x: number, y: number];

export const SIDES = ['near', 'right', 'far', 'left'] as const;
export type Side = (typeof SIDES)[number];

/** Corners in turn, from the near left one to the right round the room. */
export const CORNERS = ['near-left', 'near-right', 'far-right', 'far-left'] as const;
export type CornerName = (typeof CORNERS)[number];

export interface Line {
  attributes: Record<string, string>;
  /** Points of each stretch of it, in order. */
  stretches: Spot[][];
}

/** A room as room.svg draws it: straight lines only. Lengths in mm. */
export interface RoomDrawn {
  svg: Svg;
  walls: Line[];
  openings: Line[];
  obstacles: Line[];
  tables: Line[];
  axes: Line[];
  clearances: Line[];
  labels: string[];
  /** The paths of the painting, attributes in their order. */
  paint: Record<string, string>[];
}

const FARTHEST = 1e6;
const COUNT: Record<string, number> = { M: 2, L: 2, H: 1, V: 1, Z: 0 };

/** The points of each stretch of a path of straight lines, relative or absolute; nothing where it is none. */
export function straightLines(text: string): Spot[][] | undefined {
  const stretches: Spot[][] = [];
  let [home, last]: Spot[] = [];
  for (const [, command = '', rest = ''] of text.matchAll(/([A-Za-z])([^A-Za-z]*)/g)) {
    const upper = command.toUpperCase();
    const count = COUNT[upper];
    const numbers = [...rest.matchAll(/-?(?:\d+\.?\d*|\.\d+)/g)].map(([number]) => Number(number));
    if (count === undefined || (count === 0 ? rest.trim() !== '' : numbers.length === 0 || numbers.length % count > 0))
      return undefined;
    if (upper === 'Z') {
      last = home;
      continue;
    }
    for (let at = 0; at < numbers.length; at += count) {
      const isFirst = upper === 'M' && at === 0;
      if (!last && !isFirst) return undefined;
      const [x, y] = last ?? [0, 0];
      const [dx, dy] = command === upper ? [0, 0] : [x, y];
      const one = numbers[at]!;
      const to: Spot =
        upper === 'H' ? [dx + one, y] : upper === 'V' ? [x, dy + one] : [dx + one, dy + numbers[at + 1]!];
      if (!(Math.abs(to[0]) <= FARTHEST && Math.abs(to[1]) <= FARTHEST)) return undefined;
      if (isFirst) {
        stretches.push([]);
        home = to;
      }
      stretches.at(-1)!.push(to);
      last = to;
    }
  }
  return stretches.length > 0 ? stretches : undefined;
}

export function readRoom(svg: Svg): Read<RoomDrawn> {
  const kinds = {
    'data-wall': [] as Line[],
    'data-opening': [] as Line[],
    'data-obstacle': [] as Line[],
    'data-table': [] as Line[],
    'data-axis': [] as Line[],
    'data-clearance': [] as Line[],
  };
  const drawn: Pick<RoomDrawn, 'labels' | 'paint'> = { labels: [], paint: [] };
  for (const { attributes, groups, mover } of svg.paths) {
    if (mover && !(mover === USE && groups.includes('paint')))
      return refuse(`the drawing has the attribute ${mover}, so it need not lie where its numbers say`);
    if (groups.includes('paint')) {
      drawn.paint.push(attributes);
      continue;
    }
    const label = attributes['data-label'];
    if (label !== undefined) drawn.labels.push(label);
    for (const [kind, lines] of Object.entries(kinds)) {
      if (attributes[kind] === undefined) continue;
      const stretches = straightLines(attributes.d ?? '');
      if (!stretches) return refuse(`${kind} ${attributes[kind]} is not drawn with straight lines`);
      lines.push({ attributes, stretches });
    }
  }
  return read({
    svg,
    ...drawn,
    walls: kinds['data-wall'],
    openings: kinds['data-opening'],
    obstacles: kinds['data-obstacle'],
    tables: kinds['data-table'],
    axes: kinds['data-axis'],
    clearances: kinds['data-clearance'],
  });
}

const mm = z.number().min(-1e6).max(1e6);
const spot = z.tuple([mm, mm]);
const side = z.enum(SIDES);
const corner = z.enum(CORNERS);
const named = z.object({ name: z.string(), outline: z.array(spot).min(3) });
const meets = z.object({ at: spot, 'from left': mm });

const entry = z.object({
  corners: z.record(corner, spot),
  walls: z.record(side, mm),
  diagonals: z.record(z.string(), mm),
  openings: z.array(
    z.object({
      wall: side,
      casing: z.tuple([spot, spot]),
      edges: z.array(z.object({ edge: z.string(), clear: mm })).length(2),
    }),
  ),
  obstacles: z.array(named),
  over: z.array(named).optional(),
  axis: z.object({ near: meets, far: meets }),
  gaps: z.record(side, mm),
  clearances: z.array(z.object({ corner, wall: side, clear: mm })).length(8),
});

export type RoomEntry = z.infer<typeof entry>;

/** The room as layout.json has it; undefined where it has none. */
export function readRoomEntry(text: string): Read<RoomEntry | undefined> {
  const { room } = JSON.parse(text) as { room?: unknown };
  if (room === undefined) return read(undefined);
  const found = entry.safeParse(room);
  if (found.success) return read(found.data);
  return refuse(`room.${found.error.issues[0]?.path.join('.') ?? ''} is not a value that this tool writes`);
}
