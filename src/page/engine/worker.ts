import { good } from '../../issue.ts';
import { parseTree } from '../../job/tree.ts';
import { makeFiles } from '../../pipeline.ts';
import { assets, keepAssets } from './assets.ts';
import { lookAt } from './look.ts';
import { drawPictures } from './picture.ts';
import type { Engine, Message, Page } from './protocol.ts';
import { talkOver } from './talk.ts';
import { writeJob } from './write-job.ts';

const engine: Engine = {
  async open(text) {
    const parsed = parseTree(text);
    return parsed.ok ? good(parsed.value.tree) : parsed;
  },
  async look({ base, tree, chosen }) {
    const text = writeJob(base, tree);
    return { text, look: await lookAt(text, chosen, assets) };
  },
  async make({ base, tree, chosen }) {
    const text = writeJob(base, tree);
    const made = await makeFiles(text, 'job', chosen + 1, assets);
    if (made.ok)
      return { text, made: good({ name: made.value.job.name, files: made.value.files, says: made.value.says }) };
    const { issues, proofs } = made;
    return { text, made: { ok: false, issues }, ...(proofs ? { proofs: { ...proofs, says: [] } } : {}) };
  },
  async keep(files) {
    keepAssets(files);
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
