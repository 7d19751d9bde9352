import { z } from 'zod';

const mm = z.number().min(-1e6).max(1e6);
const point = z.tuple([mm, mm]);
const corners = z.object({ 'near-left': point, 'near-right': point, 'far-right': point, 'far-left': point });
const pair = <T extends z.ZodType>(of: T) => z.object({ across: of, along: of });
const lines = z.object({
  unit: mm.positive(),
  first: mm.min(0),
  centre: z.enum(['between repeats', 'middle of a repeat']),
  midway: z.boolean(),
});
const wall = z.object({
  distance: mm.positive(),
  cut: z.object({ centre: mm.positive(), least: mm.positive(), most: mm.positive(), whole: z.boolean() }),
});

/** A floor from wall to wall, about the crossing of its centre lines: the room, what is patterned, the lines between repeats, and what each wall cuts. */
export const floorShape = z.object({
  corners,
  pattern: corners,
  strip: pair(mm.min(0)),
  openings: z
    .array(z.object({ wall: z.enum(['near', 'right', 'far', 'left']), casing: z.tuple([point, point]) }))
    .max(100),
  obstacles: z.array(z.object({ name: z.string().max(100), outline: z.array(point).min(3).max(1000) })).max(100),
  lines: pair(lines),
  walls: z.object({ near: wall, right: wall, far: wall, left: wall }),
});

export type FloorEntry = z.infer<typeof floorShape>;
export type FloorCorners = FloorEntry['corners'];
export type WallName = keyof FloorEntry['walls'];
