import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import type { Row } from './row.ts';

const BUILT = resolve('dist/evenfield.js');
/** Rooms, m, that take about 1,000, 10,000 and 100,000 stars of 48 mm. */
const ROOMS = [
  [1.2, 2],
  [3.8, 6.32],
  [12, 20],
] as const;
/** Time and memory may grow by a fifth more than the repeats. */
const GROWTH = 1.2;
const MOST_MEMORY = 1000;

const jobText = (across: number, along: number): string => `
evenfield: 1
title: Ballroom
surface: floor
site: { room: { near: ${across} m, right: ${along} m, far: ${across} m, left: ${along} m, diagonals: { near-left to far-right: ${Math.hypot(across, along).toFixed(4)} m } } }
field: { motif: eight-point-star, pitch: { across: { from: 45 mm, to: 51 mm, wish: 48 mm } } }
palette: { limewash: '#efe8d8', slate: '#47545c', madder: '#9b4636' }
colours: { ground: limewash, field: slate, alternate: madder }
stencil: { sheet: { across: 24", along: 36", rim: 1" } }
`;

/** Put before the program: it says when it ends what the process took. Seconds of the processor, and MB at most. */
const MEASURE = `data:text/javascript,process.on('exit',()=>{const r=process.resourceUsage();process.stderr.write('\\nTOOK '+(r.userCPUTime+r.systemCPUTime)/1e6+' '+r.maxRSS/1024+'\\n')})`;

interface Took {
  seconds: number;
  memory: number;
}

async function took(words: string[]): Promise<Took> {
  const child = spawn(process.execPath, ['--import', MEASURE, BUILT, ...words], {
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  let said = '';
  child.stderr.setEncoding('utf8').on('data', (text: string) => {
    said += text;
  });
  const status = await new Promise((done) => child.once('close', done));
  const [, seconds, memory] = /TOOK ([\d.]+) ([\d.]+)/.exec(said) ?? [];
  if (status !== 0 || seconds === undefined)
    throw new Error(`evenfield ${words.join(' ')} ended with ${status}: ${said}`);
  return { seconds: Number(seconds), memory: Number(memory) };
}

const repeatsIn = (folder: string): number => {
  const { repeats } = (
    JSON.parse(readFileSync(join(folder, 'layout.json'), 'utf8')) as { layout: { repeats: Record<string, number> } }
  ).layout;
  return repeats.across! * repeats.along!;
};

/** `make` and `check` of floors of about 1,000, 10,000 and 100,000 repeats: what a further repeat takes, and the most memory. */
export async function bench(): Promise<Row[]> {
  if (!existsSync(BUILT)) throw new Error(`${BUILT} is not built; npm run build makes it`);
  const out = mkdtempSync(join(tmpdir(), 'evenfield-large-'));
  const runs: { repeats: number; make: Took; check: Took }[] = [];
  for (const [n, [across, along]] of ROOMS.entries()) {
    const folder = join(out, `${n}`);
    mkdirSync(folder);
    const job = join(folder, 'ballroom.job.yaml');
    writeFileSync(job, jobText(across, along));
    const make = await took(['make', job, '--out', folder]);
    const check = await took(['check', join(folder, 'ballroom')]);
    runs.push({ repeats: repeatsIn(join(folder, 'ballroom')), make, check });
  }
  rmSync(out, { recursive: true, force: true });
  const [small, middle, large] = runs as [(typeof runs)[0], (typeof runs)[0], (typeof runs)[0]];
  return (['make', 'check'] as const).flatMap((command): Row[] => {
    const figure = (of: keyof Took, digits: number) => runs.map((run) => run[command][of].toFixed(digits)).join(', ');
    /** How many times as much it is as on a smaller floor, for how many times the repeats. */
    const growth = (of: keyof Took, from: (typeof runs)[0]) =>
      large[command][of] / from[command][of] / (large.repeats / from.repeats);
    const worst = Math.max(growth('seconds', small), growth('seconds', middle));
    const { memory } = large[command];
    return [
      {
        row: `${command}: ${runs.map(({ repeats }) => repeats.toLocaleString('en')).join(', ')} repeats`,
        figure: `${figure('seconds', 1)} s of the processor; growth ${worst.toFixed(2)} × that of the repeats`,
        limit: `at most ${GROWTH} ×`,
        holds: worst <= GROWTH,
      },
      {
        row: `${command}: memory at ${large.repeats.toLocaleString('en')} repeats`,
        figure: `${memory.toFixed(0)} MB (${figure('memory', 0)})`,
        limit: command === 'make' ? `under ${MOST_MEMORY} MB` : `under ${2 * MOST_MEMORY} MB`,
        holds: memory < (command === 'make' ? 1 : 2) * MOST_MEMORY,
      },
    ];
  });
}
