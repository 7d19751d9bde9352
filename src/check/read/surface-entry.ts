import { z } from 'zod';
import { type Read, read, refuse } from './read.ts';

const mm = z.number().min(-1e6).max(1e6);
const strip = mm.min(0);
const above = mm.positive();
const size = z.object({ across: above, along: above });
const box = z.object({ left: mm, top: mm, right: mm, bottom: mm });
const limits = z.object({ from: strip, to: strip });
const lies = z.enum(['along', 'across']);

const cloth = z.object({
  hem: strip,
  corners: z.enum(['mitred', 'folded']),
  trim: strip,
  shrinkage: z.object({ before: size, after: size }).optional(),
  rolls: z.array(above).max(100),
  waste: strip,
  finished: size,
  hemmed: size,
  primed: size,
  rollLies: lies,
  exact: size,
  cut: size,
  choices: z
    .array(
      z.object({
        roll: above,
        rollLies: lies,
        across: above,
        along: above,
        buy: above,
        waste: z.number().min(0).max(1e12),
      }),
    )
    .max(200),
  needed: above.optional(),
});

const flight = z.object({
  painted: z.enum(['risers', 'treads']),
  stands: z.enum(['middle', 'foot']),
  nosing: strip,
  limits: z.object({ sides: limits, ends: limits }),
  steps: z
    .array(
      z.object({
        step: z.number().int().min(1).max(1000),
        across: above,
        along: above,
        outline: box,
        panel: box,
        margins: z.object({ sides: mm, below: mm, above: mm }),
      }),
    )
    .min(1)
    .max(1000),
});

export type ClothEntry = z.infer<typeof cloth>;
export type FlightEntry = z.infer<typeof flight>;
export type StepEntry = FlightEntry['steps'][number];

function entry<T>(text: string, key: string, shape: z.ZodType<T>): Read<T> {
  let data: unknown;
  try {
    data = JSON.parse(text)?.[key];
  } catch {
    return refuse('the file is not complete JSON');
  }
  if (data === undefined) return refuse(`layout.json has no entry ${key}`);
  const found = shape.safeParse(data);
  if (found.success) return read(found.data);
  return refuse(`${[key, ...(found.error.issues[0]?.path ?? [])].join('.')} is not as this tool writes it`);
}

/** What layout.json says of a floor cloth. */
export const readClothEntry = (text: string): Read<ClothEntry> => entry(text, 'cloth', cloth);

/** What layout.json says of a flight of stairs. */
export const readFlightEntry = (text: string): Read<FlightEntry> => entry(text, 'flight', flight);
