import * as z from 'zod';
import { MOST_ARC, MOST_CHARACTERS } from '../../lettering/limits.ts';
import { type Refusal, shown } from '../../units/index.ts';
import { refuseWith, single, typed } from '../leaves.ts';
import { arcReader } from '../readers.ts';
import type { Lengths } from './lengths.ts';

const TEXT = 'Dunmore 1908';
const FONT = './my-face.ttf';

/** Not a line of plain characters, whatever their script. */
const CONTROL = /[\p{Cc}\p{Cf}\p{Co}\p{Cs}\p{Zl}\p{Zp}]/u;

function textTrouble(text: string): string | undefined {
  if (text === '') return 'the text is empty';
  if (CONTROL.test(text)) return 'the text holds signs that cannot be seen; lettering is one line of plain characters';
  const count = [...text.normalize('NFC')].length;
  return count > MOST_CHARACTERS ? `the text has ${count} characters; at most ${MOST_CHARACTERS} are set` : undefined;
}

const text = typed
  .transform((given, context): string => {
    const line = String(given).replace(/\s+/g, ' ').trim();
    const says = textTrouble(line);
    return says === undefined ? line : refuseWith(context, 'job/text', { ok: false, says, hint: TEXT }, given);
  })
  .meta({ description: 'The words, the date or the initials, in one line.', examples: [TEXT] });

/** A font that cannot be one by its name alone. What is in the file is looked at when it is set. */
function fontTrouble(path: string): Refusal | undefined {
  const refuse = (says: string): Refusal => ({ ok: false, says, hint: FONT });
  if (path === '' || CONTROL.test(path)) return refuse('this names no file');
  if (/^[a-z][a-z0-9+.-]+:\/\//i.test(path))
    return refuse(`${shown(path)} is an address; a font is a file on this machine, and nothing is fetched`);
  if (/\.woff2$/i.test(path))
    return refuse(
      `${shown(path)} is packed as .woff2, which cannot be read here; take the .ttf, .otf or .woff of the same face`,
    );
  if (!/\.(?:ttf|otf|woff)$/i.test(path))
    return refuse(`${shown(path)} is no font file; one ends in .ttf, .otf or .woff`);
  return undefined;
}

const font = typed
  .transform((given, context): string => {
    const path = String(given).trim();
    const trouble = fontTrouble(path);
    return trouble ? refuseWith(context, 'job/font', trouble, given) : path;
  })
  .meta({
    description:
      'A .ttf, .otf or .woff file, its path as seen from the job file. A stencil face has no islands, so it needs no bridges. Default: Libre Baskerville, which comes with the tool.',
    examples: [FONT],
  });

const line = ({ size }: Lengths) =>
  z
    .strictObject({
      text,
      font: font.optional(),
      'cap height': single(
        size('3"'),
        'Height of the capitals; give this or `width`. Default: half of a repeat in the field, 60 % of the width of the border.',
      ).optional(),
      width: single(
        size('30"'),
        'Width of the whole text; give this or `cap height`. Default: by its cap height.',
      ).optional(),
      arc: single(
        arcReader,
        `Bend of the line in degrees from end to end, -${MOST_ARC} to ${MOST_ARC}; above 0 it rises in the middle, below 0 it sags. Default: 0, straight.`,
      ).optional(),
      place: z
        .enum(['centre', 'near', 'far'])
        .meta({
          description:
            'The middle of the field, or the middle of the border at the near or the far end; the repeats there make room. It reads from the near end. Default: centre.',
          examples: ['near'],
        })
        .optional(),
    })
    .meta({ description: 'One line of lettering.', examples: [`{ text: ${TEXT} }`] });

/** A name, a date or a monogram: one line, or a list of them. */
export const letteringShape = (lengths: Lengths) =>
  z.union([line(lengths), z.array(line(lengths))]).meta({
    description: 'A name, a date or a monogram, or a list of them for different places. Default: none.',
    examples: [`{ text: ${TEXT}, cap height: 3", place: near }`],
  });
