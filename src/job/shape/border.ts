import * as z from 'zod';
import { range, single } from '../leaves.ts';
import { type MotifList, motifChoice, motifName } from '../motif-choice.ts';
import { stretchReader } from '../readers.ts';
import type { Lengths } from './lengths.ts';
import { alongWalls } from './room-border.ts';

const MOTIF = 'The motif of the border; `none` for no border. Default: plain-band.';

/** How a border goes round its corners. */
const wayShape = {
  turn: z
    .enum(['block', 'mitre', 'own', 'butt'])
    .meta({
      description:
        'How it turns a corner: a block of its own, cut on the diagonal, drawn by the border itself, or with the near and far sides run through. Default: own where the border has a corner of its own and none is named, otherwise block.',
      examples: ['mitre'],
    })
    .optional(),
  run: z
    .enum(['reverse', 'round'])
    .meta({
      description:
        'A border that runs one way reverses at the centre of each side, or runs round the work. Default: reverse.',
      examples: ['reverse'],
    })
    .optional(),
};

export const borderShape = ({ repeat }: Lengths, known: MotifList) =>
  z
    .union([
      motifName(known, 'border', ['none']),
      z.strictObject({
        motif: motifChoice(known, 'border', MOTIF, ['none']).optional(),
        width: range(
          repeat('3"'),
          'Width of the border. Default: 2 to 4 in, wished 3 in (metric: 5 to 10 cm, wished 7.5 cm), less in proportion where the work is narrower than 24 in (60 cm).',
          '2 1/2" to 4"',
        ).optional(),
        stretch: range(
          stretchReader,
          'How far a repeat of the border may be drawn out along its side. Default: 0.85 to 1.15.',
          '0.9 to 1.1',
        ).optional(),
        corner: motifChoice(known, 'corner', 'The motif of the corner blocks. Default: plain.').optional(),
        ...wayShape,
        ...alongWalls,
      }),
    ])
    .meta({
      description: 'The band round the field; `none` for no border. Default: plain-band.',
      examples: ['{ motif: sawtooth, width: 2 1/2" to 4" }'],
    });

export const innerShape = ({ repeat, strip }: Lengths, known: MotifList) =>
  z
    .strictObject({
      motif: motifChoice(known, 'border', 'The motif of the second border.'),
      width: single(repeat('1 1/2"'), 'Its width. Default: half the wished border.').optional(),
      gap: single(strip('1/2"'), 'Plain strip between it and the field. Default: 0.').optional(),
      stretch: range(
        stretchReader,
        'How far a repeat may be drawn out. Default: 0.85 to 1.15.',
        '0.9 to 1.1',
      ).optional(),
      corner: motifChoice(known, 'corner', 'The motif of its corner blocks. Default: plain.').optional(),
      ...wayShape,
    })
    .meta({
      description: 'A second border inside the first; `reserve` is the plain strip between the two. Default: none.',
      examples: ['{ motif: dentil, width: 1 1/2" }'],
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
      description:
        'Plain strip between field and border. One value means both ways. Default: 0; for a room border, where it lies between wall and border, 2 to 6 in (50 to 150 mm).',
      examples: ['1"'],
    });
