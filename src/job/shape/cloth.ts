import * as z from 'zod';
import { single } from '../leaves.ts';
import type { Lengths } from './lengths.ts';

const pieceShape = ({ size }: Lengths, when: string, [across, along]: [string, string]) =>
  z
    .strictObject({
      across: single(size(across), `Across the roll, ${when}. No default.`),
      along: single(size(along), `Along the roll, ${when}. No default.`),
    })
    .meta({
      description: `The trial piece ${when}, across and along the roll. No default.`,
      examples: [`{ across: ${across}, along: ${along} }`],
    });

/** What a floor cloth has beside its finished size. */
export const clothShape = (lengths: Lengths) =>
  z
    .strictObject({
      hem: single(
        lengths.strip('1 in'),
        'Turned under on all four sides. 0 leaves the edge raw. Default: 1 in (25 mm).',
      ).optional(),
      corners: z
        .enum(['mitred', 'folded'])
        .meta({
          description:
            'The corners of the hem: `mitred`, cut off so that they meet without a lump, or `folded` one over the other. Default: mitred.',
          examples: ['mitred'],
        })
        .optional(),
      trim: single(
        lengths.strip('1 in'),
        'Canvas left all round while it is sized and primed, and cut off square after it. Default: 1 in (25 mm).',
      ).optional(),
      shrinkage: z
        .strictObject({
          before: pieceShape(lengths, 'as it was drawn, before sizing and priming', ['20 in', '20 in']),
          after: pieceShape(lengths, 'as it measures when it is dry', ['19 3/4 in', '19 1/2 in']),
        })
        .meta({
          description:
            'What sizing and priming take, by a trial piece of the same canvas: its size before, and after. Default: not known, and nothing is added for it.',
          examples: ['{ before: { across: 20", along: 20" }, after: { across: 19 3/4", along: 19 1/2" } }'],
        })
        .optional(),
      rolls: z
        .array(single(lengths.size('54 in'), 'A width of the roll. No default.'))
        .meta({
          description: 'The widths in which the canvas is sold. Default: none told, and nothing to buy is said.',
          examples: ['[54 in, 60 in, 72 in]'],
        })
        .optional(),
      waste: single(lengths.strip('1/2 in'), 'Cut off at each side of the roll, the selvedge. Default: 0.').optional(),
      'edge height': single(
        lengths.size('3/16 in'),
        'How high the edge of the finished cloth stands above the floor, pad and hem together. Default: not known, and the job sheet gives the limits only.',
      ).optional(),
    })
    .meta({
      description:
        'Floor cloth: what is turned under, what the canvas shrinks by, what it is cut from. Default: a hem of 1 in (25 mm), no shrinkage known.',
      examples: ['{ hem: 1 in, rolls: [54 in, 72 in] }'],
    });
