import { expect, test } from 'vitest';
import { fitAny } from '../../src/pipeline.ts';

/** A room of our own with a chimney breast, in inches; what stands after its walls differs. */
const job = (reserve: string, border: string) => `evenfield: 1
units: in
surface: room-border
site:
  walls: [13', 3', { length: 14, corner: outside }, { length: 56 1/2, corner: outside }, 14, 39 1/2, 13', 11']
reserve: ${reserve}
border: { ${border} }
`;

/** What is proposed is written where it belongs, and then a border fits. */
test.each([
  ['reserve', '3', 'motif: sawtooth, width: 3', 'one pitch'],
  ['reserve', '3', 'motif: rope, width: 3, pitch: each wall', 'a pitch for each wall'],
  ['border.stretch', '2 to 6', 'motif: leaf-vine, width: 3 to 5', 'just 2 widths of the border'],
])('where nothing fits %s is proposed, and does', async (path, reserve, border, says) => {
  const none = await fitAny(job(reserve, border), 'room.job.yaml', 1);
  if (none.ok) throw new Error('it fits');
  const [issue] = none.issues;
  expect(issue).toMatchObject({ code: 'fit/none', path: path.split('.'), says: expect.stringContaining(says) });
  expect(issue!.says).not.toMatch(/(\b\d+") to \1/);
  const [key, value] = issue!.hint!.split(': ') as [string, string];
  const again = job(key === 'reserve' ? value : reserve, key === 'reserve' ? border : `${border}, ${key}: ${value}`);
  expect(await fitAny(again, 'room.job.yaml', 1)).toMatchObject({ ok: true });
});
