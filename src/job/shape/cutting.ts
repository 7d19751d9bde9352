import * as z from 'zod';
import { CUTTING } from '../defaults.ts';
import { refuseWith, screenColour, single } from '../leaves.ts';
import type { Lengths } from './lengths.ts';

const colour = (says: string, usual: string) =>
  screenColour.meta({ description: `${says} Default: ${usual}.`, examples: [`'${usual}'`] }).optional();

const { lines } = CUTTING;

const linesShape = z
  .strictObject({
    cut: colour('Lines that are cut through.', lines.cut),
    draw: colour('Lines that are only drawn.', lines.draw),
    crease: colour('Lines that are scored for folding.', lines.crease),
  })
  .transform((given, context) => {
    const all = Object.entries({ ...lines, ...given });
    const [twice] = all.filter(([, one], at) => all.findIndex(([, other]) => other === one) < at);
    if (!twice) return given;
    const [kind, value] = twice;
    const other = all.find(([, one]) => one === value)![0];
    const says = `${other} and ${kind} lines are both ${value}, so a cutter could not tell them apart`;
    return refuseWith(context, 'job/line-colour', { ok: false, says, hint: 'a colour of its own for each' }, given);
  })
  .meta({
    description: `The colour of each kind of line in the file. Default: cut ${lines.cut}, draw ${lines.draw}, crease ${lines.crease}.`,
    examples: [`{ cut: '#cc0000' }`],
  });

/** How the files to cut from are written. */
export const cuttingShape = ({ trace }: Lengths) =>
  z
    .strictObject({
      outline: z
        .enum(['cut', 'draw', 'none'])
        .meta({
          description:
            'The edge of the sheet: cut after everything else, drawn only, or left out where the film has the right size already. Default: cut.',
          examples: ['none'],
        })
        .optional(),
      mirrored: z
        .enum(['yes', 'no'])
        .meta({
          description: 'Left and right changed over, for film that is cut from the back. Default: no.',
          examples: ['yes'],
        })
        .optional(),
      overcut: single(
        trace('0.3 mm'),
        'How far the blade runs on past the start of each line, so that a trailing blade closes the corner; 0 to 5 mm. Default: 0.',
      ).optional(),
      entry: z
        .enum(['free', 'fixed'])
        .meta({
          description:
            'Where the blade goes in: `free`, at the corner that saves most travel; `fixed`, where the shape was begun. Default: free.',
          examples: ['fixed'],
        })
        .optional(),
      files: z
        .enum(['one a sheet', 'one a film'])
        .meta({
          description:
            'A file for every sheet; or one more for every piece of film, on which its sheets lie side by side. Default: one a sheet.',
          examples: ['one a film'],
        })
        .optional(),
      lines: linesShape.optional(),
    })
    .meta({
      description: 'How the files for a cutter are written. Default: see each.',
      examples: ['{ overcut: 0.3 mm, mirrored: yes }'],
    });
