import type { Random } from './random.ts';

const BYTES = [0, 1, 0x7f, 0x80, 0xff, 0x0a, 0x20, 0x30];

/** Bytes changed at a few places: bits turned, bytes put, cut out, copied, the end cut off. `from`, `to`: where, as shares of the whole. */
export function changeBytes(given: Uint8Array, random: Random, from = 0, to = 1): Uint8Array {
  let bytes: Uint8Array = Uint8Array.from(given);
  for (let left = 1 + random.below(5); left > 0; left--) {
    const at = Math.floor((from + random.number() * (to - from)) * bytes.length);
    const way = random.number();
    if (way < 0.45) bytes[at] = (bytes[at] ?? 0) ^ (1 << random.below(8));
    else if (way < 0.65) bytes[at] = random.pick(BYTES);
    else if (way < 0.75) bytes.fill(random.pick([0, 0xff]), at, at + 1 + random.below(8));
    else if (way < 0.83) bytes = splice(bytes, at, 1 + random.below(40), new Uint8Array());
    else if (way < 0.91) bytes = splice(bytes, at, 0, bytes.slice(at, at + 1 + random.below(80)));
    else if (way < 0.94) bytes = bytes.slice(0, at);
    else bytes = splice(bytes, at, 4, bytes.slice(random.below(bytes.length)).slice(0, 4));
  }
  return bytes;
}

function splice(bytes: Uint8Array, at: number, out: number, put: Uint8Array): Uint8Array {
  const made = new Uint8Array(Math.max(0, bytes.length - Math.min(out, bytes.length - at)) + put.length);
  made.set(bytes.subarray(0, at));
  made.set(put, at);
  made.set(bytes.subarray(Math.min(bytes.length, at + out)), at + put.length);
  return made;
}

const SCRAPS =
  '0 -1 1e9 1e309 1e-9 .5 NaN - . # < > " \' & * ! [ ] { } : , | % @ ` \\ / ~ é ½ ″ \u202e \ufeff \0 \ud800 null true __proto__ constructor \n \n\n \t'.split(
    ' ',
  );
const NUMBERS = ['0', '1', '-5', '1e4', '1e-7', '33.3', '500', '99999999999999999999', '0.0000001', '3 3/0', ''];

/** Text changed at one to four places: signs put in, taken out, copied; numbers and lines changed or swapped. */
export function changeText(given: string, random: Random, scraps: readonly string[] = SCRAPS): string {
  let text = given;
  for (let left = 1 + random.below(4); left > 0; left--) {
    const at = random.below(text.length + 1);
    const way = random.number();
    if (way < 0.2) text = text.slice(0, at) + random.pick(scraps) + text.slice(at);
    else if (way < 0.35) text = text.slice(0, at) + text.slice(at + 1 + random.below(6));
    else if (way < 0.45) text = text.slice(0, at) + text.slice(at, at + random.below(60)) + text.slice(at);
    else if (way < 0.48) text = text.slice(0, at);
    else if (way < 0.8) text = changeNumber(text, random);
    else {
      const lines = text.split('\n');
      const [a, b] = [random.below(lines.length), random.below(lines.length)];
      [lines[a], lines[b]] = [lines[b]!, lines[a]!];
      text = lines.join('\n');
    }
  }
  return text;
}

/** One number of a text made another: near, far or none. */
export function changeNumber(text: string, random: Random): string {
  const all = [...text.matchAll(/(?<!\/)\b\d+(?:\.\d+)?/g)];
  if (all.length === 0) return text;
  const old = random.pick(all);
  const far = Number(old[0]) * (0.6 + random.number());
  const near = old[0].includes('.') ? far.toPrecision(3) : String(Math.round(far));
  const put = random.chance(0.75) ? near : random.pick(NUMBERS);
  return text.slice(0, old.index) + put + text.slice(old.index + old[0].length);
}
