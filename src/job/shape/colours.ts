import * as z from 'zod';
import { PARTS, type Part } from '../../motif/motif.ts';
import { shown } from '../../units/index.ts';
import { PALETTE } from '../colours.ts';
import { refuseWith, screenColour, typed } from '../leaves.ts';

const OF: Record<Part, string> = {
  ground: 'The colour under the pattern. Default: the first colour of the palette that no other part is given.',
  field: 'The motif of the field. Default: the first colour that is neither the ground nor given to another part.',
  alternate: 'The second colour of the field. Default: the next colour after that, or the same where there is none.',
  border: 'The motif of the border. Default: as `field`.',
  'border-alternate': 'The second colour of the border. Default: as `alternate`.',
  corner: 'The motif of the corner blocks. Default: as `alternate`.',
  'corner-alternate': 'The second colour of the corner blocks. Default: as `field`.',
  'inner-border': 'The motif of the inner border. Default: as `alternate`.',
  'inner-border-alternate': 'The second colour of the inner border. Default: as `field`.',
  inset: 'A motif inside the motif of the field. Default: as `alternate`.',
  medallion: 'The medallion in the middle. Default: as `field`.',
  'medallion-alternate': 'The second colour of the medallion. Default: as `alternate`.',
  lettering: 'Names, dates and monograms. Default: as `field`.',
};

const named = (part: Part) =>
  typed
    .transform(String)
    .meta({ description: OF[part], examples: ['navy'] })
    .optional();

export const coloursShape = () =>
  z
    .strictObject(
      Object.fromEntries(PARTS.map((part) => [part, named(part)])) as Record<Part, ReturnType<typeof named>>,
    )
    .meta({
      description: 'The colour of each part, by its name in the palette. Default: see each.',
      examples: ['{ ground: cream, field: navy }'],
    });

const LONGEST_NAME = 40;

/** Further ways to colour the same work. */
export const colourwaysShape = () =>
  z
    .array(
      z.strictObject({
        name: z
          .string()
          .transform((given, context): string => {
            const text = given.trim();
            if (text !== '' && text.length <= LONGEST_NAME) return text;
            const says = `${shown(text) || 'nothing'} is no name for a colourway; a name has 1 to ${LONGEST_NAME} letters`;
            return refuseWith(context, 'job/title', { ok: false, says, hint: 'Winter' }, given);
          })
          .meta({ description: 'What it is called, up to 40 letters. No default.', examples: ['Winter'] }),
        colours: coloursShape(),
      }),
    )
    .meta({
      description:
        'Other colourways of the same work, for `evenfield colourways`: each names what differs from `colours`. Default: none.',
      examples: ['[{ name: Winter, colours: { field: slate } }]'],
    });

const usual = Object.entries(PALETTE).map(([name, value]) => `${name} ${value}`);

export const paletteShape = () =>
  z.record(z.string(), screenColour).meta({
    description: `Two colours or more, by name. Default: ${usual.join(', ')}.`,
    examples: [`{ cream: '#efe4cc', navy: '#22384f' }`],
  });
