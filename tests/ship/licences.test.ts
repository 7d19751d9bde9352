import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { inflateRawSync } from 'node:zlib';
import { beforeAll, expect, test } from 'vitest';
import { builtPage } from '../page/support.ts';

const ROOT = resolve(import.meta.dirname, '../..');

interface MadeOf {
  parts: { name: string; version: string; licence: string; text: number }[];
  texts: string[];
}

let madeOf: MadeOf;
let packed: number;
let code: string;
let beside: string;

beforeAll(async () => {
  const folder = await builtPage();
  const page = readFileSync(join(folder, 'index.html'), 'utf8');
  const [, list] = /<script type="text\/plain" id="made-of">([^<]*)<\/script>/.exec(page)!;
  packed = list!.length;
  madeOf = JSON.parse(inflateRawSync(Buffer.from(list!, 'base64')).toString());
  // The engine is the longest run of base64 in the page.
  const [engine] = page.match(/[A-Za-z0-9+/]{100000,}={0,2}/g)!.sort((a, b) => b.length - a.length);
  code = page.replace(engine!, '') + inflateRawSync(Buffer.from(engine!, 'base64')).toString();
  beside = readFileSync(join(folder, 'licences.txt'), 'utf8');
}, 300_000);

/** Folders of every package that the page could have something of: what is depended on, directly or not, and what only the page uses. */
function reachable(): Map<string, string> {
  const { dependencies } = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8'));
  const found = new Map<string, string>();
  const left = [...Object.keys(dependencies), 'preact', '@preact/signals'];
  for (let name = left.pop(); name !== undefined; name = left.pop()) {
    const folder = join(ROOT, 'node_modules', name);
    if (found.has(name) || !existsSync(folder)) continue;
    found.set(name, folder);
    left.push(...Object.keys(JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')).dependencies ?? {}));
  }
  return found;
}

const scriptsIn = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.[cm]?js$/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name))
    .filter((file) => !file.slice(folder.length).includes('node_modules') && statSync(file).size < 3e6);

/** Sentences that are written in one package and in no other. */
function sentences(): Map<string, string> {
  const saidBy = new Map<string, string>();
  const shared = new Set<string>();
  for (const [name, folder] of reachable())
    for (const file of scriptsIn(folder))
      for (const [, said] of readFileSync(file, 'utf8').matchAll(/["'`]([A-Za-z][A-Za-z ,.:-]{23,})["'`]/g)) {
        if ((saidBy.get(said!) ?? name) !== name) shared.add(said!);
        saidBy.set(said!, name);
      }
  for (const said of shared) saidBy.delete(said);
  return saidBy;
}

test('every package whose own sentences are found in the page is in its list', () => {
  const found = new Set([...sentences()].filter(([said]) => code.includes(said)).map(([, name]) => name));
  const listed = new Set(madeOf.parts.map(({ name }) => name));
  expect(found.size).toBeGreaterThan(6);
  expect([...found].filter((name) => !listed.has(name))).toEqual([]);
});

test('fonts in the page are in its list, under the SIL Open Font License 1.1', () => {
  // The licence's own title, https://openfontlicense.org.
  for (const name of ['@fontsource/barlow', '@fontsource/libre-baskerville']) {
    const part = madeOf.parts.find((one) => one.name === name)!;
    expect(part.licence).toBe('OFL-1.1');
    expect(madeOf.texts[part.text]).toContain('SIL OPEN FONT LICENSE Version 1.1');
    expect(madeOf.texts[part.text]).toMatch(/Copyright/);
  }
});

test('each has the version that is installed and the words of its own licence, each text once', () => {
  expect(new Set(madeOf.texts).size).toBe(madeOf.texts.length);
  for (const { name, version, licence, text } of madeOf.parts) {
    const folder = join(ROOT, 'node_modules', name);
    const own = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
    expect([version, licence]).toEqual([own.version, own.license]);
    const file = readdirSync(folder).find((one) => /^licen[cs]e/i.test(one));
    const words = madeOf.texts[text]!;
    if (file) expect(words).toBe(readFileSync(join(folder, file), 'utf8').replaceAll('\r', '').trim());
    // saxes 6.0.0 brings none: https://github.com/lddubeau/saxes, LICENSE.
    else expect(words).toMatch(/^Copyright \(c\) Contributors\n(?:.*\n)+Permission to use, copy, modify/);
    expect(beside).toContain(`${name} ${version} (${licence})`);
    expect(beside).toContain(words);
  }
});

test('only licences that go with the MIT licence of the whole', () => {
  // Permissive by the list of the Blue Oak Council (https://blueoakcouncil.org/list, from memory), and the font licence, which lets fonts be bundled with any software.
  const fine = ['MIT', 'ISC', '0BSD', 'BSD-3-Clause', 'BSL-1.0', 'BlueOak-1.0.0', 'OFL-1.1'];
  expect(madeOf.parts.filter(({ licence }) => !fine.includes(licence))).toEqual([]);
});

test('the list takes at most 12 kB of the page', () => {
  expect(packed).toBeLessThan(12_000);
});
