import { deflateSync } from 'node:zlib';
import { hashOf, readHash } from '../../../src/page/state/link.ts';
import { changeBytes, changeText } from '../change.ts';
import { SAMPLES } from '../job-change.ts';
import { type Kind, saidOf, toBytes, toText } from '../kind.ts';

const kind: Kind = {
  says: 'links that carry a job to the page',
  share: 70,
  limit: 2,
  ending: 'txt',
  make(random) {
    const way = random.number();
    const job = random.pick(SAMPLES);
    if (way < 0.35)
      return toBytes(changeText(hashOf(job), random, ['=', '%', '#job=', '-', '_', '+', '/', ' ', '\0', 'é']));
    const packed =
      way < 0.45
        ? deflateSync(Buffer.alloc(10_000 << random.below(12), random.pick(['a', '\0', '- ['])))
        : deflateSync(job);
    const bytes = way < 0.5 ? packed : changeBytes(packed, random, 0, random.pick([0.05, 1]));
    return toBytes(`#job=${Buffer.from(bytes).toString('base64url')}`);
  },
  async run(bytes) {
    const read = readHash(toText(bytes));
    if (read.ok && read.value.length > 1_000_000) throw new Error(`a job of ${read.value.length} characters`);
    return saidOf(read);
  },
};

export default kind;
