import * as z from 'zod';
import { fromSolids } from '../../paint/spreading.ts';
import { parseCover } from '../../units/cover.ts';
import { parseDuration } from '../../units/duration.ts';
import { inches, parseLength, parseNumber, type Refusal, shown } from '../../units/index.ts';
import { parseVolume } from '../../units/volume.ts';
import { defined } from '../defined.ts';
import { refuseWith, single } from '../leaves.ts';
import { type Coating, TOOLS } from '../paint.ts';
import type { Reader } from '../readers.ts';

const refused = (says: string, hint: string): Refusal => ({ ok: false, says, hint });

const volume: Reader = {
  code: 'job/volume',
  example: '1/2 pint',
  read(text) {
    const read = parseVolume(text);
    return read.ok ? { ok: true, value: read.ml } : read;
  },
};

const cover: Reader = {
  code: 'job/covers',
  example: '400 sq ft per gallon',
  read(text) {
    const read = parseCover(text);
    return read.ok ? { ok: true, value: read.cover } : read;
  },
};

const duration = (example: string): Reader => ({
  code: 'job/time',
  example,
  read(text) {
    const read = parseDuration(text);
    return read.ok ? { ok: true, value: read.hours } : read;
  },
});

/** A share as `10 %` or `0.1`. */
const share = (least: number, most: number, example: string): Reader => ({
  code: 'job/share',
  example,
  read(text) {
    const read = parseNumber(text.replace(/\s*%\s*$/, ''));
    if (!read.ok) return refused(read.says, example);
    const value = /%\s*$/.test(text) ? read.value / 100 : read.value;
    if (value >= least && value <= most) return { ok: true, value };
    return refused(`${shown(text)} is not from ${least * 100} % to ${most * 100} %`, example);
  },
});

const [MOST_COATS, MOST_PRICE] = [6, 1e6];
const coats = (least: number, example: string): Reader => ({
  code: 'job/coats',
  example,
  read(text) {
    const read = parseNumber(text);
    if (!read.ok) return refused(read.says, example);
    if (Number.isInteger(read.value) && read.value >= least && read.value <= MOST_COATS) return read;
    return refused(`${shown(text)} is not a number of coats; ${least} to ${MOST_COATS} are read`, example);
  },
});

const price: Reader = {
  code: 'job/price',
  example: '24',
  read(text) {
    const read = parseNumber(text.replace(/^\s*[$£€]\s*/, ''));
    if (!read.ok) return refused(read.says, '24');
    if (read.value > 0 && read.value <= MOST_PRICE) return read;
    return refused(`${shown(text)} is not a price; it is above 0`, '24');
  },
};

const MIL = inches(0.001);
/** The dry film of one coat: 0.2 to 20 thousandths of an inch (mil), or 5 to 500 µm. */
const film: Reader = {
  code: 'job/film',
  example: '1.5 mil',
  read(text) {
    const [, number, unit] = /^\s*([\d.]+)\s*(mils?|µm|μm|um|microns?)\s*$/i.exec(text) ?? [];
    const length = number === undefined ? parseLength(text) : undefined;
    const mm = length ? (length.ok ? length.mm : Number.NaN) : Number(number) * (/^mil/i.test(unit!) ? MIL : 0.001);
    if (mm >= 0.005 && mm <= 0.5) return { ok: true, value: mm };
    return refused(
      `${shown(text)} is not the thickness of a dry coat; 0.2 to 20 mil (5 to 500 µm) are read`,
      '1.5 mil',
    );
  },
};

const tins = z
  .array(
    z.strictObject({
      size: single(
        { ...volume, example: '1 quart' },
        'What the tin holds; pints, quarts and gallons are U.S. No default.',
      ),
      price: single(price, 'What it costs, in any one money. No default.'),
    }),
  )
  .min(1)
  .max(8)
  .meta({
    description: 'The tins that can be bought. Default: none told, and only volumes are worked out.',
    examples: ['[{ size: 1 quart, price: 24 }, { size: 1 gallon, price: 62 }]'],
  });

