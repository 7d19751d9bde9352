import * as z from 'zod';
import { range } from '../leaves.ts';
import { type MotifList, motifChoice, motifName } from '../motif-choice.ts';
import { stretchReader } from '../readers.ts';
import type { Lengths } from './lengths.ts';

const MOTIF = 'The motif of the border; `none` for no border. Default: plain-band.';

export const borderShape = ({ size }: Lengths, known: MotifList) =>
  z
    .union([
      motifName(known, 'border', ['none']),
      z.strictObject({
        motif: motifChoice(known, 'border', MOTIF, ['none']).optional(),
        width: range(
          size('3"'),
          'Width of the border. Default: 2 to 4 in, wished 3 in (metric: 5 to 10 cm, wished 7.5 cm), less in proportion where the work is narrower than 24 in (60 cm).',
          '2 1/2" to 4"',
        ).optional(),
        stretch: range(
          stretchReader,
          'How far a repeat of the border may be drawn out along its side. Default: 0.85 to 1.15.',
          '0.9 to 1.1',
        ).optional(),
        corner: motifChoice(known, 'corner', 'The motif of the corner blocks. Default: plain.').optional(),
      }),
    ])
    .meta({
      description: 'The band round the field; `none` for no border. Default: plain-band.',
      examples: ['{ motif: sawtooth, width: 2 1/2" to 4" }'],
    });

export const reserveShape = ({ strip }: Lengths) =>
  z
    .union([
      range(strip('1"'), 'On all four sides.', '1"'),
      z.strictObject({
        across: range(strip('1"'), 'Strip at the left and the right. Default: 0.', '1"').optional(),
        along: range(strip('1"'), 'Strip at the near and the far end. Default: 0.', '1"').optional(),
      }),
    ])
    .meta({
      description: 'Plain strip between field and border. One value means both ways. Default: 0.',
      examples: ['1"'],
    });
