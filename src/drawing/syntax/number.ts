/** A number as SVG writes it, from `lastIndex` on. */
const NUMBER = /[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?/y;
const GAP = /\s*,?\s*/y;

/** Where a list goes on after the blanks and the one comma that may stand at `at`. */
export function afterGap(text: string, at: number): number {
  GAP.lastIndex = at;
  GAP.exec(text);
  return GAP.lastIndex;
}

/** The numbers at the head of a list parted by blanks and commas. `whole`: nothing else follows them. */
export function readNumbers(text: string): { numbers: number[]; whole: boolean } {
  const numbers: number[] = [];
  const trimmed = text.trim();
  let at = 0;
  while (at < trimmed.length) {
    if (numbers.length > 0) at = afterGap(trimmed, at);
    NUMBER.lastIndex = at;
    const found = NUMBER.exec(trimmed);
    if (found === null) return { numbers, whole: false };
    numbers.push(Number(found[0]));
    at = NUMBER.lastIndex;
  }
  return { numbers, whole: true };
}

/** A share of 1: `0.5` or `50%`, kept within 0 to 1; nothing when it is neither. */
export function readShare(text: string): number | undefined {
  const found = /^([-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?)(%?)$/.exec(text.trim());
  if (found === null) return undefined;
  return Math.min(1, Math.max(0, Number(found[1]) / (found[2] === '%' ? 100 : 1)));
}
