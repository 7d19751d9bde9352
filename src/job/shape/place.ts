import * as z from 'zod';
import { shown } from '../../units/index.ts';
import { defined } from '../defined.ts';
import type { Place, RugPlace } from '../job.ts';
import { range, refuseWith, single } from '../leaves.ts';
import type { Lengths } from './lengths.ts';

const CENTRED = 'centred';

const tableShape = (lengths: Lengths) =>
  z
    .strictObject({
      corner: z
        .enum(['near-left', 'near-right', 'far-right', 'far-left'])
        .meta({
          description: 'The corner its distances are measured from. Default: near-left.',
          examples: ['near-left'],
        })
        .optional(),
      across: range(
        lengths.strip('40"'),
        'From where to where the table stands, along the near or far wall. No default.',
        '40" to 76"',
      ),
      along: range(
        lengths.strip('48"'),
        'From where to where it stands, along the left or right wall. No default.',
        '48" to 9\'',
      ),
      chairs: single(
        lengths.strip('24"'),
        'How far behind its edge a chair stands when it is pulled out; 0 for none. Default: 24 in (60 cm).',
      ).optional(),
    })
    .meta({
      description: 'A rectangle, told as an obstacle is; the rug lies centred under it. Default: no table.',
      examples: ['{ corner: near-left, across: 40" to 76", along: 48" to 9\' }'],
    });

/** Where a rug lies in a room of four walls. */
export const placeShape = (lengths: Lengths) =>
  z
    .union([
      z
        .string()
        .transform((given, context): RugPlace => {
          if (given.trim() === CENTRED) return { way: 'centred' };
          const says = `${shown(given) || 'nothing'} is no place; a rug lies centred, on a wall, or under a table`;
          return refuseWith(
            context,
            'job/place',
            { ok: false, says, hint: 'place: { on wall: left, off: 12" }' },
            given,
          );
        })
        .meta({ description: 'In the middle of the largest rectangle that the room leaves.', enum: [CENTRED] }),
      z
        .strictObject({
          'on wall': z
            .enum(['near', 'right', 'far', 'left'])
            .meta({ description: 'The wall whose middle it is centred on. Default: no wall.', examples: ['left'] })
            .optional(),
          off: single(
            lengths.strip('12"'),
            'From that wall to the edge of the rug, where they are nearest. Default: 0.',
          ).optional(),
          'under table': tableShape(lengths).optional(),
        })
        .transform((given, context): RugPlace => {
          const { 'on wall': wall, off, 'under table': table } = given;
          const refuse = (says: string, hint: string): never =>
            refuseWith(context, 'job/place', { ok: false, says, hint }, given);
          if (wall !== undefined && table === undefined) return { way: 'wall', wall, off: off ?? 0 };
          if (wall === undefined && table !== undefined && off === undefined) {
            const { corner = 'near-left', across, along, chairs } = table;
            const at = (x: number, y: number): Place => ({ across: x, along: y });
            const outline = [
              at(across.from, along.from),
              at(across.to, along.from),
              at(across.to, along.to),
              at(across.from, along.to),
            ];
            return { way: 'table', corner, outline, ...defined({ chairs }) };
          }
          if (wall === undefined && table === undefined)
            return refuse(
              'a place is told by a wall or by a table; here is neither',
              'place: { on wall: left, off: 12" }',
            );
          return refuse('a place is told by a wall and how far off it, or by a table, not both', 'only one of the two');
        }),
    ])
    .meta({
      description:
        'Rug in a room with four walls: where it lies. Default: centred on the largest rectangle that the room leaves.',
      examples: ['{ on wall: left, off: 12" }'],
    });
