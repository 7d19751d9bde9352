import { readJob } from '../../../src/job/read.ts';
import { allMotifs } from '../../../src/motif/library.ts';
import { changeBytes, changeText } from '../change.ts';
import { HOUSE, SAMPLES } from '../job-change.ts';
import { type Kind, saidOf, toBytes, toText } from '../kind.ts';

const JOB = SAMPLES.find((text) => /^house:/m.test(text))!;

const kind: Kind = {
  says: 'files of a house with bytes and signs changed, read with a job',
  share: 40,
  limit: 2,
  ending: 'yaml',
  make: (random) => (random.chance(0.7) ? toBytes(changeText(HOUSE, random)) : changeBytes(toBytes(HOUSE), random)),
  run: async (bytes) =>
    saidOf(readJob(JOB, 'hall.job.yaml', allMotifs(), { file: 'gable-house.yaml', text: toText(bytes) })),
};

export default kind;
