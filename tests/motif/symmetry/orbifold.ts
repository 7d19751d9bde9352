/**
 * What an orbifold costs by J. H. Conway's rule: `o` 2; a digit n before a star (n − 1)/n, after one half of that; a star and a
 * crosscap `x` 1 each; infinity, written `i`, 1 before a star and 1/2 after. Groups that repeat cost exactly 2.
 */
export function orbifoldCost(symbol: string): number {
  let cost = 0;
  let share = 1;
  for (const letter of symbol) {
    if (letter === 'o') cost += 2;
    else if (letter === '*') {
      cost += 1;
      share = 0.5;
    } else if (letter === 'x') cost += 1;
    else if (letter === 'i') cost += share;
    else cost += (share * (Number(letter) - 1)) / Number(letter);
  }
  return cost;
}
