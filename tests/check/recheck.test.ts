import { expect, test } from 'vitest';
import { checkFiles } from '../../src/check/index.ts';
import { recheck } from './support/recheck.ts';
import { smallWork } from './support/small-work.ts';
import { change, changeLayout, type Files, without } from './support/tamper.ts';

const files = smallWork();

const CHANGED: Record<string, (all: Files) => Files> = {
  nothing: (all) => new Map(all),
  'a corner of the plan': (all) => change(all, 'plan.svg', (svg) => svg.replace(/( d="M)-?[\d.]+/, '$19')),
  'a window of a sheet': (all) => change(all, 'stencil-red-1.svg', (svg) => svg.replace(/( d="M)-?[\d.]+/, '$19')),
  'a reading of the marks': (all) =>
    change(all, 'marks.csv', (csv) => csv.replace(/\n([\w-]+,[\w ]+,1),[^,]*/, '\n$1,77 mm')),
  'the number of repeats': (all) =>
    changeLayout(all, ({ layout }) => {
      layout.repeats.across += 1;
    }),
  'the words of the job sheet': (all) => change(all, 'job-sheet.html', (html) => html.replace(/sheet/g, 'sheep')),
  'a picture of one byte': (all) => new Map(all).set('plan.png', Uint8Array.of(0)),
  'no template': (all) => without(all, 'template.svg'),
  'no layout': (all) => without(all, 'layout.json'),
  'one file more': (all) => new Map(all).set('stencil-red-9.svg', '<svg/>'),
  'bytes in place of text': (all) => new Map(all).set('marks.csv', Buffer.from(all.get('marks.csv') as string)),
};

test.each(Object.entries(CHANGED))(
  'with %s changed, what is claimed anew is what a whole check claims',
  async (_, change) => {
    const changed = change(files);
    expect(await recheck(files, changed)).toEqual(await checkFiles(changed));
  },
);
