import { readJob } from '../../../src/job/read.ts';
import { allMotifs } from '../../../src/motif/library.ts';
import { changedJob, HOUSE } from '../job-change.ts';
import { type Kind, saidOf, toBytes, toText } from '../kind.ts';

/** Job files changed in the grammar of the job. */
const kind: Kind = {
  says: 'job files, changed by their grammar, read',
  share: 200,
  limit: 2,
  ending: 'yaml',
  make: (random) => toBytes(changedJob(random, 4)),
  async run(bytes) {
    const text = toText(bytes);
    const house = /^house:/m.test(text) ? { file: 'gable-house.yaml', text: HOUSE } : undefined;
    return saidOf(readJob(text, 'hall.job.yaml', allMotifs(), house));
  },
};

export default kind;
