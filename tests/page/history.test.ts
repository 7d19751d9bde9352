import fc from 'fast-check';
import { expect, test } from 'vitest';
import { sayPlace, sayPlaces } from '../../src/page/state/did.ts';
import { followed, type Line, NOTHING, type Step } from '../../src/page/state/history.ts';

const step = (did: string, by = ''): Step => ({ ...NOTHING, tree: { title: did }, did, by });

/** What is done to a piece of work: something new, or a way back, or forward again. */
const deeds = fc.array(
  fc.oneof(
    fc.string().map((did) => ({ did })),
    fc.constant('undo'),
    fc.constant('redo'),
  ),
  {
    maxLength: 60,
  },
);

test('undo and redo are the two stacks of common practice (no source), however long', () => {
  fc.assert(
    fc.property(deeds, (all) => {
      let line: Line = followed({ steps: [NOTHING], at: 0 }, step('begun'));
      const behind: string[] = [];
      let here = 'begun';
      const ahead: string[] = [];
      for (const deed of all) {
        if (typeof deed === 'object') {
          line = followed(line, step(deed.did));
          behind.push(here);
          here = deed.did;
          ahead.length = 0;
        } else if (deed === 'undo') {
          if (line.at > 0) line = { ...line, at: line.at - 1 };
          if (behind.length > 0) {
            ahead.push(here);
            here = behind.pop()!;
          }
        } else {
          if (line.at < line.steps.length - 1) line = { ...line, at: line.at + 1 };
          if (ahead.length > 0) {
            behind.push(here);
            here = ahead.pop()!;
          }
        }
        const found = line.steps.map(({ did }) => did);
        expect(found).toEqual([...behind, here, ...ahead.toReversed()]);
        expect(line.at).toBe(behind.length);
      }
    }),
  );
});

test('letters typed one after the other in a field are one step, and the first step is never lost', () => {
  let line: Line = followed({ steps: [NOTHING], at: 0 }, step('begun'));
  line = followed(line, step('1', 'run'), '');
  line = followed(line, step('12', 'run'), 'run');
  line = followed(line, step('12 ft', 'run'), 'run');
  expect(line.steps.map(({ did }) => did)).toEqual(['begun', '12 ft']);
  // Left, and typed in again: a step of its own.
  line = followed(line, step('13 ft', 'run'), '');
  expect(line.steps.map(({ did }) => did)).toEqual(['begun', '12 ft', '13 ft']);
});

test('typing after undo leaves what was undone behind', () => {
  let line: Line = { steps: [step('a'), step('b'), step('c')], at: 1 };
  line = followed(line, step('d'));
  expect(line).toMatchObject({ at: 2 });
  expect(line.steps.map(({ did }) => did)).toEqual(['a', 'b', 'd']);
});

test('a step is named by what it changes', () => {
  expect(sayPlace(['border', 'width'])).toBe('border width');
  expect(sayPlace(['site', 'openings', 'near'])).toBe('openings near');
  expect(sayPlace(['lettering', 0, 'text'])).toBe('lettering 1 text');
  expect(
    sayPlaces([
      ['field', 'repeats'],
      ['field', 'pitch'],
    ]),
  ).toBe('field');
  expect(sayPlaces([['title'], ['units']])).toBe('several things');
});
