import type { Part } from '../../../motif/motif.ts';

/** What each part of a pattern is called beside its swatches. */
export const PART_WORDS: Record<Part, string> = {
  ground: 'Ground',
  field: 'Field',
  alternate: 'Second colour of the field',
  border: 'Border',
  'border-alternate': 'Second colour of the border',
  corner: 'Corners',
  'corner-alternate': 'Second colour of the corners',
  'inner-border': 'Inner border',
  'inner-border-alternate': 'Second colour of the inner border',
  inset: 'Inside the motif',
  medallion: 'Medallion',
  'medallion-alternate': 'Second colour of the medallion',
  lettering: 'Letters',
};

export const inText = (part: Part): string => `the ${PART_WORDS[part].toLowerCase()}`;
