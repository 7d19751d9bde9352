import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import { expect, test } from 'vitest';
import { hashOf } from '../../../src/page/state/link.ts';
import { evenfield, folder } from '../../cli/support.ts';
import { downloaded, drawn, filesMade, useBrowser } from './opened.ts';

const around = useBrowser();

const NAME = 'scullery-floor';
const JOB = readFileSync(`samples/${NAME}.job.yaml`, 'utf8');

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

/** The zip of all files that the page makes of the job, where it stands. */
async function madeAt(at: number): Promise<Buffer> {
  const { context } = await around.context(PLACES[at]);
  const page = await context.newPage();
  await page.goto(around.address() + hashOf(JOB));
  await page.getByRole('heading', { level: 1, name: 'Scullery floor' }).waitFor();
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

test('the page makes the same bytes in every language and time zone, and the command line makes them too', async () => {
  const zips = [await madeAt(0), await madeAt(1)];
  expect(zips[1]!.equals(zips[0]!)).toBe(true);
  const dir = folder();
  writeFileSync(join(dir, `${NAME}.job.yaml`), JOB);
  const env = { ...process.env, TZ: 'Pacific/Marquesas', LANG: 'hi_IN.UTF-8', LC_ALL: 'hi_IN.UTF-8' };
  expect(evenfield(dir, ['make', `${NAME}.job.yaml`], { env }).err).toBe('');
  const out = join(dir, 'out', NAME);
  const zip = new Map(Object.entries(unzipSync(zips[0]!)).map(([path, bytes]) => [path.split('/').at(-1), bytes]));
  // A picture is drawn by the browser here and by a library there: the same drawing, not the same bytes.
  const names = readdirSync(out).filter((name) => !name.startsWith('.') && !name.endsWith('.png'));
  expect(names.length).toBeGreaterThan(8);
  expect(names.filter((name) => !readFileSync(join(out, name)).equals(zip.get(name) ?? new Uint8Array()))).toEqual([]);
});
