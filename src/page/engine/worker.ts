import { bad, good } from '../../issue.ts';
import { parseTree } from '../../job/tree.ts';
import { makeFiles } from '../../pipeline.ts';
import { assets, keepAssets, missingAssets } from './assets.ts';
import { coloursOf, proposeColours, seenPalettes } from './colours.ts';
import { floorOf } from './colours-floor.ts';
import { fitAnew } from './fitted.ts';
import { lookAt } from './look.ts';
import { boardsAnew, boardsOf, refusalsOf } from './motifs.ts';
import { findOffers } from './offers/find.ts';
import { drawPictures } from './picture.ts';
import { cutViewOf } from './plan/cut.ts';
import type { Engine, Message, Page } from './protocol.ts';
import { refitAt, rowsToRefit } from './refit.ts';
import { refitFiles } from './refit-files.ts';
import { smallOf } from './small.ts';
import { talkOver } from './talk.ts';
import { toldOf, toldOfFiles } from './told.ts';
import { writeJob } from './write-job.ts';

/** How many jobs were looked at; longer work for one of them is given up when the next one comes. */
let looks = 0;

/** The last time that refusals of each slot were asked for; older questions are given up. */
const refused = new Map<string, number>();

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
      const { job, files, says } = made.value;
      return { text, made: good({ name: job.name, files, says, told: toldOfFiles(job, files) }) };
    }
    const { issues, proofs } = made;
    return { text, made: { ok: false, issues }, ...(proofs ? { proofs: { ...proofs, says: [] } } : {}) };
  },
  async cut({ base, tree, chosen }) {
    return cutViewOf(writeJob(base, tree), chosen, assets);
  },
  async offers({ tree }, issues) {
    const of = looks;
    return findOffers(tree, issues, assets, async () => {
      await pause();
      return looks === of;
    });
  },
  async small({ base, tree }, rank, long) {
    return smallOf(writeJob(base, tree), rank, long, assets);
  },
  async boards(ask, wanted) {
    return boardsOf(ask, wanted, assets);
  },
  async refusals(ask, wanted) {
    const of = (refused.get(wanted.slot) ?? 0) + 1;
    refused.set(wanted.slot, of);
    return refusalsOf(ask, wanted, assets, async () => {
      await pause();
      return refused.get(wanted.slot) === of;
    });
  },
  async colours({ base, tree, chosen }) {
    return coloursOf(writeJob(base, tree), chosen, assets);
  },
  async propose({ base, tree, chosen }, from) {
    return proposeColours(writeJob(base, tree), chosen, from, assets);
  },
  async seen(palette) {
    return seenPalettes(palette);
  },
  async rows({ base, tree, chosen }) {
    return rowsToRefit(writeJob(base, tree), chosen, assets);
  },
  async refit({ base, tree, chosen }, wanted) {
    return refitAt(writeJob(base, tree), chosen, wanted, assets);
  },
  async refitFiles({ base, tree, chosen }, entries) {
    return refitFiles(writeJob(base, tree), chosen, entries, assets);
  },
  async floor({ base, tree, chosen }, wanted) {
    return floorOf(writeJob(base, tree), chosen, wanted, assets);
  },
  async keep(files) {
    keepAssets(files);
    boardsAnew();
    fitAnew();
  },
};

const here = globalThis as unknown as {
  postMessage(message: unknown): void;
  addEventListener(type: 'message', take: (event: { data: Message }) => void): void;
};

const page = talkOver<Page>(
  {
    post: (message) => here.postMessage(message),
    listen: (take) => here.addEventListener('message', ({ data }) => take(data)),
  },
  engine,
);
drawPictures((svg, longSide) => page.picture(svg, longSide));
