import { readFileSync } from 'node:fs';
import { SaxesParser } from 'saxes';
import { expect, test } from 'vitest';
import { parseTree } from '../../src/job/tree.ts';
import { inOrder, purposeOf } from '../../src/page/parts/files/names.ts';
import { sheetDrawing } from '../../src/page/parts/stencil/sheet-drawing.ts';
import { kindOf, readText, sayBytes } from '../../src/page/state/given-read.ts';
import { makeFiles } from '../../src/pipeline.ts';

const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);
const codeOf = (bytes: Uint8Array, name = 'hall.job.yaml'): string => {
  const read = readText(bytes, name);
  return read.ok ? 'read' : read.issues[0]!.code;
};

test('text is read; what is no text, too large or in another encoding is refused with a way out', () => {
  expect(readText(utf8('run: 12½"\r\n\t# señor'), 'a.yaml')).toEqual({ ok: true, value: 'run: 12½"\r\n\t# señor' });
  // RFC 3629: C0 80 is overlong, ED A0 80 a surrogate, F5 beyond the last plane.
  for (const bad of [
    [0xc0, 0x80],
    [0xed, 0xa0, 0x80],
    [0xf5, 0x80, 0x80, 0x80],
  ])
    expect(codeOf(Uint8Array.from(bad))).toBe('file/encoding');
  // The byte order marks of UTF-16 (RFC 2781, section 3.2).
  expect(codeOf(Uint8Array.from([0xff, 0xfe, 0x61, 0]))).toBe('file/encoding');
  expect(codeOf(Uint8Array.from([0xfe, 0xff, 0, 0x61]))).toBe('file/encoding');
  // The first bytes of a PNG (ISO/IEC 15948, 5.2) and of a zip file (APPNOTE 4.3.7).
  expect(codeOf(Uint8Array.from([137, 80, 78, 71, 13, 10, 26, 10]))).toBe('file/binary');
  expect(codeOf(Uint8Array.from([0x50, 0x4b, 3, 4]))).toBe('file/binary');
  expect(codeOf(utf8('%PDF-1.7'), 'sheet.pdf')).toBe('file/binary');
  expect(codeOf(utf8(' \n'))).toBe('file/empty');
  expect(codeOf(new Uint8Array(1_000_001).fill(97))).toBe('file/large');
  expect(codeOf(new Uint8Array(1_000_000).fill(97))).toBe('read');
});

const kindOfText = (text: string) => {
  const parsed = parseTree(text);
  return parsed.ok ? kindOf(parsed.value.tree) : undefined;
};

test('a job, a house and another list are told apart', () => {
  expect(kindOfText(readFileSync('samples/passage-runner.job.yaml', 'utf8'))).toBe('job');
  expect(kindOfText('title: Mill Lane\npalette: { chalk: "#efe9dc" }\n')).toBe('house');
  expect(kindOfText('milk: 2\nbread: 1\n')).toBeUndefined();
});

test('sizes are told with the prefixes of the SI', () => {
  // SI brochure, 9th edition, table 7: kilo 1000, mega 1 000 000.
  expect(sayBytes(999)).toBe('999 bytes');
  expect(sayBytes(1000)).toBe('1.0 kB');
  expect(sayBytes(12_345)).toBe('12 kB');
  expect(sayBytes(999_600)).toBe('1.0 MB');
  expect(sayBytes(20_000_000)).toBe('20 MB');
});

const made = await makeFiles(readFileSync('samples/passage-runner.job.yaml', 'utf8'), 'passage-runner.job.yaml');

test('every file that is made is told what it is for, and the job sheet comes first', () => {
  if (!made.ok) throw new Error(made.issues[0]!.says);
  const names = inOrder(made.value.files.keys());
  expect(names.filter((name) => purposeOf(name) === '')).toEqual([]);
  expect(names[0]).toBe('job-sheet.pdf');
  expect(inOrder(['stencil-a-10.svg', 'stencil-a-2.svg'])).toEqual(['stencil-a-2.svg', 'stencil-a-10.svg']);
});

test('the small drawing of a sheet has what a reader of XML finds in its file', () => {
  if (!made.ok) throw new Error(made.issues[0]!.says);
  const sheets = [...made.value.files].filter(([name]) => name.startsWith('stencil-'));
  expect(sheets.length).toBeGreaterThan(0);
  for (const [, svg] of sheets) {
    const paths: Record<string, string>[] = [];
    let page: Record<string, string> = {};
    const parser = new SaxesParser();
    parser.on('opentag', ({ name, attributes }) => {
      if (name === 'svg') page = attributes as Record<string, string>;
      if (name === 'path') paths.push(attributes as Record<string, string>);
    });
    parser.write(String(svg)).close();
    const drawn = sheetDrawing(String(svg));
    expect([`${drawn.across}mm`, `${drawn.along}mm`]).toEqual([page.width, page.height]);
    const ofKind = (kind: string) => paths.filter(({ id }) => id?.startsWith(kind)).map(({ d }) => d);
    expect(drawn.windows).toEqual(ofKind('window'));
    expect(drawn.windows.length).toBeGreaterThan(0);
    expect(drawn.keys).toEqual(ofKind('key'));
  }
});
