import { followed, type Line, type Step } from './history.ts';
import type { KeptPage, KeptStep, Store } from './keep-store.ts';

/** Which record of the store a step is. */
export type Ids = WeakMap<Step, number>;

/** The places of so many pages are kept, those written last. */
const MOST_PAGES = 40;

/**
 * Writes the line of one page: a record for every step that is not kept yet, and where the page is. Steps are only ever added, each behind the one
 * it followed, so a page never writes over what another page did, even where both went on from the same step.
 * @param page the id of the page in the store, once it has one
 * @returns that id
 */
export async function writeLine(
  store: Store,
  page: number | undefined,
  { steps, at }: Line,
  ids: Ids,
  when: number,
): Promise<number> {
  const written = new Map<Step, number>();
  const id = await store.change(async (inside) => {
    const known = steps.findIndex((step) => !ids.has(step));
    let from = known < 0 ? steps.length : known;
    // The browser, or a page that tidied up, may have cleared the line away.
    if (from > 0 && !(await inside.step(ids.get(steps[from - 1]!)!))) from = 0;
    let before = from > 0 ? ids.get(steps[from - 1]!) : undefined;
    for (const [n, step] of steps.entries()) {
      if (n < from) continue;
      const { base, ...rest } = step;
      const isSame = n > 0 && steps[n - 1]!.base === base;
      before = await inside.addStep({
        ...rest,
        ...(before === undefined ? {} : { before }),
        ...(isSame ? {} : { base }),
      });
      written.set(step, before);
    }
    const idOf = (step: Step): number => written.get(step) ?? ids.get(step)!;
    const place = { at: idOf(steps[at]!), tip: idOf(steps.at(-1)!), when };
    if (page === undefined) return inside.addPage(place);
    await inside.putPage({ ...place, id: page });
    return page;
  });
  for (const [step, one] of written) ids.set(step, one);
  return id;
}

const lastWritten = (pages: readonly KeptPage[]): KeptPage | undefined =>
  pages.toSorted((a, b) => b.when - a.when || b.id - a.id)[0];

/** The ids of a line, from its last step back to its first. */
function backFrom(tip: number, steps: ReadonlyMap<number, KeptStep>): number[] {
  const found: number[] = [];
  let id: number | undefined = tip;
  while (id !== undefined && steps.has(id)) {
    found.push(id);
    id = steps.get(id)!.before;
  }
  return found;
}

/**
 * The line that a page had reached, or that any page had reached last; nothing where nothing is kept.
 * @param page the page to go on from
 */
export async function readLine(store: Store, page: number | undefined, ids: Ids): Promise<Line | undefined> {
  const { place, records } = await store.change(async (inside) => {
    const pages = await inside.pages();
    const found = pages.find(({ id }) => id === page) ?? lastWritten(pages);
    return { place: found, records: found ? await inside.steps() : [] };
  });
  if (!place) return undefined;
  const known = new Map(records.map((record) => [record.id, record]));
  const line = backFrom(place.tip, known).reverse();
  let base = '';
  const steps = line.map((id): Step => {
    const { id: _, before: __, base: own, ...rest } = known.get(id)!;
    base = own ?? base;
    const step = { ...rest, base };
    ids.set(step, id);
    return step;
  });
  const at = line.indexOf(place.at);
  return steps.length === 0 ? undefined : { steps, at: at < 0 ? steps.length - 1 : at };
}

const isSame = (a: Step, b: Step): boolean => JSON.stringify(a) === JSON.stringify(b);

/** The line with the step that the page had come to and that was not written any more; nothing changes where the line has it. */
export function withUnwritten(line: Line, step: Step | undefined): Line {
  if (!step || isSame(line.steps[line.at]!, step)) return line;
  const back = line.steps.findLastIndex((one) => isSame(one, step));
  return back >= 0 ? { ...line, at: back } : followed(line, step, step.by);
}

/** Forgets the places of pages long closed, and every step that no page can come to any more. */
export async function tidyUp(store: Store): Promise<void> {
  await store.change(async (inside) => {
    const pages = (await inside.pages()).toSorted((a, b) => b.when - a.when || b.id - a.id);
    for (const { id } of pages.slice(MOST_PAGES)) await inside.dropPage(id);
    const records = await inside.steps();
    const known = new Map(records.map((record) => [record.id, record]));
    const wanted = new Set<number>();
    for (const { tip, at } of pages.slice(0, MOST_PAGES)) {
      for (const end of [tip, at]) for (const id of backFrom(end, known)) wanted.add(id);
    }
    for (const { id } of records) if (!wanted.has(id)) await inside.dropStep(id);
  });
}
