import * as z from 'zod';
import { shown, UNITS, type Unit } from '../../units/index.ts';
import { SURFACES } from '../job.ts';
import { range, refuseWith, single, title, typed } from '../leaves.ts';
import type { MotifList } from '../motif-choice.ts';
import { borderShape, innerShape, reserveShape } from './border.ts';
import { clothShape } from './cloth.ts';
import { coloursShape, colourwaysShape, paletteShape } from './colours.ts';
import { fieldShape } from './field.ts';
import { groundShape } from './ground.ts';
import { medallionShape } from './laid-over.ts';
import { lengthsIn } from './lengths.ts';
import { letteringShape } from './lettering.ts';
import { paintShape } from './paint.ts';
import { previewShape } from './preview.ts';
import { printShape } from './print.ts';
import { overallShape, siteShape } from './site.ts';
import { stairsShape } from './stairs.ts';
import { stencilShape } from './stencil.ts';

// A schema is used once, so compiling it would cost more than it saves; and a strict page forbids it.
z.config({ jitless: true });

/** The version of the job file that is read. */
const VERSION = 1;

const version = typed
  .transform((given, context): number => {
    if (Number(given) === VERSION) return VERSION;
    const says = `this file says version ${shown(String(given))}; version ${VERSION} is read`;
    return refuseWith(context, 'job/version', { ok: false, says, hint: `evenfield: ${VERSION}` }, given);
  })
  .meta({ description: 'Version of the job file. Always 1.', enum: [VERSION], examples: [VERSION] });

export interface ShapeContext {
  known: MotifList;
  /** What a number without a unit means. */
  bare?: Unit | undefined;
  /** Lets required keys be missing, to read on in a file in which something was found wrong. */
  partial?: boolean;
}

/**
 * The form of a job file. Values arrive as text; what comes out is in mm, counts and shares.
 * Every key says what it means and what holds without it; the JSON Schema for editors is made from this.
 */
export function jobShape({ known, bare, partial = false }: ShapeContext) {
  const need = <T extends z.ZodType>(schema: T) => (partial ? schema.optional() : schema) as z.ZodOptional<T>;
  const lengths = lengthsIn(bare);
  return z
    .strictObject({
      evenfield: need(version),
      title: title.optional(),
      house: z
        .string()
        .meta({
          description:
            'A file of colours, motifs and letters that several jobs share, its path as seen from this file; what this job does not say itself is taken from there. Default: none.',
          examples: ['../my-house.yaml'],
        })
        .optional(),
      units: z
        .enum(UNITS)
        .meta({
          description:
            'What a number without a unit means, and how lengths are written back. Default: every length needs its unit, and the first one decides how they are written.',
          examples: ['in'],
        })
        .optional(),
      tape: single(
        lengths.size('1/16 in'),
        'The finest mark read on the tape. Default: 1/16 in, or 1 mm in metric jobs.',
      ).optional(),
      surface: need(
        z.enum(SURFACES).meta({
          description:
            'What is painted: a runner between two openings, a rug lying free in a room, a floor cloth, a whole floor from wall to wall, a border along the walls of a room, or the risers or treads of stairs.',
          examples: ['runner'],
        }),
      ),
      ...groundShape,
      site: siteShape(lengths).optional(),
      overall: overallShape(lengths).optional(),
      'end gap': range(
        lengths.strip('1/2"'),
        'Runner: plain strip left at both ends, inside the run. Default: 0; with stretch 1 demanded, 0 to 6 in (0 to 15 cm).',
        '0 to 1/2"',
      ).optional(),
      field: fieldShape(lengths, known, need).optional(),
      border: borderShape(lengths, known).optional(),
      'inner border': innerShape(lengths, known).optional(),
      medallion: medallionShape(known).optional(),
      lettering: letteringShape(lengths).optional(),
      reserve: reserveShape(lengths).optional(),
      cloth: clothShape(lengths).optional(),
      stairs: stairsShape(lengths).optional(),
      palette: paletteShape().optional(),
      colours: coloursShape().optional(),
      colourways: colourwaysShape().optional(),
      paint: paintShape().optional(),
      preview: previewShape(lengths).optional(),
      stencil: stencilShape(lengths).optional(),
      print: printShape(lengths).optional(),
    })
    .meta({ title: 'Evenfield job', description: 'Measurements and wishes for one painted floor.' });
}

/** A job as the person wrote it, read but with nothing filled in. */
export type Wishes = z.infer<ReturnType<typeof jobShape>>;
