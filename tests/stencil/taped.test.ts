import { expect, test } from 'vitest';
import { borderJob } from '../check/support/every.ts';
import { make } from '../check/support/make.ts';

const SIDES = ['border-near', 'border-far', 'border-left', 'border-right'];

async function taped(job: string): Promise<{ part: string; elements: string[] }[]> {
  const { files } = await make(job);
  return JSON.parse(String(files.get('layout.json'))).taped;
}

test('bands are masked along their sides, and round their corners where they turn there themselves', async () => {
  const elements = (found: { part: string; elements: string[] }[]) =>
    found.filter(({ part }) => part.startsWith('border')).map((one) => [...one.elements].sort());
  const mitred = elements(await taped(borderJob({ motif: 'triple-band', turn: 'mitre' })));
  expect(mitred.length).toBeGreaterThan(0);
  for (const one of mitred) expect(one).toEqual([...SIDES, 'corner'].sort());
  for (const one of elements(await taped(borderJob({ motif: 'triple-band', turn: 'block', corner: 'plain' }))))
    expect(one).toEqual([...SIDES].sort());
});
