import type { Job, Wall } from '../../job/job.ts';
import { motifWords } from '../../motif/words.ts';
import type { FloorRoom } from '../../site/floor-room.ts';
import { writeLength } from '../../units/index.ts';
import { halves } from '../../words.ts';
import type { Layout } from '../layout.ts';
import type { Motifs } from '../problem.ts';
import { saysMarks, saysSize } from '../says.ts';
import type { Cut } from './cut.ts';
import { cutsOf } from './cuts.ts';

type Length = (mm: number) => string;

/** `whole`, `8 1/4"`, `8" to 8 1/2"`. */
export function sayCut({ whole, least, most }: Cut, length: Length): string {
  if (whole) return 'whole';
  const [from, to] = [length(least), length(most)];
  return from === to ? from : `${from} to ${to}`;
}

/** `cut to 8" at the left and right walls`, or what each of the two leaves. */
function sayPair(cuts: Record<Wall, Cut>, [one, other]: [Wall, Wall], length: Length): string {
  const [a, b] = [sayCut(cuts[one], length), sayCut(cuts[other], length)];
  const said = (words: string) => (words === 'whole' ? 'whole' : `cut to ${words}`);
  if (a === b) return `${said(a)} at the ${one} and ${other} walls`;
  return `${said(a)} at the ${one} wall and ${b} at the ${other} one`;
}

/** The line that explains the layout of a floor. */
export function explainFloor(layout: Layout, floor: FloorRoom, job: Job, motifs: Motifs): string {
  const length = (mm: number) => writeLength(mm, job.units, job.step);
  const { counts } = motifs.field;
  const { across, along } = layout.repeats;
  const count = counts
    ? `${halves(across * counts.across)} × ${halves(along * counts.along)} ${counts.many}`
    : `${halves(across)} × ${halves(along)} repeats of ${motifWords(motifs.field.name)}`;
  const { walls } = cutsOf(floor, layout, motifs.field);
  return [
    `${count}, laid from the middle, those at the walls cut`,
    saysSize(layout, motifs.field, length),
    `${sayPair(walls, ['left', 'right'], length)}, ${sayPair(walls, ['near', 'far'], length)}`,
    saysMarks(layout, job, length),
  ].join('; ');
}
