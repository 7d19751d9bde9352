import * as z from 'zod';
import { type Refusal, shown } from '../../units/index.ts';
import { defined } from '../defined.ts';
import type { AxisWish, MeasuredRoom, Obstacle, Place } from '../job.ts';
import { range, refuseWith, single } from '../leaves.ts';
import type { Lengths } from './lengths.ts';
import { turnReader } from './turn.ts';

const refusal = (says: string, hint: string): Refusal => ({ ok: false, says, hint });

const wall = (description: string, example: string) =>
  z.enum(['near', 'right', 'far', 'left']).meta({ description, examples: [example] });

const corner = (description: string) =>
  z
    .enum(['near-left', 'near-right', 'far-right', 'far-left'])
    .meta({ description: `${description} Default: near-left.`, examples: ['near-left'] });

const SIDES = ['near', 'right', 'far', 'left'] as const;

/** A room in its short form, wall to wall. */
export interface PlainRoom {
  across: number;
  along: number;
}

/** A room by its four walls and one or both diagonals. */
export type Walls = Pick<MeasuredRoom, 'sides' | 'diagonals'>;

/** The room, in either form. */
export const roomShape = ({ size }: Lengths) =>
  z
    .strictObject({
      across: single(size('3.61 m'), 'Width of the room, across the axis of the rug.').optional(),
      along: single(size('4.27 m'), 'Length of the room, along the axis of the rug.').optional(),
      near: single(size(`12' 1/4"`), 'Length of the near wall, from corner to corner.').optional(),
      right: single(size(`10' 0 1/4"`), 'Length of the right wall. Default: see across.').optional(),
      far: single(size(`12' 1/2"`), 'Length of the far wall, from corner to corner.').optional(),
      left: single(size(`10'`), 'Length of the left wall. Default: see across.').optional(),
      diagonals: z
        .strictObject({
          'near-left to far-right': single(
            size(`15' 7 1/2"`),
            'From the near left corner to the far right one. Default: not measured; one of the two is needed.',
          ).optional(),
          'near-right to far-left': single(
            size(`15' 7 15/16"`),
            'From the near right corner to the far left one. Default: not measured; one of the two is needed.',
          ).optional(),
        })
        .meta({
          description:
            'One diagonal, or better both: with both, a wrong reading is found. Default: none, where the room is told by across and along.',
          examples: [`{ near-left to far-right: 15' 7 1/2", near-right to far-left: 15' 7 15/16" }`],
        })
        .optional(),
    })
    .transform((given, context): PlainRoom | Walls => {
      const { across, along, diagonals, ...sides } = given;
      const isPlain = across !== undefined || along !== undefined;
      const told = SIDES.filter((side) => sides[side] !== undefined);
      if (isPlain && (told.length > 0 || diagonals))
        return refuseWith(
          context,
          'job/room',
          refusal(
            'a room is told by across and along, or by its four walls and diagonals; here are some of both',
            'only one of the two',
          ),
          given,
        );
      const need = (key: string, example: string) =>
        refuseWith(
          context,
          'job/missing',
          refusal(
            `site.room.${key} is missing; a room is told by across and along, or by near, right, far, left and diagonals`,
            `${key}: ${example}`,
          ),
          given,
          [key],
        );
      if (isPlain) {
        if (across === undefined) return need('across', '3.61 m');
        return along === undefined ? need('along', '4.27 m') : { across, along };
      }
      const missing = SIDES.filter((side) => !told.includes(side));
      if (missing.length > 0) return missing.map((side) => need(side, `12' 1/4"`))[0]!;
      if (!diagonals || Object.keys(diagonals).length === 0)
        return refuseWith(
          context,
          'job/missing',
          refusal(
            'four walls alone may lean; one diagonal or both are needed',
            `diagonals: { near-left to far-right: 15' 7 1/2" }`,
          ),
          given,
          ['diagonals'],
        );
      return { sides: sides as MeasuredRoom['sides'], diagonals: defined(diagonals) };
    })
    .meta({
      description:
        'The room: for a rug wall to wall, for a rug or a runner by its four walls and one or both diagonals. Default: not known, and no margins are told.',
      examples: ['{ across: 3.61 m, along: 4.27 m }'],
    });

/** Openings by the edges of their casings. */
export const openingListShape = ({ size, strip }: Lengths) =>
  z.array(
    z.strictObject({
      wall: wall('The wall that the opening is in. No default.', 'near'),
      from: wall(
        'The corner it is measured from, named by the wall that meets there. Default: left on the near and far walls, near on the others.',
        'left',
      ).optional(),
      starts: single(strip('40"'), 'From that corner to the nearer edge of the casing. No default.'),
      ends: single(size('72 1/2"'), 'From the same corner to the other edge of the casing. No default.'),
    }),
  );

const placeShape = ({ strip }: Lengths) =>
  z.strictObject({
    across: single(strip('24"'), 'From the corner, along the near or far wall. No default.'),
    along: single(strip('36"'), 'From the corner, along the left or right wall. No default.'),
  });

const LONGEST_NAME = 30;

const obstacleName = z
  .string()
  .transform((given, context): string => {
    const text = given.trim();
    if (/^[\p{L}\p{N}][\p{L}\p{N}\p{P} ]*$/u.test(text) && text.length <= LONGEST_NAME) return text;
    const says = `${shown(text) || 'nothing'} is no name; a name is letters and figures, at most ${LONGEST_NAME}`;
    return refuseWith(context, 'job/title', refusal(says, 'hearth'), given);
  })
  .meta({ description: 'What the obstacle is called. Default: obstacle.', examples: ['hearth'] });

const FEWEST = 3;

