import { computed } from '@preact/signals';
import first from '../../../samples/passage-runner.job.yaml?raw';
import { blankJob } from '../parts/room/begin.ts';
import { look } from './answer.ts';
import { base, begin, tree } from './job.ts';
import { textAt } from './tree.ts';

/** What the example measures, by which one sees that it is still the example. */
const measured = /run: (.+?)\s+#/.exec(first)?.[1]?.replace(/^'|'$/g, '').replaceAll("''", "'");

/** Whether the job is the worked example of a first visit, its passage not yet measured anew. */
export const isExample = computed(() => base.value === first && textAt(tree.value, ['site', 'run']) === measured);

/** A job of one's own: asks for the kind of work first. */
export function beginOwn(): void {
  begin('', blankJob(tree.value), '', 'beginning your own');
  look.value = undefined;
}
