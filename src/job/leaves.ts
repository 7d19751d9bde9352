import * as z from 'zod';
import { readColour } from '../colour/read.ts';
import { type Refusal, shown } from '../units/index.ts';
import type { Range } from './job.ts';
import { rangeTrouble, readRange } from './ranges.ts';
import type { Reader } from './readers.ts';

/** A value as it is typed. An editor may take it for a number; here it always arrives as text. */
export const typed = z.union([z.string(), z.number()]);

interface Context {
  issues: { push(issue: z.core.$ZodRawIssue): unknown };
}

/** Hands a refusal on to the schema, with its code and its hint. */
export function refuseWith(
  context: Context,
  code: string,
  { says, hint }: Refusal,
  input: unknown,
  path: string[] = [],
): never {
  context.issues.push({ code: 'custom', message: says, params: { code, hint }, input, path });
  return z.NEVER;
}

/** One value of a kind. */
export const single = (reader: Reader, description: string) =>
  typed
    .transform((given, context): number => {
      const read = reader.read(String(given));
      return read.ok ? read.value : refuseWith(context, reader.code, read, given);
    })
    .meta({ description, examples: [reader.example] });

/** A value, `A to B`, or `{ from, to, wish }`. */
export function range(reader: Reader, description: string, example: string) {
  const ends = z
    .strictObject({
      from: single(reader, 'Smallest value allowed.'),
      to: single(reader, 'Largest value allowed.'),
      wish: single(reader, 'The value wished for, between the two.').optional(),
    })
    .transform(({ from, to, wish }, context): Range => {
      const trouble = rangeTrouble({ from, to, wish });
      if (trouble) return refuseWith(context, 'job/range', trouble, from);
      return wish === undefined ? { from, to } : { from, to, wish };
    });
  const text = typed.transform((given, context): Range => {
    const read = readRange(String(given), reader);
    return read.ok ? read.value : refuseWith(context, reader.code, read, given);
  });
  return z.union([text, ends]).meta({ description, examples: [example] });
}

const LONGEST_TITLE = 80;

export const title = z
  .string()
  .transform((given, context): string => {
    const text = given.trim();
    if (text === '')
      return refuseWith(context, 'job/title', { ok: false, says: 'the title is empty', hint: 'Back passage' }, given);
    if (/[\p{Cc}\p{Cf}\p{Co}\p{Cs}\p{Zl}\p{Zp}]/u.test(text) || text.length > LONGEST_TITLE)
      return refuseWith(
        context,
        'job/title',
        { ok: false, says: `a title is one line of at most ${LONGEST_TITLE} plain characters`, hint: shown(text) },
        given,
      );
    return text;
  })
  .meta({
    description: 'What the job is called; also names its folder. Default: the name of the file.',
    examples: ['Back passage'],
  });

/** A colour as a person types it (`src/colour/read.ts`), as `#rrggbb`. */
export const screenColour = typed
  .transform((given, context): string => {
    const read = readColour(String(given));
    return read.ok ? read.hex : refuseWith(context, 'job/colour', read, given);
  })
  .meta({
    description:
      'The colour on screen: # and six digits of 0 to 9 and a to f, in quotes; or, as CSS Color 4 writes it, rgb(), lab() (CIELAB of the white D50) or oklch().',
    examples: ['#22384f', 'rgb(34 56 79)', 'lab(23% -2 -17)', 'oklch(33% 0.05 250)'],
  });
