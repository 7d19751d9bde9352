import { fork } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Plugin } from 'vite';
import { MUTANTS, type Mutant } from './mutants.ts';

/** What became of one mutant. */
export interface Judged {
  at: number;
  /** `survives`, `does not apply`, or what caught it. */
  ended: string;
  seconds: number;
}

/** A test file that has not ended by then hangs, s; a busy machine takes many times as long as an idle one. */
const PATIENCE = 120;

/** How a process ends whose tests fail as they are. */
const FAILS_BEFORE = 3;

const CHECKED = 'tests/mutation/made.mutant.ts';
/** Test files that are quick and near, in turn; the first that fails catches. */
const TESTS: Record<string, string[]> = {
  fit: ['ways', 'published', 'floor', 'small-print', 'nearest', 'search'].map((name) => `tests/fit/${name}.test.ts`),
  marks: ['marks', 'square', 'drift', 'tape', 'features', 'spans', 'without'].map(
    (name) => `tests/marks/${name}.test.ts`,
  ),
  stencil: [
    ...['shape-book', 'on-floor', 'where', 'taped', 'sheets', 'keys', 'soundness', 'features', 'template', 'split'],
    ...['cut-order/order', 'nest/nest', 'meeting/meet', 'apart/hold-apart', 'bridges/bridges'],
  ].map((name) => `tests/stencil/${name}.test.ts`),
};

const applies = ({ file, from }: Mutant): boolean => readFileSync(file, 'utf8').split(from).length === 2;

/** Judges mutants in so many lanes, each a process of its own, so that one that hangs can be ended. */
export async function judgeMutants(
  which: readonly number[],
  lanes: number,
  see: (judged: Judged) => void,
): Promise<void> {
  const stale = which.filter((at) => !applies(MUTANTS[at]!));
  for (const at of stale) see({ at, ended: 'does not apply', seconds: 0 });
  const left = which.filter((at) => !stale.includes(at));
  const inLanes = Array.from({ length: lanes }, (_, lane) => left.filter((_, at) => at % lanes === lane));
  await Promise.all(
    inLanes.map(async (lane) => {
      for (let rest = lane; rest.length > 0; ) rest = rest.slice(await stretch(rest, see));
    }),
  );
}

/** @returns how many of them were judged */
function stretch(which: readonly number[], see: (judged: Judged) => void): Promise<number> {
  const child = fork(process.argv[1]!, ['--judge', which.join()], { stdio: ['ignore', 'ignore', 'inherit', 'ipc'] });
  return new Promise((done) => {
    let judged = 0;
    let began = performance.now();
    const watch = setInterval(() => {
      const seconds = (performance.now() - began) / 1000;
      if (seconds < PATIENCE) return;
      clearInterval(watch);
      see({ at: which[judged]!, ended: 'caught: it does not come back', seconds });
      judged += 1;
      child.kill('SIGKILL');
    }, 500);
    child.on('message', (news: Judged) => {
      if (news.at < 0) {
        began = performance.now();
        return;
      }
      see(news);
      judged += 1;
      began = performance.now();
    });
    child.on('exit', (code) => {
      clearInterval(watch);
      if (code === FAILS_BEFORE) throw new Error('tests fail before anything is changed');
      if (code !== 0 && code !== null && judged < which.length) {
        see({ at: which[judged]!, ended: 'caught: it ends the process', seconds: 0 });
        judged += 1;
      }
      done(judged);
    });
  });
}

/** In a process of its own: runs the tests of each mutant's folder with the mutant in the place of its module. No file is written. */
export async function judge(which: readonly number[]): Promise<void> {
  const { createVitest } = await import('vitest/node');
  let mutant: Mutant | undefined;
  const root = process.cwd();
  const instead: Plugin = {
    name: 'mutant',
    enforce: 'pre',
    transform: (code, id) =>
      mutant && id.split('?')[0] === resolve(root, mutant.file)
        ? code.replace(mutant.from, () => mutant!.to)
        : undefined,
  };
  const vitest = await createVitest(
    'test',
    {
      root,
      watch: false,
      run: true,
      reporters: [{}],
      include: ['tests/**/*.test.ts', CHECKED],
      globalSetup: [],
      pool: 'threads',
      maxWorkers: 1,
      isolate: false,
      bail: 1,
    },
    { plugins: [instead] },
  );
  await vitest.standalone();
  const passes = async (file: string): Promise<boolean> => {
    const specs = await vitest.globTestSpecifications([file]);
    const { testModules, unhandledErrors } = await vitest.runTestSpecifications(specs);
    const own = testModules.filter(({ moduleId }) => specs.some((spec) => spec.moduleId === moduleId));
    return own.length === specs.length && unhandledErrors.length === 0 && own.every((one) => one.ok());
  };
  /** Tells that a test file has come to its end. */
  const alive = (): boolean => process.send!({ at: -1, ended: '', seconds: 0 } satisfies Judged);
  const testsOf = ({ file }: Mutant): string[] => [...TESTS[file.split('/')[1]!]!, CHECKED];
  for (const file of new Set(which.flatMap((at) => testsOf(MUTANTS[at]!)))) {
    if (!(await passes(file))) {
      console.error(`${file} fails before anything is changed`);
      process.exit(FAILS_BEFORE);
    }
    alive();
  }
  for (const at of which) {
    const began = performance.now();
    mutant = MUTANTS[at]!;
    const module = resolve(root, mutant.file);
    vitest.invalidateFile(module);
    let ended = 'survives';
    for (const file of testsOf(mutant)) {
      const fine = await passes(file);
      alive();
      if (fine) continue;
      ended = `caught by ${file.replace(/^tests\//, '')}`;
      break;
    }
    process.send!({ at, ended, seconds: (performance.now() - began) / 1000 } satisfies Judged);
    mutant = undefined;
    vitest.invalidateFile(module);
  }
  await vitest.close();
}
