import { z } from 'zod';

const mm = z.number().min(-1e6).max(1e6);
const above = mm.positive();
const point = z.tuple([mm, mm]);
const count = z.number().int().min(0).max(1e5);

/** The border along one wall, as layout.json claims it. */
const wall = z.object({
  name: z.string(),
  length: above,
  measured: above,
  corner: z.enum(['inside', 'outside']),
  heading: z.number().int().min(0).max(3),
  start: point,
  strip: mm.min(0),
  repeats: count,
  pitch: mm.min(0),
  stretch: above,
  from: mm,
  to: mm,
  painted: z.array(z.object({ first: count, count: z.number().int().min(1) })).max(1000),
  bands: z.array(z.tuple([mm, mm])).max(1000),
});

export const roomBorder = z.object({
  width: above,
  pitch: z.enum(['one', 'each wall']),
  turn: z.string(),
  run: z.enum(['reverse', 'round']),
  atDoors: z.enum(['stop', 'run on']),
  walls: z.array(wall).min(4).max(200),
  doors: z.array(z.object({ wall: count, starts: mm.min(0), ends: above })).max(100),
  corners: z.array(z.object({ wall: count, kind: z.enum(['inside', 'outside']), painted: z.boolean() })).max(200),
});

export type RoomBorderEntry = z.infer<typeof roomBorder>;
export type WallEntry = RoomBorderEntry['walls'][number];
