import { Inflate, strToU8, zlibSync } from 'fflate';
import { fail, good, type Result } from '../../issue.ts';

const HASH = '#job=';
/** Longer links are cut off by some programs that pass them on. Characters; common practice, no source. */
export const LONGEST_LINK = 8000;
/** What is read at most, packed and unpacked: a job file holds 1 MB at most. */
const MOST_PACKED = 400_000;
const MOST_TEXT = 1_000_000;
/** Unpacked bit by bit, so that a small link cannot fill the memory. Bytes. */
const BIT = 256;

/** Base64 for addresses (RFC 4648, section 5), without padding. */
function toBase64Url(bytes: Uint8Array): string {
  let letters = '';
  for (const byte of bytes) letters += String.fromCharCode(byte);
  return btoa(letters).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '');
}

function fromBase64Url(text: string): Uint8Array | undefined {
  if (!/^[\w-]*$/.test(text)) return undefined;
  try {
    const letters = atob(text.replaceAll('-', '+').replaceAll('_', '/'));
    return Uint8Array.from(letters, (letter) => letter.charCodeAt(0));
  } catch {
    return undefined;
  }
}

/** The check on a text that ends the zlib format (RFC 1950, section 8.2): one letter of a link changed, and it differs. */
function adler32(bytes: Uint8Array): number {
  let sum = 1;
  let sums = 0;
  for (const byte of bytes) {
    sum = (sum + byte) % 65521;
    sums = (sums + sum) % 65521;
  }
  return sums * 65536 + sum;
}

/** Its two first bytes: DEFLATE, no dictionary of its own, the pair a multiple of 31 (RFC 1950, section 2.2). */
const isZlib = (bytes: Uint8Array): boolean =>
  bytes.length > 6 && (bytes[0]! & 15) === 8 && (bytes[1]! & 32) === 0 && (bytes[0]! * 256 + bytes[1]!) % 31 === 0;

function unpacked(packed: Uint8Array): Uint8Array | 'too much' | undefined {
  if (!isZlib(packed)) return undefined;
  const inner = packed.subarray(2, -4);
  const parts: Uint8Array[] = [];
  let length = 0;
  let isWhole = false;
  const inflate = new Inflate((part, last) => {
    parts.push(part.slice());
    length += part.length;
    isWhole ||= last === true;
  });
  try {
    for (let from = 0; from < inner.length; from += BIT) {
      inflate.push(inner.subarray(from, from + BIT), from + BIT >= inner.length);
      if (length > MOST_TEXT) return 'too much';
    }
  } catch {
    return undefined;
  }
  if (!isWhole) return undefined;
  const whole = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  const end = packed.length - 4;
  const check = new DataView(packed.buffer, packed.byteOffset).getUint32(end);
  return adler32(whole) === check ? whole : undefined;
}

/** What stands behind the address of the page to carry a job: `#job=` and the text of its job file, packed in the zlib format (RFC 1950). */
export const hashOf = (text: string): string => `${HASH}${toBase64Url(zlibSync(strToU8(text), { level: 9 }))}`;

export const isJobHash = (hash: string): boolean => hash.startsWith(HASH);

const REFUSED = 'ask for the job file itself, and open that';

/** The text of the job that a link carries. Issues: `link/large`, `link/broken`. Nothing of it is run; it is text until it is read as a job file. */
export function readHash(hash: string): Result<string> {
  const carried = hash.slice(HASH.length);
  const large = () =>
    fail(
      'link/large',
      [],
      'the link carries far more than a job file holds (1 MB at most), so it was not opened',
      REFUSED,
    );
  if (carried.length > MOST_PACKED) return large();
  const packed = fromBase64Url(carried);
  const bytes = packed ? unpacked(packed) : undefined;
  if (bytes === 'too much') return large();
  if (bytes === undefined) {
    return fail(
      'link/broken',
      [],
      'the link is not whole: part of it was lost or changed on its way',
      `copy the whole link again, or ${REFUSED}`,
    );
  }
  try {
    return good(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch {
    return fail('link/broken', [], 'what the link carries is not text', REFUSED);
  }
}