/** What can be said of any paint. `usual`: how many coats without it. */
const coatingKeys = (usual: string, least: number) => ({
  coats: single(coats(least, '2'), `How many coats. Default: ${usual}.`).optional(),
  covers: single(
    cover,
    'What one coat covers, from the label. Default: as `solids` and `film` have it, else by what the floor is (U.S. Army TM 43-0139, Table 3-2, the low end), and not over 350 sq ft per gallon unless the paint is oil.',
  ).optional(),
  solids: single(
    share(0.05, 1, '40 %'),
    'Solids by volume, from the data sheet; with `film` it gives what a coat covers. Default: not known.',
  ).optional(),
  film: single(film, 'Thickness of one dry coat, from the data sheet, in mil or µm. Default: not known.').optional(),
  tool: z
    .enum(TOOLS)
    .meta({
      description:
        'What it is put on with, for what stays in it: brush 10 %, roller 15 %, foam 15 %. Default: roller for primer, ground and clear coats, foam for the pattern.',
      examples: ['brush'],
    })
    .optional(),
  tins: tins.optional(),
});

interface Given extends Omit<Coating, 'covers'> {
  covers?: number | undefined;
  solids?: number | undefined;
  film?: number | undefined;
}

type Context = Parameters<typeof refuseWith>[0];

/** Solids and film become what a coat covers. */
function settle(
  { covers, solids, film: thick, ...rest }: { [K in keyof Given]: Given[K] | undefined },
  context: Context,
): Coating {
  if ((solids === undefined) !== (thick === undefined))
    return refuseWith(
      context,
      'job/covers',
      refused(
        'solids and film belong together: one alone does not say what a coat covers',
        'solids: 40 %, film: 1.5 mil',
      ),
      solids ?? thick,
    );
  const theory = solids !== undefined && thick !== undefined ? fromSolids(solids, thick) : undefined;
  return defined({ ...rest, covers: covers ?? theory }) as Coating;
}

const coating = (usual: string, least: number, description: string) =>
  z
    .strictObject(coatingKeys(usual, least))
    .transform((given, context) => settle(given, context))
    .meta({ description, examples: ['{ coats: 3, tool: brush }'] });

/** What is known of the paint, what is at hand and what can be bought. */
export const paintShape = () =>
  z
    .strictObject({
      ...coatingKeys('2', 1),
      reserve: single(
        share(0, 1, '10 %'),
        'Kept back for touching up, as a share of what is used. Default: 10 % (common practice).',
      ).optional(),
      'on hand': z
        .record(z.string(), single(volume, 'How much there is. No default.'))
        .meta({
          description: 'What is at hand of each colour, by its name, of `primer` and of `clear coats`. Default: none.',
          examples: ['{ black: 1/2 pint }'],
        })
        .optional(),
      ground: coating('2', 1, 'What differs for the ground under the pattern. Default: as for all.').optional(),
      colours: z
        .record(z.string(), coating('as for all', 1, 'What differs for this colour. Default: as for all.'))
        .meta({
          description: 'What differs for a colour of the pattern, by its name. Default: as for all.',
          examples: ['{ black: { coats: 3 } }'],
        })
        .optional(),
      primer: coating(
        '1 on bare wood, varnish, concrete and canvas, else 0',
        0,
        'Primer under the ground. Default: see each.',
      ).optional(),
      'clear coats': coating('2', 0, 'Clear coats over everything. Default: see each.').optional(),
      time: z
        .strictObject({
          recoat: single(
            duration('4 hours'),
            'Wait before the next coat, from the label, which always wins. Default: 16 hours water-based, 24 hours oil or not known (common practice).',
          ).optional(),
          placement: single(
            duration('4 min'),
            'Hands-on time to lay one sheet once and paint through it. Default: 4 min (common practice).',
          ).optional(),
          day: single(duration('6 hours'), 'Hours worked in a day. Default: 6 hours.').optional(),
          walk: single(
            duration('24 hours'),
            'Wait after the last coat before light feet, from the label. Default: 24 hours (common practice).',
          ).optional(),
        })
        .meta({ description: 'Times, for the plan over days. Default: see each.', examples: ['{ recoat: 6 hours }'] })
        .optional(),
    })
    .transform(
      ({ reserve, 'on hand': onHand, ground, colours, primer, 'clear coats': clear, time, ...all }, context) => ({
        ...settle(all, context),
        ...defined({ reserve, onHand, ground, colours, primer, clear, time }),
      }),
    )
    .meta({
      description: 'The paint: coats, what it covers, what is at hand, what can be bought. Default: see each.',
      examples: ['{ coats: 2, on hand: { black: 1/2 pint } }'],
    });
