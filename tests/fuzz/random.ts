/** Chances that are the same on every run with the same words. */
export interface Random {
  /** From 0 up to, and without, 1. */
  number(): number;
  /** A whole number from 0 up to, and without, `below`. */
  below(below: number): number;
  chance(share: number): boolean;
  pick<T>(from: readonly T[]): T;
}

/** FNV-1a, 32 bits (RFC 9923): near words get far seeds. */
function seedOf(words: string): number {
  let hash = 0x811c9dc5;
  for (let at = 0; at < words.length; at++) hash = Math.imul(hash ^ words.charCodeAt(at), 0x01000193);
  return hash >>> 0;
}

/** xorshift32 (Marsaglia, "Xorshift RNGs", Journal of Statistical Software 8, 2003, the triple 13, 17, 5). */
export function randomOf(words: string): Random {
  let state = seedOf(words) || 1;
  const number = () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 2 ** 32;
  };
  for (let warm = 0; warm < 8; warm++) number();
  const below = (most: number) => Math.floor(number() * most);
  return { number, below, chance: (share) => number() < share, pick: (from) => from[below(from.length)]! };
}
