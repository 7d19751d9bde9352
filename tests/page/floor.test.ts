import { readdirSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { parse } from 'opentype.js';
import { describe, expect, test } from 'vitest';
import { lookAt } from '../../src/page/engine/look.ts';
import { begun, readProgress, readRecent, type Shelf, tellChanged, writeProgress } from '../../src/page/floor/kept.ts';
import { nameOfNumbers } from '../../src/page/floor/numbers.ts';
import { BETWEEN, numeralOf, SMALLER, WIDE, widthOf } from '../../src/page/floor/numeral.ts';
import { countsOf, isMade, isOff, nextOpen, type Ticks, tick, tickOff, untick } from '../../src/page/floor/ticks.ts';
import { type Stop, walkOf } from '../../src/page/floor/walk.ts';

const SAMPLES = readdirSync('samples').filter((file) => file.endsWith('.yaml') && !file.startsWith('garden-room'));

async function seen(sample: string) {
  const look = await lookAt(readFileSync(`samples/${sample}`, 'utf8'), 0);
  if (!look.ok) throw new Error(JSON.stringify(look.issues));
  return look.value;
}

const ids = (walk: readonly Stop[]) => walk.map(({ id }) => id);
const orderOf = (walk: readonly Stop[], ...wanted: string[]) => wanted.map((id) => ids(walk).indexOf(id));
const rises = (places: number[]) => places.every((at, n) => at >= 0 && (n === 0 || at > places[n - 1]!));

describe.each(SAMPLES)('the way through %s', (sample) => {
  test('every mark of every line and every check is come by once, each mark after the tape of its line', async () => {
    const { schedule, job } = await seen(sample);
    const walk = walkOf(schedule, job.surface);
    expect(new Set(ids(walk)).size).toBe(walk.length);
    const { of, checks } = countsOf(walk, []);
    expect(of).toBe(schedule.lines.reduce((sum, { marks }) => sum + marks.length, 0));
    expect(checks).toBe(schedule.checks.length);
    for (const { name, marks } of schedule.lines)
      expect(rises(orderOf(walk, name, ...marks.map(({ number }) => `${name} ${number}`)))).toBe(true);
    // A line is not left before its last mark: the tape does not move.
    for (const [n, stop] of walk.entries())
      if (stop.kind === 'mark' && stop.at > 0)
        expect(walk[n - 1]).toMatchObject({ kind: 'mark', line: { name: stop.line.name } });
  });
});

describe('the order is that of the job sheet', () => {
  test('a runner: the axis is found and snapped, both edges, across, the borders, then whether it is square', async () => {
    const { schedule, job } = await seen('passage-runner.job.yaml');
    const walk = walkOf(schedule, job.surface);
    const order = [
      'near-opening',
      'far-opening',
      'task axis',
      'axis',
      'left-edge',
      'right-edge',
      'task rows',
      'across-left',
    ];
    expect(rises(orderOf(walk, ...order, 'task columns', 'border-left', 'check 1', 'task fix'))).toBe(true);
    expect(walk[0]!.id).toBe('near-opening');
  });

  test('a floor: the centre lines are proved square before anything is marked from their crossing', async () => {
    const { schedule, job } = await seen('scullery-floor.job.yaml');
    const walk = walkOf(schedule, job.surface);
    expect(schedule.checks[3]!.says).toMatch(/^Outermost lines/);
    const order = [
      'near-wall',
      'right-wall',
      'task centre',
      'check 1',
      'check 3',
      'along-near',
      'across-right',
      'task grid',
    ];
    expect(rises(orderOf(walk, ...order, 'check 4', 'task fix'))).toBe(true);
  });

  test('a border round a room: square first, then its edges off every wall, then the walls', async () => {
    const { schedule, job } = await seen('morning-room-border.job.yaml');
    const walk = walkOf(schedule, job.surface);
    const order = ['check 1', 'check 6', 'off-wall-1', 'off-wall-8', 'task edges', 'wall-1', 'wall-8', 'task square'];
    expect(rises(orderOf(walk, ...order, 'task fix'))).toBe(true);
  });
});

describe('ticks', async () => {
  const { schedule, job } = await seen('passage-runner.job.yaml');
  const walk = walkOf(schedule, job.surface);
  const all = walk.reduce<Ticks>((ticks, stop) => tick(ticks, stop), []);
  const [first, second, third] = walk as [Stop, Stop, Stop];

  test('one goes on to the next that is open, and comes back to what was passed over', () => {
    expect(nextOpen(walk, tick([], first), first.id)).toBe(second);
    const but = untick(all, [second.id]);
    expect(nextOpen(walk, but, first.id)).toBe(second);
    expect(nextOpen(walk, but, third.id)).toBe(second);
    expect(nextOpen(walk, all, third.id)).toBeUndefined();
  });

  test('a tick is taken off, and one that is made again stands last', () => {
    expect(isMade(untick(all, [first.id]), first)).toBe(false);
    expect(tick(all, first).at(-1)![0]).toBe(first.id);
    expect(tick(all, first)).toHaveLength(all.length);
  });

  test('a check that is off is neither made nor come by again, and is counted', () => {
    const check = walk.find(({ kind }) => kind === 'check')!;
    const off = tickOff(all, check);
    expect([isMade(off, check), isOff(off, check), isOff(all, check)]).toEqual([false, true, false]);
    expect(nextOpen(walk, off, first.id)).toBeUndefined();
    expect(countsOf(walk, off)).toEqual({ made: 271, of: 271, checks: 4, checksRight: 3, checksOff: 1 });
    expect(isMade(tick(off, check), check)).toBe(true);
  });
});

describe('jobs are told apart by their numbers', async () => {
  const { schedule } = await seen('passage-runner.job.yaml');
  const name = nameOfNumbers(schedule);

  test('the same numbers, the same name; words do not matter', () => {
    const otherWords = { ...schedule, lines: schedule.lines.map((line) => ({ ...line, says: 'Otherwise.' })) };
    expect(nameOfNumbers(structuredClone(schedule))).toBe(name);
    expect(nameOfNumbers(otherWords)).toBe(name);
  });

  test('one mark by a step of the tape, one mark less, one check: another name', () => {
    const moved = structuredClone(schedule);
    moved.lines[4]!.marks[17]!.reads += schedule.step;
    const less = structuredClone(schedule);
    less.lines[4]!.marks.pop();
    const check = structuredClone(schedule);
    check.checks[2]!.reads += schedule.step;
    expect(new Set([name, ...[moved, less, check].map(nameOfNumbers)]).size).toBe(4);
  });
});

describe('what is kept', () => {
  function shelf(room = Number.POSITIVE_INFINITY): Shelf & { size: number } {
    const kept = new Map<string, string>();
    return {
      getItem: (key) => kept.get(key) ?? null,
      setItem: (key, value) => {
        if (value.length > room) throw new Error('full');
        kept.set(key, value);
      },
      removeItem: (key) => void kept.delete(key),
      get size() {
        return kept.size;
      },
    };
  }
  const some = {
    ...begun('Hall'),
    ticks: [
      ['axis', 0],
      ['axis 1', 12.7],
    ] as Ticks,
    at: 'axis 2',
    draft: { row: 3, left: '1', right: '' },
  };

  test('comes back as it was', () => {
    const one = shelf();
    writeProgress(one, 'a', some);
    expect(readProgress(one, 'a')).toEqual(some);
    expect(readProgress(one, 'b')).toBeUndefined();
  });

  test.each(['', '{', 'null', '[]', '{"title":3}', '{"title":"x","ticks":[["a"]]}'])(
    '%j in its place is as nothing',
    (text) => {
      const one = shelf();
      one.setItem('evenfield-floor:a', text);
      one.setItem('evenfield-floor', text);
      expect(readProgress(one, 'a')).toBeUndefined();
      expect(readRecent(one)).toEqual([]);
    },
  );

  test('the jobs of longest ago make room', () => {
    const one = shelf();
    for (let n = 0; n < 40; n++) writeProgress(one, `job ${n}`, some);
    expect(readRecent(one)[0]!.name).toBe('job 39');
    expect(one.size).toBe(readRecent(one).length + 1);
    expect(readProgress(one, 'job 0')).toBeUndefined();
    expect(readProgress(one, 'job 39')).toEqual(some);
  });

  test('a store that is full says so', () => expect(() => writeProgress(shelf(10), 'a', some)).toThrow('full'));

  test('other numbers of the same job are told, and that the ticks are kept; another job is not', () => {
    const recent = [{ name: 'a', title: 'Hall', made: 12 }];
    expect(tellChanged(recent, 'a', 'Hall')).toBeUndefined();
    expect(tellChanged(recent, 'b', 'Porch')).toBeUndefined();
    expect(tellChanged([{ ...recent[0]!, made: 0 }], 'b', 'Hall')).toBeUndefined();
    expect(tellChanged(recent, 'b', 'Hall')).toMatch(/have changed.*The 12 ticks.*do not count.*They are kept/);
    expect(tellChanged([...recent, { name: 'b', title: 'Hall', made: 3 }], 'b', 'Hall')).toMatch(/once before/);
  });
});

describe('numerals', () => {
  test.each([
    ['84 3/8"', { whole: '84', top: '3', bottom: '8', unit: '″' }],
    ['3/8"', { whole: '', top: '3', bottom: '8', unit: '″' }],
    ['13/16"', { whole: '', top: '13', bottom: '16', unit: '″' }],
    ['202 13/16"', { whole: '202', top: '13', bottom: '16', unit: '″' }],
    ['0"', { whole: '0', unit: '″' }],
    ['1504 mm', { whole: '1504', unit: 'mm' }],
    ['150.4 cm', { whole: '150.4', unit: 'cm' }],
    ['-1/16"', { whole: '−', top: '1', bottom: '16', unit: '″' }],
    ['10\u00a01/2"', { whole: '10', top: '1', bottom: '2', unit: '″' }],
  ])('%s', (reading, set) => expect(numeralOf(reading)).toEqual(set));

  test('are as wide as the typeface is, by its own table of advance widths', () => {
    const bytes = readFileSync(resolve('node_modules/@fontsource/barlow/files/barlow-latin-700-normal.woff'));
    const font = parse(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.length) as ArrayBuffer);
    const wide = (text: string) =>
      [...text].reduce((sum, one) => sum + font.charToGlyph(one).advanceWidth! / font.unitsPerEm, 0);
    for (const [one, width] of Object.entries(WIDE)) expect(wide(one)).toBeCloseTo(width / 1000, 6);
    const at = widthOf(numeralOf('202 13/16"'));
    expect(at).toBeGreaterThanOrEqual(wide('202') + BETWEEN.fraction + SMALLER.fraction * wide('16') + wide('″'));
    expect(at).toBeLessThan(wide('202') + BETWEEN.fraction + SMALLER.fraction * wide('16') + wide('″') + 0.1);
  });
});
