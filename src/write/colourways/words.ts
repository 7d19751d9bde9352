import { sayPairs } from '../../colour/pairs.ts';
import type { Colourway } from '../../colour/ways.ts';
import type { Drawing } from '../../compose/drawing.ts';
import type { Job } from '../../job/job.ts';
import type { Lettering } from '../label.ts';
import { coloursUsed, partWords } from '../plan-key.ts';
import type { Swatch } from './caption.ts';
import { sheetNames } from './names.ts';

const READS_WELL = 'All its colours read well beside each other.';

/** A colourway in words: its name as it can be lettered, its colours with what each is for, and what of it will not be seen well. */
export interface Told {
  name: string;
  swatches: Swatch[];
  notes: string[];
}

/** All that can be lettered; a colour whose name cannot is told by its hex value. */
export function tellWays(
  lettering: Lettering,
  drawing: Drawing,
  { palette }: Pick<Job, 'palette'>,
  ways: readonly Colourway[],
): Told[] {
  const names = sheetNames(
    lettering,
    ways.map(({ name }) => name),
    'Colourway',
  );
  const lettered = (colour: string): string => (lettering.canSet(colour) ? colour : palette[colour]!);
  return ways.map(({ colours, pairs }, at) => {
    const says = sayPairs(
      pairs.map((pair) => ({ ...pair, colours: [lettered(pair.colours[0]), lettered(pair.colours[1])] })),
    );
    return {
      name: names[at]!.drawn,
      swatches: coloursUsed(drawing, { colours }).map(({ colour, parts }) => ({
        hex: palette[colour]!,
        says: `${lettered(colour)}: ${parts.map(partWords).join(', ')}`,
      })),
      notes: says.length > 0 ? says : [READS_WELL],
    };
  });
}
