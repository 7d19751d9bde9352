import { expect, test } from 'vitest';
import { jobSchema } from '../../src/job/schema.ts';
import { dueWords } from '../../src/page/state/due-words.ts';

interface Shape {
  $ref?: string;
  anyOf?: Shape[];
  oneOf?: Shape[];
  allOf?: Shape[];
  required?: string[];
  properties?: Record<string, Shape>;
  additionalProperties?: Shape | boolean;
  items?: Shape;
  $defs?: Record<string, Shape>;
}

/** Every place of the job file that has to be written once its branch is begun. */
async function places(): Promise<(string | number)[][]> {
  const whole = (await jobSchema()) as Shape;
  const found = new Map<string, (string | number)[]>();
  const walk = (shape: Shape | undefined, path: (string | number)[], depth: number): void => {
    if (!shape || depth > 9) return;
    if (shape.$ref) walk(whole.$defs?.[shape.$ref.split('/').at(-1)!], path, depth + 1);
    for (const one of [...(shape.anyOf ?? []), ...(shape.oneOf ?? []), ...(shape.allOf ?? [])])
      walk(one, path, depth + 1);
    for (const key of shape.required ?? []) found.set([...path, key].join('.'), [...path, key]);
    for (const [key, below] of Object.entries(shape.properties ?? {})) walk(below, [...path, key], depth + 1);
    if (typeof shape.additionalProperties === 'object') walk(shape.additionalProperties, [...path, 'linen'], depth + 1);
    walk(shape.items, [...path, 0], depth + 1);
  };
  walk(whole, [], 0);
  return [...found.values()].filter(([key]) => key !== 'evenfield');
}

test('whatever may be missing is told in words, each place in words of its own, none with a key of the job file alone', async () => {
  const all = await places();
  expect(all.length).toBeGreaterThan(60);
  const told = all.map((path) => dueWords(path));
  for (const words of told) expect(words).toMatch(/ /);
  // A motif by its name alone, or with its settings, is one thing to write.
  const many = new Set(all.map((path) => path.join('.').replace(/motif\.name$/, 'motif'))).size;
  expect(new Set(told).size).toBe(many);
});

test.each([
  [['site', 'doors', 1, 'starts'], 'where door 2 begins'],
  [['site', 'walls', 3, 'length'], 'the length of wall 4'],
  [['site', 'room', 'near'], 'the length of the near wall'],
  [['paint', 'tins', 0, 'price'], 'the price of tin 1'],
  [['border', 'width', 'from'], 'border width, at least'],
] as const)('%j', (path, words) => {
  expect(dueWords([...path])).toBe(words);
});
