import * as z from 'zod';
import { range } from '../leaves.ts';
import { type MotifList, motifChoice } from '../motif-choice.ts';
import { countReader, stretchReader } from '../readers.ts';
import { alternateShape, insetShape } from './laid-over.ts';
import type { Lengths } from './lengths.ts';

const landing = (description: string) => z.enum(['whole', 'half', 'either']).meta({ description, examples: ['whole'] });

/** `need` decides whether the motif may be missing. */
export const fieldShape = (
  { size, repeat }: Lengths,
  known: MotifList,
  need: <T extends z.ZodType>(schema: T) => z.ZodOptional<T>,
) =>
  z
    .strictObject({
      motif: need(motifChoice(known, 'field', 'The motif of the field, alone or as `{ name: …, <setting>: … }`.')),
      size: z
        .strictObject({
          across: range(size('34"'), 'Width of the field.', '34"').optional(),
          along: range(size("6'"), 'Length of the field.', "6'").optional(),
        })
        .meta({
          description: 'Fixes the size of the field itself, inside its border. Default: open.',
          examples: ['{ across: 34" }'],
        })
        .optional(),
      repeats: z
        .strictObject({
          across: range(countReader, 'Repeats across.', '5').optional(),
          along: range(countReader, 'Repeats along.', '20 to 30').optional(),
        })
        .meta({
          description: 'How many repeats, in whole and half ones. Default: open.',
          examples: ['{ across: 5, along: 20 to 30 }'],
        })
        .optional(),
      pitch: z
        .strictObject({
          across: range(repeat('6"'), 'Width of one repeat.', '6" to 8"').optional(),
          along: range(repeat('6"'), 'Length of one repeat.', '6" to 8"').optional(),
        })
        .meta({ description: 'Size of one repeat. Default: open.', examples: ['{ across: 6" to 8" }'] })
        .optional(),
      stretch: range(
        stretchReader,
        'How far a repeat may be drawn out along the axis; 1 is true to shape. Default: 0.95 to 1.05. With 1, squares stay square.',
        '0.97 to 1.03',
      ).optional(),
      landing: z
        .union([
          landing('How the pattern meets all edges of the field.'),
          z.strictObject({
            across: landing('How it meets the left and the right edge. Default: either.').optional(),
            along: landing('How it meets the near and the far edge. Default: either.').optional(),
          }),
        ])
        .meta({
          description:
            'How the pattern meets the edges of the field: on whole repeats, on half ones, or whichever fits; one for both ways, or one across and one along. Default: either.',
          examples: ['whole'],
        })
        .optional(),
      alternate: alternateShape(known).optional(),
      inset: insetShape(known).optional(),
    })
    .meta({
      description: 'The patterned rectangle inside the border.',
      examples: ['{ motif: diamond, repeats: { across: 5 } }'],
    });
