import fc from 'fast-check';
import { expect, test } from 'vitest';
import { followed, type Line, NOTHING, type Step } from '../../src/page/state/history.ts';
import { type Ids, readLine, tidyUp, withUnwritten, writeLine } from '../../src/page/state/keep-line.ts';
import type { Inside, KeptPage, KeptStep, Store } from '../../src/page/state/keep-store.ts';

/** A store as a browser keeps it, in memory: what comes out is a copy, and a change that fails leaves nothing behind. */
function memory() {
  let kept = { steps: new Map<number, KeptStep>(), pages: new Map<number, KeptPage>() };
  let last = 0;
  const inside = (own: typeof kept): Inside => ({
    step: async (id) => structuredClone(own.steps.get(id)),
    steps: async () => structuredClone([...own.steps.values()]),
    async addStep(step) {
      last += 1;
      own.steps.set(last, structuredClone({ ...step, id: last }));
      return last;
    },
    dropStep: async (id) => void own.steps.delete(id),
    pages: async () => structuredClone([...own.pages.values()]),
    async addPage(page) {
      last += 1;
      own.pages.set(last, { ...page, id: last });
      return last;
    },
    putPage: async (page) => void own.pages.set(page.id, { ...page }),
    dropPage: async (id) => void own.pages.delete(id),
    files: async () => [],
    putFile: async () => {},
    dropFile: async () => {},
  });
  const store: Store = {
    async change(work) {
      const own = { steps: new Map(kept.steps), pages: new Map(kept.pages) };
      const result = await work(inside(own));
      kept = own;
      return result;
    },
  };
  return {
    store,
    count: () => kept.steps.size,
    forget() {
      kept = { steps: new Map(), pages: new Map() };
    },
  };
}

const step = (did: string, base = ''): Step => ({ ...NOTHING, tree: { title: did }, did, base });
const begun: Line = { steps: [step('begun', 'evenfield: 1\n')], at: 0 };

/** A page as it stands open: its line, and what it knows of the store. */
class Opened {
  line: Line = begun;
  ids: Ids = new WeakMap();
  id: number | undefined;
  constructor(private store: Store) {}
  async open(from?: number): Promise<this> {
    this.line = (await readLine(this.store, from, this.ids)) ?? this.line;
    return this;
  }
  async do(deed: string, when: number): Promise<void> {
    const { at, steps } = this.line;
    if (deed === 'undo') this.line = { steps, at: Math.max(0, at - 1) };
    else if (deed === 'redo') this.line = { steps, at: Math.min(steps.length - 1, at + 1) };
    else this.line = followed(this.line, step(deed, deed.length > 3 ? deed : steps[at]!.base));
    this.id = await writeLine(this.store, this.id, this.line, this.ids, when);
  }
  /** What another load of this page would find. */
  async kept(): Promise<Line | undefined> {
    return readLine(this.store, this.id, new WeakMap());
  }
}

const deed = fc.record({
  by: fc.nat(2),
  what: fc.oneof(fc.string({ minLength: 1, maxLength: 6 }), fc.constant('undo'), fc.constant('redo')),
});

test('whatever three open pages do in turn, each finds its own line again, also after tidying', async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(deed, { minLength: 3, maxLength: 40 }), async (all) => {
      const { store } = memory();
      const first = new Opened(store);
      await first.do('one', 0);
      const pages = [first, await new Opened(store).open(), await new Opened(store).open(first.id)];
      for (const [n, { by, what }] of all.entries()) await pages[by]!.do(what, n + 1);
      for (const tidy of [false, true]) {
        if (tidy) await tidyUp(store);
        for (const page of pages) {
          if (page.id === undefined) continue;
          expect(await page.kept()).toEqual(page.line);
        }
      }
    }),
    { numRuns: 60 },
  );
});

test('a page that knows no place of its own goes on where the last written one is', async () => {
  const { store } = memory();
  const [a, b] = [new Opened(store), new Opened(store)];
  await a.do('a', 1);
  await b.do('b', 2);
  await a.do('aa', 3);
  expect((await new Opened(store).open()).line).toEqual(a.line);
});

test('one record a step, and none twice', async () => {
  const { store, count } = memory();
  const page = new Opened(store);
  for (let n = 0; n < 50; n++) await page.do(`${n}`, n);
  // The first step and the fifty after it.
  expect(count()).toBe(51);
  for (let n = 0; n < 20; n++) await page.do('undo', 100 + n);
  expect(count()).toBe(51);
  expect((await page.kept())!.at).toBe(30);
});

test('steps that no page can come to are tidied away, those of pages are not', async () => {
  const { store, count } = memory();
  const page = new Opened(store);
  for (let n = 0; n < 10; n++) await page.do(`${n}`, n);
  for (let n = 0; n < 5; n++) await page.do('undo', 20 + n);
  await page.do('another way', 30);
  expect(count()).toBe(12);
  await tidyUp(store);
  expect(count()).toBe(7);
  expect(await page.kept()).toEqual(page.line);
});

test('where the browser cleared its store, an open page writes its whole line again', async () => {
  const { store, forget } = memory();
  const page = new Opened(store);
  for (let n = 0; n < 5; n++) await page.do(`${n}`, n);
  forget();
  await page.do('after', 9);
  expect(await page.kept()).toEqual(page.line);
});

test('a store that fails in mid-change keeps what it had, and the next change makes up for it', async () => {
  const { store } = memory();
  const page = new Opened(store);
  await page.do('kept', 1);
  const before = await page.kept();
  let isFull = true;
  const full: Store = {
    change: (work) =>
      store.change((inside) =>
        work({
          ...inside,
          putPage: (one) => (isFull ? Promise.reject(new Error('QuotaExceededError')) : inside.putPage(one)),
        }),
      ),
  };
  page.line = followed(page.line, step('no room'));
  await expect(writeLine(full, page.id, page.line, page.ids, 2)).rejects.toThrow('QuotaExceeded');
  expect(await page.kept()).toEqual(before);
  isFull = false;
  await writeLine(full, page.id, page.line, page.ids, 3);
  expect(await page.kept()).toEqual(page.line);
});

test('the step that a page left unwritten is found again: a new one, letters more in a field, or a way back', () => {
  const line: Line = { steps: [step('a'), step('b'), { ...step('c'), by: 'run' }], at: 2 };
  const as = ({ steps, at }: Line) => [steps.map(({ did }) => did).join(' '), at];
  expect(as(withUnwritten(line, undefined))).toEqual(['a b c', 2]);
  expect(as(withUnwritten(line, structuredClone(line.steps[2])))).toEqual(['a b c', 2]);
  expect(as(withUnwritten(line, step('d')))).toEqual(['a b c d', 3]);
  expect(as(withUnwritten(line, { ...step('cc'), by: 'run' }))).toEqual(['a b cc', 2]);
  expect(as(withUnwritten(line, structuredClone(line.steps[0])))).toEqual(['a b c', 0]);
});
