import * as z from 'zod';
import { single } from '../leaves.ts';
import { type MotifList, motifChoice, motifName } from '../motif-choice.ts';
import { roomReader, shareReader } from '../readers.ts';

const BY = ['row', 'column', 'checker'] as const;

/** Every second repeat in exchanged colours, or another motif. */
export const alternateShape = (known: MotifList) =>
  z
    .union([
      z.enum(BY).transform((by): { by: (typeof BY)[number]; with?: undefined } => ({ by })),
      z.strictObject({
        by: z.enum(BY).meta({
          description: 'Every second row, every second column, or as on a draughts board.',
          examples: ['checker'],
        }),
        with: motifChoice(known, 'field', 'Another motif. Default: the same in exchanged colours.').optional(),
      }),
    ])
    .meta({
      description:
        'Every second repeat is another: `row`, `column` or `checker` exchanges its colours; `{ by: …, with: … }` names another motif. Default: all alike.',
      examples: ['checker'],
    });

/** A motif inside the motif. */
export const insetShape = (known: MotifList) =>
  z
    .union([
      motifName(known, 'field').transform((motif) => ({ motif, size: undefined })),
      z.strictObject({
        motif: motifChoice(known, 'field', 'The motif inside the motif.'),
        size: single(shareReader, 'Its share of the room there, up to 1. Default: 0.7.').optional(),
      }),
    ])
    .meta({
      description: 'A motif inside the motif, where that has room for one. Default: none.',
      examples: ['{ motif: eight-point-star, size: 0.7 }'],
    });

export const medallionShape = (known: MotifList) =>
  z
    .strictObject({
      motif: motifChoice(known, 'medallion', 'The medallion.'),
      repeats: z
        .union([
          single(roomReader, 'Both ways.'),
          z.strictObject({
            across: single(roomReader, 'Repeats across.'),
            along: single(roomReader, 'Repeats along.'),
          }),
        ])
        .meta({
          description: 'The room it takes in the middle of the field, in whole repeats. Default: 3.',
          examples: ['{ across: 3, along: 5 }'],
        })
        .optional(),
    })
    .meta({
      description: 'Stands in the middle of the field. Default: none.',
      examples: ['{ motif: compass-rose, repeats: 3 }'],
    });
