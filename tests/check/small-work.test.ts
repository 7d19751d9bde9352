import { expect, test } from 'vitest';
import type { Family } from '../../src/check/claim.ts';
import { fileSet } from '../../src/check/file-set.ts';
import { checkFiles } from '../../src/check/index.ts';
import { smallWork } from './support/small-work.ts';

test('every claim holds of a work that was written out by hand', async () => {
  const { holds, claims } = await checkFiles(smallWork());
  expect(claims.filter((claim) => !claim.holds)).toEqual([]);
  expect(holds).toBe(true);
  expect(claims.length).toBeGreaterThan(100);
});

const families = import.meta.glob<Family>('../../src/check/claims/*.ts', { eager: true, import: 'default' });

/** Speaks only where the layout states a lap or a gap between colours, which the small work does not. */
const ASKED = 'meeting.ts';
/** Of files that are not among those written out by hand here, or of surfaces that the small work is none of; each has a test file of its own name. */
const ELSEWHERE = [
  'marks-large',
  'job-sheet-pdf',
  'job-sheet-print',
  'job-sheet-surface',
  'cloth',
  'refit',
  'room',
  'stairs',
  'floor',
  'floor-labels',
  'room-border',
  'room-marks',
  'room-labels',
  'room-template',
  'paint',
  'paint-days',
  'paint-goods',
  'paint-page',
];
const isElsewhere = (place: string): boolean => ELSEWHERE.includes(place.replace(/^.*\/|\.ts$/g, ''));

test('colours that lap or keep a gap are spoken of where the layout says so', async () => {
  const files = smallWork();
  const layout = JSON.parse(String(files.get('layout.json')));
  layout.job.meeting = { way: 'gap', by: 1, order: Object.values(layout.colours) };
  files.set('layout.json', JSON.stringify(layout));
  const [place] = Object.keys(families).filter((name) => name.endsWith(ASKED));
  expect(await families[place!]!(fileSet(files))).not.toEqual([]);
});

test.each(Object.keys(families).filter((name) => !name.endsWith(ASKED) && !isElsewhere(name)))(
  '%s makes claims of the files that are there, and of those that are not',
  async (place) => {
    const held = await families[place]!(fileSet(smallWork()));
    expect(held.length).toBeGreaterThan(0);
    expect(held.every((claim) => claim.holds)).toBe(true);
    const bare = await families[place]!(fileSet(new Map()));
    expect(bare.some((claim) => claim.holds && claim.file !== '')).toBe(false);
  },
);

test('the same files give the same claims in the same order, text or bytes', async () => {
  const files = smallWork();
  const bytes = new Map(
    [...files]
      .reverse()
      .map(([name, content]) => [name, typeof content === 'string' ? new TextEncoder().encode(content) : content]),
  );
  expect(await checkFiles(bytes)).toEqual(await checkFiles(files));
});

test('no claim stands twice', async () => {
  const { claims } = await checkFiles(smallWork());
  const names = claims.map(({ claim, file }) => `${file}: ${claim}`);
  expect(names.filter((name, at) => names.indexOf(name) !== at)).toEqual([]);
});
