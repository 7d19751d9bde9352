import * as z from 'zod';
import { range, single } from '../leaves.ts';
import type { Lengths } from './lengths.ts';
import { placeShape } from './place.ts';
import { axisShape, obstaclesShape, openingListShape, roomShape } from './room.ts';
import { doorsShape, wallsShape } from './room-border.ts';
import { riserShape, stepsShape, treadShape } from './stairs.ts';

export const siteShape = (lengths: Lengths) => {
  const { size } = lengths;
  return z
    .strictObject({
      run: single(
        size(`19' 7 3/8"`),
        'Runner: the length from threshold to threshold, at the centre of the openings.',
      ).optional(),
      'run at sides': z
        .strictObject({
          left: single(size(`19' 7 1/2"`), 'The run at the left of the openings. No default.'),
          right: single(size(`19' 7 1/4"`), 'The run at the right of the openings. No default.'),
        })
        .meta({
          description:
            'Runner: the same at the left and right of the openings; the work takes the least of the three. Default: as at the centre.',
          examples: [`{ left: 19' 7 1/2", right: 19' 7 1/4" }`],
        })
        .optional(),
      openings: z
        .union([
          single(size('32"'), 'Both openings.'),
          z.strictObject({
            near: single(size('32 1/2"'), 'Width of the opening at the near end.'),
            far: single(size('30"'), 'Width of the opening at the far end.'),
          }),
          openingListShape(lengths),
        ])
        .meta({
          description:
            'Runner: the widths of the openings, over the casing. One length means both. In a room with four walls: a list, each by the edges of its casing from a corner.',
          examples: ['{ near: 32 1/2", far: 30" }'],
        })
        .optional(),
      room: roomShape(lengths).optional(),
      obstacles: obstaclesShape(lengths).optional(),
      axis: axisShape(lengths).optional(),
      walls: wallsShape(lengths).optional(),
      doors: doorsShape(lengths).optional(),
      place: placeShape(lengths).optional(),
      steps: stepsShape(lengths).optional(),
      riser: riserShape(lengths).optional(),
      tread: treadShape(lengths).optional(),
    })
    .meta({ description: 'What was measured.', examples: [`{ run: 19' 7 3/8", openings: 32" }`] });
};

export const overallShape = ({ size }: Lengths) =>
  z
    .strictObject({
      across: range(size('34"'), 'Width over everything.', '34" to 38"').optional(),
      along: range(
        size("7'"),
        'Length over everything. A runner between thresholds takes its length from `site: run`; with this in its place its ends are free.',
        "7'",
      ).optional(),
    })
    .meta({
      description:
        'Size over everything, border and reserves included. A rug and a floor cloth need it; for a runner it is open by default.',
      examples: [`{ across: 4' to 5', along: 7' }`],
    });
