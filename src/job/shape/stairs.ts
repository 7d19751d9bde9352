import * as z from 'zod';
import { parseNumber, shown } from '../../units/index.ts';
import { range, single } from '../leaves.ts';
import type { Reader } from '../readers.ts';
import type { Lengths } from './lengths.ts';

export const MOST_STEPS = 60;

/** How many steps a flight has. */
const stepsReader: Reader = {
  code: 'job/steps',
  example: '8',
  read(text) {
    const read = parseNumber(text);
    if (!read.ok) return read;
    if (Number.isInteger(read.value) && read.value >= 1 && read.value <= MOST_STEPS) return read;
    return {
      ok: false,
      says: `${shown(text)} is no number of steps; a flight has 1 to ${MOST_STEPS}`,
      hint: '8',
    };
  },
};

/** The upright of a step. */
export const riserShape = ({ size }: Lengths) =>
  z
    .strictObject({
      across: single(size('35 7/8"'), 'Width of the riser, from side to side. No default.'),
      high: single(size('7 1/2"'), 'Height of the riser, from the tread below to the nosing above. No default.'),
    })
    .meta({
      description: 'The upright of every step, where all are alike. Default: each in the list of steps.',
      examples: ['{ across: 35 7/8", high: 7 1/2" }'],
    });

/** The top of a step. */
export const treadShape = ({ size }: Lengths) =>
  z
    .strictObject({
      across: single(size('36"'), 'Width of the tread, from side to side. No default.'),
      deep: single(size('10 1/4"'), 'Depth of the tread, from the front of its nosing to the next riser. No default.'),
    })
    .meta({
      description: 'The top of every step, where all are alike. Default: each in the list of steps, or not measured.',
      examples: ['{ across: 36", deep: 10 1/4" }'],
    });

/** The steps of a flight, from the bottom up, or how many there are. */
export const stepsShape = (lengths: Lengths) =>
  z
    .union([
      single(stepsReader, 'How many steps, where all are alike.'),
      z.array(z.strictObject({ riser: riserShape(lengths).optional(), tread: treadShape(lengths).optional() })),
    ])
    .meta({
      description:
        'Stairs: every step as measured, from the bottom up, or how many there are where all are alike. Default: none, for anything but stairs.',
      examples: ['[{ riser: { across: 35 7/8", high: 7 1/2" } }, { riser: { across: 36", high: 7 3/8" } }]'],
    });

/** How the panel stands on the steps of a flight. */
export const stairsShape = ({ strip }: Lengths) =>
  z
    .strictObject({
      painted: z
        .enum(['risers', 'treads'])
        .meta({
          description: 'What is painted: the uprights or the tops of the steps. Default: risers.',
          examples: ['risers'],
        })
        .optional(),
      stands: z
        .enum(['middle', 'foot'])
        .meta({
          description:
            'Where the panel stands on a step: in the `middle`, or at the `foot`, on the line of the tread below (on a tread: behind its nosing). Default: middle.',
          examples: ['middle'],
        })
        .optional(),
      margin: z
        .strictObject({
          sides: range(
            strip('1/2 in'),
            'Plain strip left and right of the panel, alike on each step. Default: 1/2 in to 3 in (12 to 75 mm).',
            '1/2" to 3"',
          ).optional(),
          risers: range(
            strip('1/4 in'),
            'Plain strip above the panel on a riser, and below it where it stands in the middle. Default: 1/4 in to 1 1/2 in (6 to 40 mm).',
            '1/4" to 1 1/2"',
          ).optional(),
          treads: range(
            strip('1/2 in'),
            'Plain strip behind the panel on a tread, and between it and the nosing where it stands in the middle. Default: 1/2 in to 3 in (12 to 75 mm).',
            '1/2" to 3"',
          ).optional(),
        })
        .meta({
          description:
            'Plain strips round the panel. The panel has one size on every step; what a step has more goes into its strips. Default: see each.',
          examples: ['{ sides: 1/2" to 3", risers: 1/4" to 1 1/2" }'],
        })
        .optional(),
      nosing: single(
        strip('1 in'),
        'Treads: plain strip at the front, where feet wear and slip. Default: 1 in (25 mm).',
      ).optional(),
    })
    .meta({
      description: 'Stairs: what is painted, and where it stands on each step. Default: risers, in the middle.',
      examples: ['{ painted: risers, margin: { sides: 1" to 3" } }'],
    });
