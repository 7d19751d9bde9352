import * as z from 'zod';
import { parseNumber, type Refusal, shown } from '../../units/index.ts';
import { refuseWith, single, typed } from '../leaves.ts';
import type { Reader } from '../readers.ts';
import type { Lengths } from './lengths.ts';

const refused = (says: string, hint: string): Refusal => ({ ok: false, says, hint });

const [LEAST_SHARE, MOST_SHARE] = [0.01, 0.9];
/** A share as `30 %` or `0.3`. */
const look: Reader = {
  code: 'job/look',
  example: '30 %',
  read(text) {
    const read = parseNumber(text.replace(/\s*%\s*$/, ''));
    if (!read.ok) return refused(read.says, '30 %');
    const value = /%\s*$/.test(text) ? read.value / 100 : read.value;
    if (value === 0) return refused(`${shown(text)} would be seen nowhere`, 'leave the line out, or from 1 % to 90 %');
    if (value >= LEAST_SHARE && value <= MOST_SHARE) return { ok: true, value };
    return refused(`${shown(text)} is not from 1 % to 90 %`, '30 %');
  },
};

const MOST_SEED = 999_999;
const seed: Reader = {
  code: 'job/seed',
  example: '7',
  read(text) {
    const read = parseNumber(text);
    if (!read.ok) return refused(read.says, '7');
    if (Number.isInteger(read.value) && read.value >= 0 && read.value <= MOST_SEED) return read;
    return refused(`${shown(text)} is not a whole number from 0 to ${MOST_SEED}`, '7');
  },
};

const MOST_PIXELS = 30_000;
const pixel: Reader = {
  code: 'job/pixel',
  example: '412',
  read(text) {
    const read = parseNumber(text.replace(/\s*px\s*$/i, ''));
    if (!read.ok) return refused(read.says, '412');
    if (read.value <= MOST_PIXELS) return read;
    return refused(`${shown(text)} is not a number of pixels from 0 to ${MOST_PIXELS}`, '412');
  },
};

/** A length that may lie on the other side of where it is measured from: `-6"`. */
const eitherWay = (reader: Reader): Reader => ({
  ...reader,
  read(text) {
    const below = /^\s*[-−–]\s*(?=[\d.½¼¾])/.exec(text);
    const read = reader.read(below ? text.slice(below[0].length) : text);
    return read.ok && below ? { ok: true, value: -read.value } : read;
  },
});

const looksShape = () =>
  z
    .strictObject({
      'thin coat': single(
        look,
        'So much of the paint of the pattern is missing because it was put on thinly, 1 % to 90 %. Default: none.',
      ).optional(),
      'dry brush': single(
        look,
        'So much of the paint of the pattern is missing at the ragged edges that a nearly dry brush or foam leaves, 1 % to 90 %. Default: none.',
      ).optional(),
      wear: single(
        look,
        'So much of the paint of the pattern has gone under feet, on the line where people walk, 2 ft (610 mm) wide; 1 % to 90 %. Default: none.',
      ).optional(),
      walks: z
        .enum(['along', 'across'])
        .meta({
          description: 'Which way people walk over the middle of the work. Default: along.',
          examples: ['along'],
        })
        .optional(),
      seed: single(seed, 'Another number gives another play of chance. Default: 1.').optional(),
    })
    .transform((given, context) => {
      const { 'thin coat': thinCoat = 0, 'dry brush': dryBrush = 0, wear = 0, walks = 'along', seed = 1 } = given;
      if (thinCoat + dryBrush + wear > 0) return { thinCoat, dryBrush, wear, walks, seed } as const;
      const says = 'no look is named; there are thin coat, dry brush and wear';
      return refuseWith(context, 'job/look', refused(says, '{ wear: 40 % }, or leave looks out'), given);
    })
    .meta({
      description: 'The work when it is not new, in previews only. Default: evenly and fully painted.',
      examples: ['{ thin coat: 30 %, wear: 40 % }'],
    });

const corner = (name: string, example: string) =>
  z
    .array(typed)
    .transform((given, context): readonly [number, number] => {
      const refuse = (refusal: Refusal) => refuseWith(context, 'job/pixel', refusal, given);
      if (given.length !== 2)
        return refuse(
          refused(
            `a corner is two numbers of pixels, from the left and from the top of the photo; here are ${given.length}`,
            example,
          ),
        );
      const [left, top] = given.map((one) => pixel.read(String(one)));
      if (!left!.ok) return refuse(left!);
      if (!top!.ok) return refuse(top!);
      return [left!.value, top!.value];
    })
    .meta({
      description: `Where the ${name} corner of the rectangle is in the photo: pixels from the left, pixels from the top. No default.`,
      examples: [example],
    });

const photoShape = ({ size, strip }: Lengths) =>
  z
    .strictObject({
      file: z.string().meta({
        description: 'The photo, a PNG or a JPEG, its path as seen from this file. No default.',
        examples: ['./hall-floor.jpg'],
      }),
      rectangle: z
        .strictObject({
          across: single(size('30"'), 'How wide it is, across the work. No default.'),
          along: single(size("8'"), 'How long it is, along the work. No default.'),
        })
        .meta({
          description:
            'A rectangle on the floor in the photo whose size was measured: boards or tiles, a mat, tape laid for it; the larger, the truer. No default.',
          examples: [`{ across: 30", along: 8' }`],
        }),
      corners: z
        .strictObject({
          'near-left': corner('near left', '[412, 1630]'),
          'near-right': corner('near right', '[1610, 1622]'),
          'far-right': corner('far right', '[1220, 700]'),
          'far-left': corner('far left', '[790, 705]'),
        })
        .meta({
          description:
            'Where the four corners of the rectangle are in the photo; near and far, left and right as one stands at the near end of the work and looks along it. No default.',
          examples: [
            '{ near-left: [412, 1630], near-right: [1610, 1622], far-right: [1220, 700], far-left: [790, 705] }',
          ],
        }),
      at: z
        .strictObject({
          across: single(
            eitherWay(strip('4"')),
            'To the right of the corner of the rectangle; to the left with a minus. No default.',
          ),
          along: single(
            eitherWay(strip('6"')),
            'Beyond the corner of the rectangle; before it with a minus. No default.',
          ),
        })
        .meta({
          description:
            'Where the near left corner of the work lies from the near left corner of the rectangle. Default: the work lies centred on the rectangle.',
          examples: ['{ across: 4", along: -6" }'],
        })
        .optional(),
      light: z
        .enum(['yes', 'no'])
        .meta({
          description: 'Whether the light and shade of the photo lie over the paint. Default: yes.',
          examples: ['no'],
        })
        .optional(),
    })
    .meta({
      description: 'A photo of the floor, into which the work is laid as it would be seen. Default: none.',
      examples: [
        `{ file: ./hall-floor.jpg, rectangle: { across: 30", along: 8' }, corners: { near-left: [412, 1630], near-right: [1610, 1622], far-right: [1220, 700], far-left: [790, 705] } }`,
      ],
    });

/** How the work is shown by `evenfield preview`. */
export const previewShape = (lengths: Lengths) =>
  z
    .strictObject({
      colourway: z
        .string()
        .meta({
          description: 'The colourway to show, by its name. Default: the colours of the job.',
          examples: ['Winter'],
        })
        .optional(),
      looks: looksShape().optional(),
      photo: photoShape(lengths).optional(),
    })
    .meta({
      description: 'How `evenfield preview` shows the work; no stencil changes by it. Default: new and flat.',
      examples: ['{ looks: { wear: 40 % } }'],
    });
