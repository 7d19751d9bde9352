import { mkdirSync, writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { isMainThread, parentPort, Worker, workerData } from 'node:worker_threads';
import { writeTable } from '../../src/cli/table.ts';
import { type Judged, judge } from './judge.ts';
import { caseOf, KINDS, shareOut } from './kinds.ts';

/**
 * Tries seeded cases of every kind: `npm run fuzz -- --count 5000 --seed 7`. One case again: `--seed 7 --only svg:123`; one kind: `--only svg`.
 * Ends with 1 when a case fails; the failing cases lie in `out/fuzz` as files.
 */
type Task = { seed: number; kind: string; from: number; to: number };
type News = { number: number; judged?: Judged };

const OUT = 'out/fuzz';
/** Times the limit of its kind that a case may take before it is ended from outside. */
const PATIENCE = 5;

async function work({ seed, kind, from, to }: Task): Promise<void> {
  // What is loaded and compiled on first use belongs to no case.
  await judge(KINDS.get(kind)!, await caseOf(kind, seed, -1));
  for (let number = from; number < to; number++) {
    const bytes = await caseOf(kind, seed, number);
    parentPort!.postMessage({ number } satisfies News);
    const judged = await judge(KINDS.get(kind)!, bytes);
    parentPort!.postMessage({ number, judged } satisfies News);
  }
}

interface Seen {
  kind: string;
  number: number;
  judged: Judged;
}

/** Runs a stretch of cases in a thread of its own, which is ended where one of them does not come back. @returns the number to go on with */
function stretch(task: Task, see: (seen: Seen) => void): Promise<number> {
  const { kind } = task;
  const worker = new Worker(new URL(import.meta.url), {
    workerData: task,
    resourceLimits: { maxOldGenerationSizeMb: 1000 },
  });
  return new Promise((resolve) => {
    let at = { number: task.from, cpu: process.cpuUsage() };
    let next = task.from;
    const end = (wrong: string) => {
      const { user, system } = process.cpuUsage(at.cpu);
      see({ kind, number: at.number, judged: { ended: 'ended', took: (user + system) / 1e6, memory: 0, wrong } });
      next = at.number + 1;
    };
    const watch = setInterval(() => {
      const { user, system } = process.cpuUsage(at.cpu);
      if ((user + system) / 1e6 < PATIENCE * KINDS.get(kind)!.limit) return;
      clearInterval(watch);
      end('does not come back');
      worker.terminate();
    }, 500);
    worker.on('message', ({ number, judged }: News) => {
      at = { number, cpu: process.cpuUsage() };
      if (judged === undefined) return;
      next = number + 1;
      see({ kind, number, judged });
    });
    worker.on('error', (error) => end(`ends the whole process: ${error.message}`));
    worker.on('exit', () => {
      clearInterval(watch);
      resolve(next);
    });
  });
}

async function main(): Promise<void> {
  const { values } = parseArgs({
    options: {
      count: { type: 'string', default: '1000' },
      seed: { type: 'string', default: '1' },
      only: { type: 'string' },
    },
  });
  const [seed, count] = [Number(values.seed), Number(values.count)];
  const [only, one] = values.only?.split(':') ?? [];
  if (!Number.isInteger(seed) || !(Number.isInteger(count) && count > 0) || (only !== undefined && !KINDS.has(only))) {
    console.error(
      `--count and --seed take whole numbers, --only one of ${[...KINDS.keys()].join(', ')}, or as svg:123`,
    );
    process.exit(2);
  }
  const seen: Seen[] = [];
  const began = performance.now();
  for (const [kind, cases] of shareOut(count, only === undefined ? undefined : [only])) {
    const [from, to] = one === undefined ? [0, cases] : [Number(one), Number(one) + 1];
    for (let next = from; next < to; ) {
      next = await stretch({ seed, kind, from: next, to }, (found) => {
        seen.push(found);
        if (found.judged.wrong !== undefined)
          console.error(`${kind}:${found.number} ${found.judged.wrong.split('\n')[0]!.slice(0, 300)}`);
      });
    }
  }
  const failed = seen.filter(({ judged }) => judged.wrong !== undefined);
  report(seen);
  if (failed.length > 0) mkdirSync(OUT, { recursive: true });
  for (const { kind, number, judged } of failed) {
    const file = `${OUT}/${kind}.${seed}-${number}.${KINDS.get(kind)!.ending}`;
    writeFileSync(file, await caseOf(kind, seed, number));
    console.log(
      `\n${file}\n  ${judged.wrong!.replaceAll('\n', '\n  ')}\n  again: npm run fuzz -- --seed ${seed} --only ${kind}:${number}`,
    );
  }
  const { maxRSS } = process.resourceUsage();
  const seconds = Math.round((performance.now() - began) / 1000);
  console.log(
    `\n${seen.length} cases, seed ${seed}, ${seconds} s, at most ${Math.round(maxRSS / 1000)} MB: ${failed.length} failed`,
  );
  process.exitCode = failed.length > 0 ? 1 : 0;
}

function report(seen: Seen[]): void {
  const rows = [...KINDS].flatMap(([name, { says, limit }]) => {
    const all = seen.filter(({ kind }) => kind === name).map(({ judged }) => judged);
    if (all.length === 0) return [];
    const slowest = Math.max(...all.map(({ took }) => took));
    const count = (is: (one: Judged) => boolean) => String(all.filter(is).length);
    const ended = count(({ ended }) => /^(?:taken|made|holds)/.test(ended));
    return [
      [
        name,
        says,
        String(all.length),
        ended,
        `${slowest.toFixed(2)} s`,
        `${limit} s`,
        `${Math.round(Math.max(...all.map(({ memory }) => memory)) / 1e6)} MB`,
        count(({ wrong }) => wrong !== undefined),
      ],
    ];
  });
  console.log(
    writeTable(
      [['kind', 'what', 'cases', 'taken', 'slowest', 'limit', 'memory', 'failed'], ...rows],
      [2, 3, 4, 5, 6, 7],
    ).join('\n'),
  );
  for (const [name] of KINDS) {
    const counts = new Map<string, number>();
    for (const { kind, judged } of seen)
      if (kind === name) counts.set(judged.ended, (counts.get(judged.ended) ?? 0) + 1);
    const most = [...counts].sort((a, b) => b[1] - a[1]).slice(0, 6);
    if (most.length > 0) console.log(`${name}: ${most.map(([ended, times]) => `${times} ${ended}`).join(', ')}`);
  }
  const slow = [...seen].sort((a, b) => b.judged.took - a.judged.took).slice(0, 5);
  const [large] = [...seen].sort((a, b) => b.judged.memory - a.judged.memory);
  if (large) console.log(`\nLargest: ${large.kind}:${large.number} ${Math.round(large.judged.memory / 1e6)} MB`);
  console.log(
    `Slowest: ${slow.map(({ kind, number, judged }) => `${kind}:${number} ${judged.took.toFixed(2)} s`).join(', ')}`,
  );
}

await (isMainThread ? main() : work(workerData as Task));
