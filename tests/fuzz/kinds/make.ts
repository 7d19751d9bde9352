import { checkFiles } from '../../../src/check/index.ts';
import { makeFiles } from '../../../src/pipeline.ts';
import { assets } from '../assets.ts';
import { changedJob } from '../job-change.ts';
import { type Kind, saidOf, toBytes, toText } from '../kind.ts';

/** Names that stay inside the folder they are written to, on every system. */
const NAME = /^[a-z0-9][a-z0-9.-]{0,80}$/;

/** Job files made from end to end; what is made must be proved by the check. */
const kind: Kind = {
  says: 'job files, changed by their grammar, made and proved',
  share: 15,
  limit: 30,
  ending: 'yaml',
  make: (random) => toBytes(changedJob(random, 1)),
  async run(bytes) {
    const made = await makeFiles(toText(bytes), 'hall.job.yaml', 1, assets);
    if (!made.ok) return saidOf(made);
    const { job, files, says } = made.value;
    for (const name of [job.name, ...files.keys()]) if (!NAME.test(name)) throw new Error(`a file named ${name}`);
    const { holds, claims } = await checkFiles(files);
    const refuted = claims
      .filter((claim) => !claim.holds)
      .map(({ claim, measured, allowed, file }) => `${file} ${claim}: ${measured}, allowed ${allowed}`);
    if (!holds) throw new Error(`made, and refuted: ${refuted.join('; ')}`);
    return { ended: 'made and proved', lines: says };
  },
};

export default kind;
