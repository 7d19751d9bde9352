import highsLoader from 'highs';
import { expect, test } from 'vitest';
import { cheapest } from '../../src/check/measure/cheapest.ts';
import { chooseTins, type Tin } from '../../src/paint/tins.ts';

/** Numbers in a row that are the same every time: a linear congruence (Numerical Recipes' constants). */
function sequence(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

/** The same as an integer programme for HiGHS, a general-purpose solver: one objective after another. */
function programme(need: number, tins: Tin[], aim: string, rows: string[]): string {
  const held = tins.map(({ size }, at) => `+ ${size} x${at}`).join(' ');
  return `Minimize\n obj: ${aim}\nSubject To\n need: ${held} >= ${need}\n${rows.join('\n')}\nGeneral\n ${tins.map((_, at) => `x${at}`).join(' ')}\nEnd`;
}

test('25 seeded purchases are as cheap, and of those as few, as a general solver finds', async () => {
  const highs = await highsLoader();
  const random = sequence(20260);
  for (let round = 0; round < 25; round++) {
    const kinds = 2 + Math.floor(random() * 3);
    const tins: Tin[] = Array.from({ length: kinds }, () => ({
      size: 50 + Math.floor(random() * 80) * 10,
      price: 2 + Math.floor(random() * 60),
    }));
    const need = 20 + Math.floor(random() * 5000);
    const chosen = chooseTins(need, tins)!;
    const prices = tins.map(({ price }, at) => `+ ${price} x${at}`).join(' ');
    const cost = Math.round(highs.solve(programme(need, tins, prices, [])).ObjectiveValue);
    const fewest = highs.solve(
      programme(need, tins, tins.map((_, at) => `+ x${at}`).join(' '), [` paid: ${prices} <= ${cost}`]),
    ).ObjectiveValue;
    const what = JSON.stringify({ need, tins });
    expect([chosen.cost, chosen.count], what).toEqual([cost, Math.round(fewest)]);
    const held = chosen.counts.reduce((sum, count, at) => sum + count * tins[at]!.size, 0);
    expect(held - need, what).toBeCloseTo(chosen.surplus, 6);
    expect(held, what).toBeGreaterThanOrEqual(need);
    expect(cheapest(need, tins), what).toBe(cost);
  }
});

test('nothing is bought where nothing is missing, and nothing is chosen where no tin is told', () => {
  expect(chooseTins(0, [{ size: 100, price: 1 }])?.count).toBe(0);
  expect(chooseTins(10, [])).toBeUndefined();
});
