import type { Job } from '../job/job.ts';
import { motifWords } from '../motif/words.ts';

type Direction = 'across' | 'along';

/** Row for what is counted along the axis, column for what is counted across it. */
const LINE: Record<Direction, string> = { along: 'row', across: 'column' };

/**
 * What is said of the line at which a row (or column) of repeats begins, where every second repeat is another:
 * `, row 4 in exchanged colours`. Rows are counted from the near edge, columns from the left one, and the first repeat of all is as drawn.
 */
export function alternates(job: Pick<Job, 'field'>, direction: Direction): (number: number) => string {
  const { alternation, motif } = job.field;
  const turns = { row: 'along', column: 'across', checker: direction }[alternation?.by ?? 'checker'] === direction;
  if (!alternation || !turns) return () => '';
  const kinds = alternation.other
    ? [`of ${motifWords(alternation.other.motif)}`, `of ${motifWords(motif)}`]
    : ['in exchanged colours', 'in its own colours'];
  const begins = alternation.by === 'checker' ? ' begins' : '';
  return (number) => `, ${LINE[direction]} ${number}${begins} ${kinds[number % 2]}`;
}
