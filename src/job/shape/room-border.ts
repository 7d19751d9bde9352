import * as z from 'zod';
import { shown } from '../../units/index.ts';
import { refuseWith, single, typed } from '../leaves.ts';
import type { Lengths } from './lengths.ts';

const LONGEST_NAME = 30;

const wallName = z
  .string()
  .transform((given, context): string => {
    const text = given.trim();
    if (/^\p{L}[\p{L}\p{N}\p{P} ]*$/u.test(text) && text.length <= LONGEST_NAME) return text;
    const says = `${shown(text) || 'nothing'} is no name for a wall; a name begins with a letter and is at most ${LONGEST_NAME} letters and figures`;
    return refuseWith(context, 'job/title', { ok: false, says, hint: 'window wall' }, given);
  })
  .meta({
    description: 'What the wall is called. Default: its number, such as wall 3.',
    examples: ['face of the breast'],
  });

/** The walls of a room of right angles, in turn. */
export const wallsShape = ({ size }: Lengths) =>
  z
    .array(
      z.union([
        single(size(`4' 2"`), 'Length of a wall that ends in an inside corner.').transform((length) => ({ length })),
        z.strictObject({
          length: single(size(`4' 2"`), 'Length of the wall, from corner to corner. No default.'),
          corner: z
            .enum(['inside', 'outside'])
            .meta({
              description:
                'The corner at its end: inside, where one turns right, or outside, where one turns left, as round a chimney breast. Default: inside.',
              examples: ['outside'],
            })
            .optional(),
          name: wallName.optional(),
        }),
      ]),
    )
    .meta({
      description:
        'Room border: the walls in turn, as one walks round the room with the wall at one’s left hand: from the near left corner up the left wall, and on clockwise. Default: needed by a room border, unknown to the rest.',
      examples: [`[13', 11', 13', { length: 11', name: window wall }]`],
    });

/** The doors in those walls. */
export const doorsShape = ({ size, strip }: Lengths) =>
  z
    .array(
      z.strictObject({
        wall: typed
          .transform((given) => String(given).trim())
          .meta({
            description: 'The wall it is in, by its number or its name. No default.',
            examples: ['4'],
          }),
        starts: single(strip('20"'), 'From the beginning of the wall to the edge of the casing. No default.'),
        ends: single(size('52"'), 'From the beginning of the wall to the other edge of the casing. No default.'),
      }),
    )
    .meta({
      description: 'Room border: doors, by the edges of their casings. Default: none.',
      examples: ['[{ wall: 4, starts: 20", ends: 52" }]'],
    });

/** What a border along walls can do besides. */
export const alongWalls = {
  pitch: z
    .enum(['one', 'each wall'])
    .meta({
      description: 'Room border: one pitch for all walls, or each wall its own, the nearest to true. Default: one.',
      examples: ['each wall'],
    })
    .optional(),
  'at doors': z
    .enum(['stop', 'run on'])
    .meta({
      description:
        'Room border: it stops at a whole repeat before the casing, at least 1 in (25 mm) away, or runs on past the door. Default: stop.',
      examples: ['run on'],
    })
    .optional(),
};
