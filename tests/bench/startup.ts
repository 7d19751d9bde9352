import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import { median, type Row } from './row.ts';

const ROUNDS = 21;
const LIMIT = 2;
const BUILT = resolve('dist/evenfield.js');

/** Milliseconds from start to end of a Node process. */
function time(words: string[]): number {
  const began = process.hrtime.bigint();
  const { status, stderr } = spawnSync(process.execPath, words, { encoding: 'utf8' });
  if (status !== 0) throw new Error(`node ${words.join(' ')} ended with ${status}: ${stderr}`);
  return Number(process.hrtime.bigint() - began) / 1e6;
}

/** `evenfield --help` beside a Node that does nothing, turn about, so that both see the same machine. */
export async function bench(): Promise<Row[]> {
  if (!existsSync(BUILT)) throw new Error(`${BUILT} is not built; npm run build makes it`);
  const bare: number[] = [];
  const help: number[] = [];
  for (let round = -2; round < ROUNDS; round++) {
    const pair = [time(['-e', '0']), time([BUILT, '--help'])] as const;
    if (round < 0) continue;
    bare.push(pair[0]);
    help.push(pair[1]);
  }
  const ratio = median(help) / median(bare);
  return [
    {
      row: 'evenfield --help beside node -e 0',
      figure: `${ratio.toFixed(2)} × (${median(help).toFixed(0)} / ${median(bare).toFixed(0)} ms)`,
      limit: `at most ${LIMIT} ×`,
      holds: ratio <= LIMIT,
    },
  ];
}
