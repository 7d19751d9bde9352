import { readdirSync, readFileSync } from 'node:fs';
import { deflateSync, inflateSync } from 'node:zlib';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { hashOf, isJobHash, LONGEST_LINK, readHash } from '../../src/page/state/link.ts';

const samples = readdirSync('samples').filter((name) => name.endsWith('.job.yaml'));

/** The zlib format (RFC 1950) by zlib, base64url (RFC 4648, section 5) by Node. */
const byOthers = {
  write: (bytes: Uint8Array | string) => `#job=${deflateSync(bytes).toString('base64url')}`,
  read: (hash: string) => inflateSync(Buffer.from(hash.slice(5), 'base64url')).toString('utf8'),
};

test('what is written, zlib and Node read; what they write is read', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme', maxLength: 400 }), (text) => {
      const hash = hashOf(text);
      expect(hash).toMatch(/^#job=[\w-]*$/);
      expect(isJobHash(hash)).toBe(true);
      const whole = Buffer.from(text, 'utf8').toString('utf8');
      expect(byOthers.read(hash)).toBe(whole);
      expect(readHash(byOthers.write(text))).toEqual({ ok: true, value: whole });
    }),
  );
});

test('every sample fits into a link that programs pass on whole', () => {
  for (const name of samples) {
    const text = readFileSync(`samples/${name}`, 'utf8');
    const hash = hashOf(text);
    expect(hash.length, name).toBeLessThan(LONGEST_LINK);
    expect(readHash(hash)).toEqual({ ok: true, value: text });
  }
});

test('a link that would unpack to more than a job is refused before it fills the memory', () => {
  for (const size of [1_000_001, 50_000_000]) {
    const hash = byOthers.write(Buffer.alloc(size, 'a'));
    expect(hash.length).toBeLessThan(400_000);
    expect(readHash(hash)).toMatchObject({ ok: false, issues: [{ code: 'link/large' }] });
  }
  expect(readHash(`#job=${'A'.repeat(5_000_000)}`)).toMatchObject({ ok: false, issues: [{ code: 'link/large' }] });
  expect(readHash(byOthers.write(Buffer.alloc(1_000_000, 'a')))).toMatchObject({ ok: true });
});

test('a link that was cut off or spoilt is refused, and nothing is thrown', () => {
  const whole = hashOf(readFileSync('samples/passage-runner.job.yaml', 'utf8'));
  for (const broken of ['#job=', '#job=%%%', '#job=é', whole.slice(0, -9), `${whole.slice(0, 40)}!${whole.slice(41)}`])
    expect(readHash(broken), broken).toMatchObject({ ok: false, issues: [{ code: 'link/broken' }] });
  // Bytes that are no UTF-8 (RFC 3629: C0 80 is overlong, FF never occurs).
  for (const bytes of [
    [0xc0, 0x80],
    [0x61, 0xff],
  ])
    expect(readHash(byOthers.write(Uint8Array.from(bytes)))).toMatchObject({ ok: false });
  for (const [name, arrange] of [
    ['bytes at random', fc.uint8Array({ maxLength: 300 })],
    [
      'bytes behind the first two of the format',
      fc.uint8Array({ maxLength: 300 }).map((bytes) => [0x78, 0xda, ...bytes]),
    ],
  ] as const)
    fc.assert(
      fc.property(arrange, (bytes) => {
        const hash = `#job=${Buffer.from(bytes).toString('base64url')}`;
        const read = readHash(hash);
        // Where zlib finds a text in it, so may this; else it is refused.
        if (read.ok) expect(byOthers.read(hash), name).toBe(read.value);
        else expect(read.issues[0]!.hint, name).toBeTruthy();
      }),
    );
});

test('one letter of a link changed: it is refused, or carries the very same job', () => {
  const text = readFileSync('samples/passage-runner.job.yaml', 'utf8');
  const whole = hashOf(text);
  const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
  let refused = 0;
  for (let at = '#job='.length; at < whole.length; at++) {
    const other = letters[(letters.indexOf(whole[at]!) + 1 + (at % 63)) % 64]!;
    const read = readHash(whole.slice(0, at) + other + whole.slice(at + 1));
    if (read.ok) expect(read.value).toBe(text);
    else refused++;
  }
  // Only the last letter may hold bits that stand for nothing.
  expect(refused).toBeGreaterThanOrEqual(whole.length - '#job='.length - 1);
});
