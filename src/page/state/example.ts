import { computed } from '@preact/signals';
import first from '../../../samples/passage-runner.job.yaml?raw';
import { blankJob } from '../parts/room/begin.ts';
import { look } from './answer.ts';
import { base, begin, tree } from './job.ts';
import { type Path, textAt } from './tree.ts';

/** What the example measures, as its file has it, by which one sees that it is still the example. */
const MEASURED: readonly (readonly [Path, RegExp])[] = [
  [['site', 'run'], /run: (.+?)\s+#/],
  [['site', 'openings', 'near'], /near: (.+?),/],
  [['site', 'openings', 'far'], /far: (.+?) \}/],
];
const plain = (text: string | undefined): string | undefined => text?.replace(/^'|'$/g, '').replaceAll("''", "'");

/** Places of the job where a measurement of the worked example stands. */
const notOwn = computed<Path[]>(() =>
  base.value !== first
    ? []
    : MEASURED.filter(([path, read]) => textAt(tree.value, path) === plain(read.exec(first)?.[1])).map(
        ([path]) => path,
      ),
);

/** Whether the job is the worked example of a first visit, its passage not yet measured anew. */
export const isExample = computed(() => notOwn.value.includes(MEASURED[0]![0]));

/** Where a measurement of the example stands still in a passage measured anew. */
export const leftOfExample = computed<Path[]>(() => (isExample.value ? [] : notOwn.value));

/** A job of one's own: asks for the kind of work first, and goes to where it is asked. */
export function beginOwn(): void {
  begin('', blankJob(tree.value), '', 'beginning your own');
  look.value = undefined;
  requestAnimationFrame(() => document.querySelector<HTMLElement>('.sorts input')?.focus());
}
