import { readJob } from '../../../src/job/read.ts';
import { allMotifs } from '../../../src/motif/library.ts';
import { changeBytes, changeText } from '../change.ts';
import { HOUSE, SAMPLES } from '../job-change.ts';
import { type Kind, saidOf, toBytes, toText } from '../kind.ts';

/** Job and house files with bytes or signs changed. */
const kind: Kind = {
  says: 'job files with bytes and signs changed, read',
  share: 150,
  limit: 2,
  ending: 'yaml',
  make(random) {
    const text = random.pick(SAMPLES);
    return random.chance(0.5) ? toBytes(changeText(text, random)) : changeBytes(toBytes(text), random);
  },
  async run(bytes) {
    const text = toText(bytes);
    const house = /^house:/m.test(text) ? { file: 'gable-house.yaml', text: HOUSE } : undefined;
    return saidOf(readJob(text, 'hall.job.yaml', allMotifs(), house));
  },
};

export default kind;
