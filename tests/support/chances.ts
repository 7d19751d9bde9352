import fc from 'fast-check';

/** Cases by chance are the same on every run, so that a test which held yesterday holds today; `EVENFIELD_SEED=2 npm test` draws others. */
fc.configureGlobal({ seed: Number(process.env.EVENFIELD_SEED ?? 1) });
