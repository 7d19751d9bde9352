import { readFileSync } from 'node:fs';
import { openContainer, packContainer } from '../../../src/lettering/container.ts';
import { openFace } from '../../../src/lettering/face.ts';
import { setLetters } from '../../../src/lettering/set.ts';
import { changeBytes } from '../change.ts';
import { type Kind, saidOf } from '../kind.ts';

/** Faces as npm packages carry them, packed; and the same taken out of their packing, where damage is not told by the packing. */
const FILES = [
  'libre-baskerville/files/libre-baskerville-latin-400-normal.woff',
  'barlow/files/barlow-latin-500-normal.woff',
  'saira-stencil-one/files/saira-stencil-one-latin-400-normal.woff',
];
const packed = FILES.map((path) => new Uint8Array(readFileSync(`node_modules/@fontsource/${path}`)));
/** Tables that letters are made of. */
const TABLES = ['head', 'hhea', 'maxp', 'OS/2', 'cmap', 'loca', 'hmtx', 'post', 'name', 'GPOS', 'kern', 'glyf', 'CFF '];

const kind: Kind = {
  says: 'fonts cut short and with bits turned, and a word set in them',
  share: 60,
  limit: 2,
  ending: 'font',
  async make(random) {
    const font = random.pick(packed);
    if (random.chance(0.3)) return changeBytes(font, random, 0, random.chance(0.7) ? 0.01 : 1);
    const container = await openContainer(font);
    const tables = new Map(container.tables);
    for (let left = 1 + random.below(2); left > 0; left--) {
      const tag = random.pick(TABLES.filter((one) => tables.has(one)));
      const table = tables.get(tag)!;
      tables.set(tag, changeBytes(table, random, 0, random.chance(0.5) ? Math.min(1, 60 / table.length) : 1));
    }
    const made = packContainer({ ...container, tables }, TABLES);
    const bytes = new Uint8Array(made);
    return random.chance(0.1) ? bytes.slice(0, random.below(bytes.length)) : bytes;
  },
  async run(bytes) {
    const face = await openFace(bytes);
    if (!face.ok) return saidOf(face);
    const set = await setLetters('Gäble & 12', face.value, { capHeight: 60, arc: 20 });
    if (!set.ok) return saidOf(set);
    const { box } = set.value;
    if (!Object.values(box).every(Number.isFinite)) throw new Error('set to a box that is none');
    return { ended: 'taken', lines: [set.value.face] };
  },
};

export default kind;
