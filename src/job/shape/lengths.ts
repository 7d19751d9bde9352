import type { Unit } from '../../units/index.ts';
import { lengthReader, measuredReader, type Reader } from '../readers.ts';

/** Nothing smaller can be cut, mm. */
export const LEAST_CUT = 3;

/** The readers of lengths of one file, made for what its bare numbers mean. Each takes the example shown to a person. */
export interface Lengths {
  /** Above zero. */
  size(example: string): Reader;
  /** At least 3 mm, under which nothing can be cut. */
  repeat(example: string): Reader;
  /** Zero or more. */
  strip(example: string): Reader;
  /** Above zero and at most 50 mm. */
  small(example: string): Reader;
  /** Zero or more and at most 5 mm. */
  trace(example: string): Reader;
  /** Above zero and at most 3 mm. */
  hair(example: string): Reader;
  /** What pages share: enough for a match mark, less than half of a page. */
  overlap(example: string): Reader;
  /** What 10 in came to in print. */
  measured(example: string): Reader;
}

export const lengthsIn = (bare: Unit | undefined): Lengths => ({
  size: (example) => lengthReader(bare, { example }),
  repeat: (example) => lengthReader(bare, { example, least: LEAST_CUT, leastSays: '3 mm (1/8 in)' }),
  strip: (example) => lengthReader(bare, { example, zero: true }),
  small: (example) => lengthReader(bare, { example, most: 50, mostSays: '50 mm (2 in)' }),
  hair: (example) => lengthReader(bare, { example, most: 3, mostSays: '3 mm (about 1/8 in)' }),
  trace: (example) => lengthReader(bare, { example, zero: true, most: 5, mostSays: '5 mm (3/16 in)' }),
  overlap: (example) =>
    lengthReader(bare, { example, least: 6, leastSays: '6 mm (1/4 in)', most: 51, mostSays: '2 in (50 mm)' }),
  measured: (example) => measuredReader(bare, example),
});
