import * as z from 'zod';
import { single } from '../leaves.ts';
import { cuttingShape } from './cutting.ts';
import type { Lengths } from './lengths.ts';
import { meetingShape } from './meeting.ts';

export const stencilShape = (lengths: Lengths) => {
  const { size, strip, small } = lengths;
  return z
    .strictObject({
      bridge: single(
        small('3 mm'),
        'Least width of material between two windows. Default: 3 mm (common practice).',
      ).optional(),
      window: single(small('1.5 mm'), 'Least width of a window. Default: 1.5 mm (common practice).').optional(),
      touching: z
        .enum(['by turns', 'held apart', 'alone'])
        .meta({
          description:
            'Repeats that touch at tips or along edges: painted by turns, so that a sheet carries every second one; or held apart by a bridge; or one repeat alone to a sheet. Default: by turns.',
          examples: ['held apart'],
        })
        .optional(),
      'colours meet': meetingShape(lengths).optional(),
      corners: z
        .enum(['sharp', 'round'])
        .meta({
          description:
            'The corners where a bridge meets a window: sharp, or rounded so that film does not tear there. Default: sharp.',
          examples: ['round'],
        })
        .optional(),
      gaps: z
        .enum(['open', 'painted'])
        .meta({
          description:
            'The gaps that bridges leave in the paint: left open, or painted through a second sheet that laps over them. Default: open.',
          examples: ['painted'],
        })
        .optional(),
      lap: single(
        small('1 mm'),
        'How far the second sheet laps over what is painted already. Default: 1 mm (common practice).',
      ).optional(),
      sheet: z
        .strictObject({
          across: single(size('18"'), 'Width of the film or card. Default: 18 in.').optional(),
          along: single(size('24"'), 'Length of the film or card. Default: 24 in.').optional(),
          rim: single(strip('1"'), 'Rim kept clear of windows. Default: 1 in.').optional(),
        })
        .meta({
          description: 'The film or card a stencil is cut from. Default: 18 by 24 in with 1 in of rim.',
          examples: ['{ across: 18", along: 24" }'],
        })
        .optional(),
      cutting: cuttingShape(lengths).optional(),
    })
    .meta({
      description: 'How fine the stencil is, and what it is cut from. Default: see each.',
      examples: ['{ bridge: 3 mm }'],
    });
};