/** What the work stays clear of. */
export const obstaclesShape = (lengths: Lengths) =>
  z
    .array(
      z
        .strictObject({
          name: obstacleName.optional(),
          corner: corner('The corner its distances are measured from.').optional(),
          across: range(
            lengths.strip('48"'),
            'A rectangle: from where to where along the near or far wall. Default: see outline.',
            '48" to 96"',
          ).optional(),
          along: range(
            lengths.strip('0 in'),
            'A rectangle: from where to where along the left or right wall. Default: see outline.',
            '0 to 20"',
          ).optional(),
          outline: z
            .array(placeShape(lengths))
            .meta({
              description: 'Any other outline: its corners in turn. Default: a rectangle, by across and along.',
              examples: ['[{ across: 24", along: 0 }, { across: 48", along: 0 }, { across: 36", along: 18" }]'],
            })
            .optional(),
        })
        .transform((given, context): Obstacle => {
          const { name = 'obstacle', corner = 'near-left', across, along, outline } = given;
          if (outline) {
            if (across || along)
              return refuseWith(
                context,
                'job/obstacle',
                refusal('an obstacle is a rectangle by across and along, or an outline, not both', 'only one of them'),
                given,
              );
            if (outline.length < FEWEST)
              return refuseWith(
                context,
                'job/obstacle',
                refusal(`an outline has at least ${FEWEST} corners; here are ${outline.length}`, 'its corners in turn'),
                given,
                ['outline'],
              );
            return { name, corner, outline };
          }
          if (!across || !along)
            return refuseWith(
              context,
              'job/obstacle',
              refusal(
                `a rectangle needs across and along, from the corner; ${across ? 'along' : 'across'} is missing`,
                across ? 'along: 0 to 20"' : 'across: 48" to 96"',
              ),
              given,
            );
          const at = (x: number, y: number): Place => ({ across: x, along: y });
          const [x0, x1, y0, y1] = [across.from, across.to, along.from, along.to];
          return { name, corner, outline: [at(x0, y0), at(x1, y0), at(x1, y1), at(x0, y1)] };
        }),
    )
    .meta({
      description:
        'What the work stays clear of: hearth, post, vent, stair opening, by distances from a corner along two walls. Default: nothing.',
      examples: ['[{ name: hearth, corner: far-left, across: 48" to 96", along: 0 to 20" }]'],
    });

const boardsShape = (lengths: Lengths) =>
  z
    .strictObject({
      wall: wall('The wall that the boards are told from. Default: see points.', 'left').optional(),
      turn: single(
        turnReader,
        'How far the boards turn from that wall, degrees, to the right as one looks along it. Default: 0.',
      ).optional(),
      corner: corner('The corner that the two points are measured from.').optional(),
      points: z
        .array(placeShape(lengths))
        .meta({
          description: 'Two places on one joint of the boards. Default: the wall and the turn.',
          examples: ['[{ across: 24", along: 12" }, { across: 24 3/8", along: 96" }]'],
        })
        .optional(),
    })
    .meta({
      description:
        'With the boards: by a wall and a turn, or by two points on one joint. Default: not with the boards.',
      examples: ['{ wall: left, turn: 0.5 }'],
    });

const TO_OPENING = 'opening to opening';

/** The line the work is laid along. */
export const axisShape = (lengths: Lengths) =>
  z
    .union([
      z
        .string()
        .transform((given, context): AxisWish => {
          if (given.trim() === TO_OPENING) return { way: 'openings' };
          const says = `${shown(given)} is no axis; allowed are ${TO_OPENING}, or one of the keys parallel to, square to, along boards`;
          return refuseWith(context, 'job/axis', refusal(says, 'axis: { parallel to: left }'), given);
        })
        .meta({ description: 'From the centre of the near opening to that of the far one.', enum: [TO_OPENING] }),
      z
        .strictObject({
          'parallel to': wall('The wall that the work lies parallel to. Default: another axis.', 'left').optional(),
          'square to': wall(
            'The wall whose threshold the work lies square to. Default: another axis.',
            'near',
          ).optional(),
          'along boards': boardsShape(lengths).optional(),
        })
        .transform((given, context): AxisWish => {
          const { 'parallel to': parallel, 'square to': square, 'along boards': boards } = given;
          const many = [parallel, square, boards].filter((one) => one !== undefined).length;
          const refuse = (says: string, hint: string, path: string[] = []): never =>
            refuseWith(context, 'job/axis', refusal(says, hint), given, path);
          if (many !== 1)
            return refuse(
              `an axis is laid in one way; here are ${many === 0 ? 'none' : many}`,
              'axis: { parallel to: left }',
            );
          if (parallel) return { way: 'parallel', wall: parallel };
          if (square) return { way: 'square', opening: square };
          const { wall, turn, corner, points } = boards!;
          if (points && (wall || turn !== undefined))
            return refuse('boards are told by a wall and a turn, or by two points, not both', 'only one of them', [
              'along boards',
            ]);
          if (!points) {
            if (corner || !wall)
              return refuse('boards are told by a wall and a turn, or by two points', '{ wall: left, turn: 0.5 }', [
                'along boards',
              ]);
            return { way: 'boards', wall, turn: ((turn ?? 0) * Math.PI) / 180 };
          }
          const [first, last] = points;
          if (points.length !== 2 || !first || !last)
            return refuse(
              `a line of boards is told by two points; here ${points.length === 1 ? 'is' : 'are'} ${points.length}`,
              '[{ across: 24", along: 12" }, { across: 24 3/8", along: 96" }]',
              ['along boards', 'points'],
            );
          return { way: 'boards', corner: corner ?? 'near-left', line: [first, last] };
        }),
    ])
    .meta({
      description:
        'In a room with four walls: what the work is laid along. Default: a runner from opening to opening, a rug parallel to the longest wall.',
      examples: ['{ parallel to: left }'],
    });
