import { computed } from '@preact/signals';
import { look } from './answer.ts';
import { file } from './job.ts';

/** What the job file is called when it is saved: as it was when it was opened, else after the job. */
export const jobFileName = computed(() =>
  /\.ya?ml$/i.test(file.value) ? file.value : `${look.value?.job.name ?? 'floor'}.job.yaml`,
);
