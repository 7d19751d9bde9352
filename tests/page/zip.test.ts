import { inflateRawSync } from 'node:zlib';
import { afterEach, expect, test } from 'vitest';
import { zipOf } from '../../src/page/state/zip.ts';

const zone = process.env.TZ;
afterEach(() => {
  if (zone === undefined) delete process.env.TZ;
  else process.env.TZ = zone;
});

const files = new Map<string, string | Uint8Array>([
  ['hall/plan.svg', '<svg/>'.repeat(200)],
  ['hall/plan.png', Uint8Array.from([1, 2, 3, 4])],
  ['hall.job.yaml', '123456789'],
]);

interface Entry {
  name: string;
  time: number;
  date: number;
  crc: number;
  bytes: Buffer;
}

/** The files in a zip file, by its central directory (PKWARE APPNOTE 6.3.10, sections 4.3.7, 4.3.12 and 4.3.16). */
function entries(zip: Uint8Array): Entry[] {
  const all = Buffer.from(zip);
  const end = all.lastIndexOf(Buffer.from('504b0506', 'hex'));
  const count = all.readUInt16LE(end + 10);
  let at = all.readUInt32LE(end + 16);
  return Array.from({ length: count }, () => {
    expect(all.readUInt32LE(at)).toBe(0x02014b50);
    const [method, time, date] = [10, 12, 14].map((from) => all.readUInt16LE(at + from));
    const [crc, packed, size] = [16, 20, 24].map((from) => all.readUInt32LE(at + from));
    const [nameLength, extra, comment] = [28, 30, 32].map((from) => all.readUInt16LE(at + from));
    const local = all.readUInt32LE(at + 42);
    const name = all.toString('utf8', at + 46, at + 46 + nameLength!);
    at += 46 + nameLength! + extra! + comment!;
    expect(all.readUInt32LE(local)).toBe(0x04034b50);
    const from = local + 30 + all.readUInt16LE(local + 26) + all.readUInt16LE(local + 28);
    const body = all.subarray(from, from + packed!);
    const bytes = method === 8 ? inflateRawSync(body) : body;
    expect(bytes.length).toBe(size);
    return { name, time: time!, date: date!, crc: crc!, bytes };
  });
}

test('every file is in it whole, as the published form of zip files says', () => {
  const found = entries(zipOf(files));
  expect(found.map(({ name }) => name).sort()).toEqual([...files.keys()].sort());
  for (const { name, bytes } of found) expect(bytes).toEqual(Buffer.from(files.get(name)! as string));
  // The check value of CRC-32 for the text 123456789 in the catalogue of parametrised CRC algorithms (G. Cook).
  expect(found.find(({ name }) => name === 'hall.job.yaml')!.crc).toBe(0xcbf43926);
});

test('the same files give the same bytes whatever the hour, the zone and the order', () => {
  process.env.TZ = 'Pacific/Auckland';
  const east = zipOf(files);
  process.env.TZ = 'America/Los_Angeles';
  const west = zipOf(new Map([...files].reverse()));
  expect(Buffer.from(east).equals(Buffer.from(west))).toBe(true);
  // 1 January 1980, midnight: day 1, month 1, year 0 (APPNOTE 4.4.6, MS-DOS date and time).
  for (const { date, time } of entries(east)) expect([date, time]).toEqual([(0 << 9) | (1 << 5) | 1, 0]);
});
