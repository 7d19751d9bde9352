import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Ran } from '../cli/support.ts';
import { install, type Packed, pack } from './packed.ts';

export { ROOT } from './packed.ts';

export interface Installed {
  packed: Packed;
  /** Where a person has installed it. */
  folder: string;
  by: 'npm' | 'hand';
  /** The page as it is served. */
  page(): Promise<{ child: ChildProcess; address: string }>;
}

let made: Promise<Installed> | undefined;

const commandIn = (folder: string): string => join(folder, 'node_modules/evenfield/dist/evenfield.js');

function servePage(folder: string): Promise<{ child: ChildProcess; address: string }> {
  const child = spawn(process.execPath, [commandIn(folder), 'page', '--no-open'], { cwd: folder });
  let said = '';
  return new Promise((done, failed) => {
    child.on('exit', () => failed(new Error(said)));
    child.stderr.on('data', (bytes) => {
      said += bytes;
    });
    child.stdout.on('data', (bytes) => {
      said += bytes;
      const [address] = /http:\/\/\S+/.exec(said) ?? [];
      if (address) done({ child, address });
    });
  });
}

/** The package, packed and installed once, however many test files ask for it. */
export function installed(): Promise<Installed> {
  made ??= pack().then((packed) => {
    const { folder, by } = install(packed);
    return { packed, folder, by, page: () => servePage(folder) };
  });
  return made;
}

export async function endInstalled(): Promise<void> {
  const { packed, folder } = await installed();
  made = undefined;
  for (const left of [folder, dirname(packed.file)]) rmSync(left, { recursive: true, force: true });
}

/** Runs the installed command. */
export function run({ folder }: Installed, words: string[]): Ran {
  const { NO_COLOR: _, EVENFIELD_DEBUG: __, ...env } = process.env;
  const ran = spawnSync(process.execPath, [commandIn(folder), ...words], {
    cwd: folder,
    env,
    encoding: 'utf8',
    timeout: 150_000,
  });
  return { status: ran.status, out: ran.stdout, err: ran.stderr };
}
