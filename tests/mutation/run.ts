import { availableParallelism } from 'node:os';
import { parseArgs } from 'node:util';
import { writeTable } from '../../src/cli/table.ts';
import { MUTANTS } from './mutants.ts';
import { type Judged, judge, judgeMutants } from './source-run.ts';
import { type Tried, tamperAll } from './tamper-run.ts';

/**
 * Changes written files and looks whether `check` refutes them; changes lines of the engine and looks whether tests or `check` notice.
 * `npm run mutations` does both; `--only files` or `--only source` one of them, `--only source:3,12-14` some lines; `--seed 7` and `--times 2` try other places of the files.
 * Ends with 1 where a changed file is believed, where a line no longer applies, or where less than nine in ten changed lines are noticed.
 */
async function files(seed: number, times: number): Promise<boolean> {
  const tried: Tried[] = [];
  await tamperAll(seed, times, (one) => tried.push(one));
  const rows = [...new Set(tried.map(({ file }) => kindOf(file)))].sort().map((kind) => {
    const own = tried.filter(({ file }) => kindOf(file) === kind);
    const kinds = new Set(own.map((one) => one.kind)).size;
    const families = new Set(own.flatMap(({ refuted }) => refuted?.family ?? []));
    return [
      kind,
      String(kinds),
      String(own.length),
      String(own.filter(({ refuted }) => refuted).length),
      [...families].sort().join(', '),
    ];
  });
  console.log(
    writeTable([['file', 'kinds of change', 'tried', 'refuted', 'first refuted by'], ...rows], [1, 2, 3]).join('\n'),
  );
  const believed = tried.filter(({ refuted }) => !refuted);
  for (const { work, file, kind } of believed) console.log(`believed: ${work}, ${file}: ${kind}`);
  console.log(`\n${tried.length} changed files, ${tried.length - believed.length} refuted (seed ${seed})\n`);
  return believed.length === 0;
}

const kindOf = (file: string): string =>
  file.replace(/^stencil-.*\.svg$/, 'stencil-*.svg').replace(/^refit.*$/, 'refit');

async function source(which: readonly number[], lanes: number): Promise<boolean> {
  const judged: Judged[] = [];
  await judgeMutants(which, lanes, (one) => {
    judged.push(one);
    const { file, from, to, alike } = MUTANTS[one.at]!;
    const ended = one.ended === 'survives' && alike ? `alike: ${alike}` : one.ended;
    console.log(`${one.at} ${file}: ${ended} (${one.seconds.toFixed(1)} s)`);
    if (!one.ended.startsWith('caught')) console.log(`   - ${from}\n   + ${to}`);
  });
  const count = (is: (one: Judged) => boolean): number => judged.filter(is).length;
  const rows = ['fit', 'marks', 'stencil'].map((folder) => {
    const own = (one: Judged) => MUTANTS[one.at]!.file.split('/')[1] === folder;
    return [
      folder,
      String(count(own)),
      String(count((one) => own(one) && one.ended.startsWith('caught'))),
      String(count((one) => own(one) && one.ended === 'survives' && MUTANTS[one.at]!.alike !== undefined)),
    ];
  });
  console.log(
    `\n${writeTable([['folder', 'lines changed', 'noticed', 'no difference'], ...rows], [1, 2, 3]).join('\n')}`,
  );
  const caught = count(({ ended }) => ended.startsWith('caught'));
  const alike = count(({ at, ended }) => ended === 'survives' && MUTANTS[at]!.alike !== undefined);
  const stale = count(({ ended }) => ended === 'does not apply');
  console.log(
    `\n${judged.length} changed lines, ${caught} noticed, ${alike} without a difference, ${stale} that no longer apply`,
  );
  return stale === 0 && caught > 0.9 * (judged.length - alike);
}

/** `3,12-14` as 3, 12, 13 and 14. */
const numbersIn = (words: string): number[] =>
  words.split(',').flatMap((part) => {
    const [from = 0, to = from] = part.split('-').map(Number);
    return Array.from({ length: to - from + 1 }, (_, at) => from + at);
  });

async function main(): Promise<void> {
  const { values } = parseArgs({
    options: {
      seed: { type: 'string', default: '1' },
      times: { type: 'string', default: '1' },
      only: { type: 'string' },
      lanes: { type: 'string', default: String(Math.min(2, availableParallelism())) },
      judge: { type: 'string' },
    },
  });
  if (values.judge !== undefined) return judge(values.judge.split(',').map(Number));
  const [only, one] = values.only?.split(':') ?? [];
  const began = performance.now();
  const all = MUTANTS.map((_, at) => at);
  const fine = [
    only === 'source' || (await files(Number(values.seed), Number(values.times))),
    only === 'files' || (await source(one === undefined ? all : numbersIn(one), Number(values.lanes))),
  ];
  console.log(`${Math.round((performance.now() - began) / 1000)} s`);
  process.exitCode = fine.every(Boolean) ? 0 : 1;
}

await main();
