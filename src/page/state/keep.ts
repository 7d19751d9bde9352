import { batch, effect, signal } from '@preact/signals';
import type { Step } from './history.ts';
import { at, now, steps } from './job.ts';
import { browserStore } from './keep-browser.ts';
import { readLine, tidyUp, withUnwritten, writeLine } from './keep-line.ts';
import type { Store } from './keep-store.ts';

/** What could not be kept, in words; nothing while all is well, and where the browser keeps nothing anyhow. */
export const unkept = signal('');

/** Where a page remembers, over a reload, which place in the store is its own. */
const PLACE = 'evenfield-page';
/** The step that a page left before it could be written. */
const UNWRITTEN = 'evenfield-unwritten';
/** Tidying waits until the page has long been usable, ms. */
const IDLE = 8000;

const ids = new WeakMap<Step, number>();
const opening = browserStore();
let page: number | undefined;

/** The store, or nothing where this browser keeps none. */
export const store = (): Promise<Store | undefined> => opening;

function rememberedPage(): number | undefined {
  try {
    return Number(sessionStorage.getItem(PLACE)) || undefined;
  } catch {
    return undefined;
  }
}

function remember(id: number): void {
  try {
    sessionStorage.setItem(PLACE, String(id));
  } catch {
    // The place of the page that was written last is taken instead.
  }
}

/** The step that was left unwritten, which is then forgotten. */
function takeUnwritten(): Step | undefined {
  try {
    const text = sessionStorage.getItem(UNWRITTEN);
    sessionStorage.removeItem(UNWRITTEN);
    return text === null ? undefined : (JSON.parse(text) as Step);
  } catch {
    return undefined;
  }
}

/** Goes on where this page, or else the one before it, left off. Says whether there was anything. */
export async function goOnWithKept(): Promise<boolean> {
  try {
    const kept = await opening;
    const found = kept && (await readLine(kept, rememberedPage(), ids));
    if (!found) return false;
    const line = withUnwritten(found, takeUnwritten());
    batch(() => {
      steps.value = line.steps;
      at.value = line.at;
    });
    return true;
  } catch {
    return false;
  }
}

let writing = false;
let isBehind = false;

async function write(kept: Store): Promise<void> {
  isBehind = true;
  if (writing) return;
  writing = true;
  while (isBehind) {
    isBehind = false;
    try {
      // Every load has a place of its own, so that a page and its copy in another window stay apart.
      page = await writeLine(kept, page, { steps: steps.value, at: at.value }, ids, Date.now());
      remember(page);
      unkept.value = '';
    } catch {
      unkept.value =
        'Your last steps could not be kept in this browser (it may be out of room). They are here until you leave the page: save the job file before you do.';
    }
  }
  writing = false;
}

/** Keeps every step from now on. Where nothing can be kept, leaving the page asks first. */
export async function keepSteps(): Promise<void> {
  const kept = await opening;
  const begun = steps.value;
  addEventListener('beforeunload', (event) => {
    const isLost = kept === undefined ? steps.value !== begun : unkept.value !== '';
    if (isLost) event.preventDefault();
  });
  if (!kept) return;
  addEventListener('pagehide', () => {
    if (!writing) return;
    try {
      sessionStorage.setItem(UNWRITTEN, JSON.stringify(now.value));
    } catch {
      // The step before it is found again.
    }
  });
  effect(() => {
    steps.value;
    at.value;
    void write(kept);
  });
  setTimeout(() => tidyUp(kept).catch(() => undefined), IDLE);
}
