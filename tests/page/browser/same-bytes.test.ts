import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import { expect, test } from 'vitest';
import { hashOf } from '../../../src/page/state/link.ts';
import { evenfield, folder } from '../../cli/support.ts';
import { downloaded, drawn, filesMade, useBrowser } from './opened.ts';

const around = useBrowser();

const jobOf = (name: string): string => readFileSync(`samples/${name}.job.yaml`, 'utf8');

/** Digits of its own, a dotless i, a comma for a point, clocks off the whole hour; a number and the hour as they are written there. */
const PLACES = [
  { locale: 'ar-EG', timezoneId: 'Asia/Kathmandu' },
  { locale: 'tr-TR', timezoneId: 'Pacific/Chatham' },
];
// Unicode CLDR: decimal signs and digits of these languages. IANA time zone database: +05:45; +12:45, or +13:45 in its summer.
const THERE: [string, string, number[]][] = [
  ['١٫٥', 'i', [-345]],
  ['1,5', 'ı', [-765, -825]],
];

/** The zip of all files that the page makes of a job, where it stands. */
async function madeAt(at: number, name: string, title: string): Promise<Buffer> {
  const { context } = await around.context(PLACES[at]);
  const page = await context.newPage();
  await page.goto(around.address() + hashOf(jobOf(name)));
  await page.getByRole('heading', { level: 1, name: title }).waitFor();
  await drawn(page);
  const [number, letter, minutes] = THERE[at]!;
  const found = await page.evaluate(() => [
    (1.5).toLocaleString(),
    'I'.toLocaleLowerCase(navigator.language),
    new Date().getTimezoneOffset(),
  ]);
  expect(found).toEqual([number, letter, expect.toBeOneOf(minutes)]);
  await filesMade(page);
  const { bytes } = await downloaded(page, () => page.getByRole('button', { name: /^Save all \d+ files/ }).click());
  return bytes;
}

/** The names of files that the command line writes of a job, and of those that differ from the ones in a zip. */
function besideCommand(name: string, zipped: Buffer): { names: string[]; differing: string[] } {
  const dir = folder();
  writeFileSync(join(dir, `${name}.job.yaml`), jobOf(name));
  const env = { ...process.env, TZ: 'Pacific/Marquesas', LANG: 'hi_IN.UTF-8', LC_ALL: 'hi_IN.UTF-8' };
  expect(evenfield(dir, ['make', `${name}.job.yaml`], { env }).err).toBe('');
  const out = join(dir, 'out', name);
  const zip = new Map(Object.entries(unzipSync(zipped)).map(([path, bytes]) => [path.split('/').at(-1), bytes]));
  const names = readdirSync(out).filter((file) => !file.startsWith('.'));
  return {
    names,
    differing: names.filter((file) => !readFileSync(join(out, file)).equals(zip.get(file) ?? new Uint8Array())),
  };
}

test('the page makes the same bytes in every language and time zone, and the command line makes them too', async () => {
  const zips = [
    await madeAt(0, 'scullery-floor', 'Scullery floor'),
    await madeAt(1, 'scullery-floor', 'Scullery floor'),
  ];
  expect(zips[1]!.equals(zips[0]!)).toBe(true);
  const { names, differing } = besideCommand('scullery-floor', zips[0]!);
  expect(names.length).toBeGreaterThan(8);
  // A picture is drawn by the browser here and by a library there: the same drawing, not the same bytes.
  expect(differing.filter((file) => !file.endsWith('.png'))).toEqual([]);
});

test('a job sheet that has pictures in it is made too, and all beside it are the same bytes', async () => {
  const { names, differing } = besideCommand(
    'morning-room-border',
    await madeAt(0, 'morning-room-border', 'Morning room border'),
  );
  expect(names).toContain('job-sheet.pdf');
  expect(differing.filter((file) => !file.endsWith('.png') && file !== 'job-sheet.pdf')).toEqual([]);
});
