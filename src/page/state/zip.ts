import { strToU8, type Zippable, zipSync } from 'fflate';

/** The first moment that a zip file can name, so that the same job gives the same bytes. Zip files tell the time of where one is, without a zone. */
const always = (): Date => new Date(1980, 0, 1);
/** These are packed in themselves. */
const PACKED = /\.(pdf|png)$/i;

/** Files as one zip file (PKWARE APPNOTE), in the order of their names. The same files give the same bytes, whenever and wherever they are packed. */
export function zipOf(files: ReadonlyMap<string, string | Uint8Array>): Uint8Array {
  const inside: Zippable = {};
  const mtime = always();
  for (const name of [...files.keys()].sort()) {
    const content = files.get(name)!;
    const bytes = typeof content === 'string' ? strToU8(content) : content;
    inside[name] = [bytes, { level: PACKED.test(name) ? 0 : 6, mtime }];
  }
  return zipSync(inside, { os: 0 });
}
