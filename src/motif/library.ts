import type { Motif } from './motif.ts';

/** Every file in `motifs/` is a motif; nothing else has to be told about it. */
const files = import.meta.glob<Motif>('../../motifs/*.ts', { eager: true, import: 'default' });

const motifs = Object.values(files).sort((a, b) => (a.name < b.name ? -1 : 1));

/** All motifs by name: fields, borders and corners together. */
export const allMotifs = (): Motif[] => [...motifs];

export const findMotif = (name: string): Motif | undefined => motifs.find((motif) => motif.name === name);
