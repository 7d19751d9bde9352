import { fitAny } from '../../../src/pipeline.ts';
import { assets } from '../assets.ts';
import { changedJob } from '../job-change.ts';
import { type Kind, saidOf, toBytes, toText } from '../kind.ts';

/** Job files changed so little that most are still fitted. */
const kind: Kind = {
  says: 'job files, changed by their grammar, fitted',
  share: 80,
  limit: 2,
  ending: 'yaml',
  make: (random) => toBytes(changedJob(random, 2)),
  async run(bytes) {
    const fitted = await fitAny(toText(bytes), 'hall.job.yaml', 10, assets);
    const said = saidOf(fitted);
    if (!fitted.ok) return said;
    const { fit } = fitted.value.value;
    if (fit.layouts.length === 0) throw new Error('fitted, and no layout');
    for (const layout of fit.layouts)
      if (/:(?:null|NaN)[,}\]]/.test(JSON.stringify(layout))) throw new Error('a layout with a number that is none');
    return { ...said, lines: fit.layouts.map(({ says }) => says) };
  },
};

export default kind;
