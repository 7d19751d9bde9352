import { bad, good } from '../../issue.ts';
import { parseTree } from '../../job/tree.ts';
import { makeFiles } from '../../pipeline.ts';
import { assets, keepAssets, missingAssets } from './assets.ts';
import { fitAnew } from './fitted.ts';
import { lookAt } from './look.ts';
import { drawPictures } from './picture.ts';
import type { Engine, Message, Page } from './protocol.ts';
import { talkOver } from './talk.ts';
import { toldOf } from './told.ts';
import { writeJob } from './write-job.ts';

/** How many jobs were looked at; longer work for one of them is given up when the next one comes. */
let looks = 0;

/** The last time that refusals of each slot were asked for; older questions are given up. */
const refused = new Map<string, number>();

/** What draws boards, once it was needed. */
let boards: Promise<typeof import('./motifs.ts')> | undefined;

/** Lets other calls be taken. */
const pause = (): Promise<void> => new Promise((done) => setTimeout(done));

const engine: Engine = {
  async open(text) {
    const parsed = parseTree(text);
    if (!parsed.ok) return parsed;
    const { tree, issues } = parsed.value;
    return issues.length > 0 ? bad(...issues) : good(tree);
  },
  async look({ base, tree, chosen }) {
    looks += 1;
    const text = writeJob(base, tree);
    missingAssets();
    const look = await lookAt(text, chosen, assets);
    return { text, look, ...(look.ok ? { told: toldOf(look.value) } : {}), missing: missingAssets() };
  },
  async make({ base, tree, chosen, file }) {
    const text = writeJob(base, tree);
    const made = await makeFiles(text, file || 'job', chosen + 1, assets);
    if (made.ok) {
      const { toldOfFiles } = await import('./told-files.ts');
      const { job, files, says } = made.value;
      return { text, made: good({ name: job.name, files, says, told: toldOfFiles(job, files) }) };
    }
    const { issues, proofs } = made;
    return { text, made: { ok: false, issues }, ...(proofs ? { proofs: { ...proofs, says: [] } } : {}) };
  },
  async cut({ base, tree, chosen }) {
    const { cutViewOf } = await import('./plan/cut.ts');
    return cutViewOf(writeJob(base, tree), chosen, assets);
  },
  async offers({ tree }, issues) {
    const of = looks;
    const { findOffers } = await import('./offers/find.ts');
    return findOffers(tree, issues, assets, async () => {
      await pause();
      return looks === of;
    });
  },
  async small({ base, tree }, rank, long) {
    const { smallOf } = await import('./small.ts');
    return smallOf(writeJob(base, tree), rank, long, assets);
  },
  async boards(ask, wanted) {
    boards ??= import('./motifs.ts');
    const { boardsOf } = await boards;
    return boardsOf(ask, wanted, assets);
  },
  async refusals(ask, wanted) {
    const of = (refused.get(wanted.slot) ?? 0) + 1;
    refused.set(wanted.slot, of);
    boards ??= import('./motifs.ts');
    const { refusalsOf } = await boards;
    return refusalsOf(ask, wanted, assets, async () => {
      await pause();
      return refused.get(wanted.slot) === of;
    });
  },
  async colours({ base, tree, chosen }) {
    const { coloursOf } = await import('./colours.ts');
    return coloursOf(writeJob(base, tree), chosen, assets);
  },
  async propose({ base, tree, chosen }, from) {
    const { proposeColours } = await import('./colours.ts');
    return proposeColours(writeJob(base, tree), chosen, from, assets);
  },
  async seen(palette) {
    const { seenPalettes } = await import('./colours.ts');
    return seenPalettes(palette);
  },
  async rows({ base, tree, chosen }) {
    const { rowsToRefit } = await import('./refit.ts');
    return rowsToRefit(writeJob(base, tree), chosen, assets);
  },
  async refit({ base, tree, chosen }, wanted) {
    const { refitAt } = await import('./refit.ts');
    return refitAt(writeJob(base, tree), chosen, wanted, assets);
  },
  async refitFiles({ base, tree, chosen }, entries) {
    const { refitFiles } = await import('./refit-files.ts');
    return refitFiles(writeJob(base, tree), chosen, entries, assets);
  },
  async floor({ base, tree, chosen }, wanted) {
    const { floorOf } = await import('./colours-floor.ts');
    return floorOf(writeJob(base, tree), chosen, wanted, assets);
  },
  async keep(files) {
    keepAssets(files);
    fitAnew();
    if (boards) (await boards).boardsAnew();
  },
};

const here = globalThis as unknown as {
  postMessage(message: unknown): void;
  importScripts(address: string): void;
  /** Called by the engine when it comes to what is in the second script (see `vite.page.config.ts`). */
  fetchRest: () => Promise<void>;
  /** Read by the second script. */
  letters: Record<string, string>;
  addEventListener(type: 'message', take: (event: { data: Message }) => void): void;
};

const page = talkOver<Page>(
  {
    post: (message) => here.postMessage(message),
    listen: (take) => here.addEventListener('message', ({ data }) => take(data)),
  },
  engine,
);
here.fetchRest = async () => {
  const { script, letters } = await page.rest();
  here.letters = letters;
  // An address that the page made may not be read here where the page has no origin, as from a disk.
  const address = URL.createObjectURL(script);
  here.importScripts(address);
  URL.revokeObjectURL(address);
};
drawPictures((svg, longSide) => page.picture(svg, longSide));
