import {
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Files, writeFolder } from '../../../src/write/folder.ts';
import { type Kind, saidOf, toBytes, toText } from '../kind.ts';

const NAMES = [
  'plan.svg',
  'layout.json',
  'a',
  '..',
  '.',
  '',
  '../secret',
  '/tmp/x',
  'a/b',
  'a\\b',
  '.lock',
  '.written.json',
  '.writing.json',
  '.stage-1',
  '.stage-plan.svg',
  '.keep-plan.svg',
  '.lock-1',
  'A.svg',
  'con',
  'a:b',
  'ü.svg',
  'a\0b',
  'a\nb',
  'x'.repeat(300),
];
const THINGS = ['file', 'folder', 'link', 'dead link', 'link to a folder', 'record'] as const;
/** What stands in the output folder before, and the names of what is to be written there. */
type Case = { before: [name: string, what: (typeof THINGS)[number]][]; write: string[]; replace: boolean };

const SECRET = 'nobody writes here';
const within = (name: string): boolean =>
  /^[^/\\\0]+$/.test(name) && name.length < 200 && name !== '.' && name !== '..';

function put(dir: string, top: string, [name, what]: Case['before'][number]): void {
  const path = join(dir, name);
  if (lstatSync(path, { throwIfNoEntry: false })) return;
  if (what === 'folder') mkdirSync(path);
  else if (what === 'file') writeFileSync(path, 'of somebody else');
  else if (what === 'record')
    writeFileSync(
      path,
      JSON.stringify({
        evenfield: 1,
        files: { '../secret': 'x', 'plan.svg': '0' },
        moves: [{ from: '../secret', to: 'plan.svg' }],
      }),
    );
  else
    symlinkSync(
      what === 'link' ? join(top, 'secret') : what === 'dead link' ? join(top, 'nowhere') : join(top, 'elsewhere'),
      path,
    );
}

/** Output folders with links, folders and strangers in the way, and names that lead out of them. */
const kind: Kind = {
  says: 'output folders with links in them, and names that lead out',
  share: 50,
  limit: 2,
  ending: 'json',
  make(random) {
    const names = NAMES.filter(within);
    const made: Case = {
      before: Array.from({ length: random.below(4) }, () => [random.pick(names), random.pick(THINGS)]),
      write: Array.from({ length: 1 + random.below(4) }, () =>
        random.pick(random.chance(0.6) ? NAMES.slice(0, 3) : NAMES),
      ),
      replace: random.chance(0.5),
    };
    return toBytes(JSON.stringify(made));
  },
  async run(bytes) {
    const { before, write, replace } = JSON.parse(toText(bytes)) as Case;
    const top = mkdtempSync(join(tmpdir(), 'evenfield-fuzz-'));
    const dir = join(top, 'out');
    try {
      mkdirSync(dir);
      mkdirSync(join(top, 'elsewhere'));
      writeFileSync(join(top, 'secret'), SECRET);
      for (const one of before) put(dir, top, one);
      const files: Files = new Map(write.map((name) => [name, `made ${name}`]));
      const written = await writeFolder(dir, files, { replace });
      if (readFileSync(join(top, 'secret'), 'utf8') !== SECRET) throw new Error('written through a link');
      if (readdirSync(join(top, 'elsewhere')).length > 0) throw new Error('written into a folder behind a link');
      const beside = readdirSync(top).sort().join(' ');
      if (beside !== 'elsewhere out secret') throw new Error(`written beside the folder: ${beside}`);
      if (written.ok)
        for (const [name, text] of files)
          if (readFileSync(join(dir, name), 'utf8') !== text) throw new Error(`${name} is not what was written`);
      return saidOf(written);
    } finally {
      rmSync(top, { recursive: true, force: true });
    }
  },
};

export default kind;
