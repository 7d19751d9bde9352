import type { Unit } from '../../units/index.ts';
import { lengthReader, type Reader } from '../readers.ts';

/** The readers of lengths of one file, made for what its bare numbers mean. Each takes the example shown to a person. */
export interface Lengths {
  /** Above zero. */
  size(example: string): Reader;
  /** Zero or more. */
  strip(example: string): Reader;
  /** Above zero and at most 50 mm. */
  small(example: string): Reader;
}

export const lengthsIn = (bare: Unit | undefined): Lengths => ({
  size: (example) => lengthReader(bare, { example }),
  strip: (example) => lengthReader(bare, { example, zero: true }),
  small: (example) => lengthReader(bare, { example, most: 50, mostSays: '50 mm (2 in)' }),
});
