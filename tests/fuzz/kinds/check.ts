import { checkFiles } from '../../../src/check/index.ts';
import { inksFor } from '../../../src/cli/inks.ts';
import { writeClaims } from '../../../src/cli/write-claims.ts';
import { smallWork } from '../../check/support/small-work.ts';
import { changeBytes, changeNumber, changeText } from '../change.ts';
import { type Kind, toBytes, toText } from '../kind.ts';
import { type Random, randomOf } from '../random.ts';

type Files = Map<string, string | Uint8Array>;
const WAYS = [
  'cut',
  'bytes',
  'text',
  'number',
  'number',
  'number',
  'swap',
  'remove',
  'empty',
  'double',
  'value',
] as const;
/** What is done to the files of a small work; what is left to chance hangs on `seed` alone. */
type Damage = { way: (typeof WAYS)[number]; file: string; other: string; seed: number };

const SCRAPS = '< > " & M z - 1e9 1e309 { } ] , \0 NaN null <g> <path/> <svg> é'.split(' ');
const asText = (content: string | Uint8Array): string =>
  typeof content === 'string' ? content : Buffer.from(content).toString('latin1');
const like = (before: string | Uint8Array, text: string): string | Uint8Array =>
  typeof before === 'string' ? text : new Uint8Array(Buffer.from(text, 'latin1'));

/** Another value somewhere in a JSON text. */
function otherValue(text: string, random: Random): string {
  const values = [...text.matchAll(/(?<=[:[,]\s*)(?:-?[\d.e]+|"[^"]*"|true|false|null)/g)];
  if (values.length === 0) return text;
  const old = random.pick(values);
  const put = random.pick(['null', '-7.25', '"x"', '{}', '[]', '1e300', '""', '[[1]]', random.pick(values)[0]]);
  return text.slice(0, old.index) + put + text.slice(old.index + old[0].length);
}

function damaged(files: Files, { way, file, other, seed }: Damage): void {
  const random = randomOf(String(seed));
  const before = files.get(file);
  if (before === undefined) return;
  const text = asText(before);
  const change: Record<Damage['way'], () => void> = {
    cut: () => files.set(file, before.slice(0, random.below(before.length))),
    bytes: () =>
      files.set(file, like(before, asText(changeBytes(new Uint8Array(Buffer.from(text, 'latin1')), random)))),
    text: () => files.set(file, like(before, changeText(text, random, SCRAPS))),
    number: () => files.set(file, like(before, changeNumber(text, random))),
    swap: () => {
      files.set(file, files.get(other) ?? '');
      files.set(other, before);
    },
    remove: () => files.delete(file),
    empty: () => files.set(file, like(before, '')),
    double: () => files.set(file, like(before, text + text)),
    value: () => files.set('layout.json', otherValue(asText(files.get('layout.json') ?? ''), random)),
  };
  change[way]();
}

const whole = smallWork();
const names = [...whole.keys()];

/** The written files of a small work, damaged, given to the check. */
const kind: Kind = {
  says: 'written files damaged, given to the check',
  share: 30,
  // A sheet whose frame a wrong number makes huge is looked at in two pictures of 24 million pixels, and no more.
  limit: 4,
  ending: 'json',
  make(random) {
    const count = 1 + random.below(2);
    const damages = Array.from(
      { length: count },
      (): Damage => ({
        way: random.pick(WAYS),
        file: random.pick(names),
        other: random.pick(names),
        seed: random.below(1e9),
      }),
    );
    return toBytes(JSON.stringify(damages));
  },
  async run(bytes) {
    const files: Files = new Map(whole);
    for (const damage of JSON.parse(toText(bytes)) as Damage[]) damaged(files, damage);
    const { holds, claims } = await checkFiles(files);
    const unforeseen = claims.find(({ claim }) => claim.endsWith(' can be measured'));
    if (unforeseen) throw new Error(`${unforeseen.claim}: ${unforeseen.measured}`);
    return { ended: holds ? 'holds' : 'refuted', lines: writeClaims(claims, inksFor({}, {})).split('\n') };
  },
};

export default kind;
