import fc from 'fast-check';
import svgpath from 'svgpath';
import { expect, test } from 'vitest';
import { walkPath } from '../../src/geometry/path-text.ts';

type Told = (string | number)[][];

function told(d: string): { whole: boolean; steps: Told } {
  const steps: Told = [];
  const whole = walkPath(d, {
    move: (x, y) => void steps.push(['M', x, y]),
    line: (x, y) => void steps.push(['L', x, y]),
    cubic: (...points) => void steps.push(['C', ...points]),
    close: () => void steps.push(['Z']),
    arc: (x, y) => void steps.push(['A', x, y]),
  });
  return { whole, steps };
}

/** The same as svgpath tells it: absolute, without short forms, quadratics raised to cubics. */
function due(d: string): Told {
  const steps: Told = [];
  svgpath(d)
    .abs()
    .unshort()
    .iterate(([command, ...values], _, x, y) => {
      const v = values as number[];
      if (command === 'H') steps.push(['L', v[0]!, y]);
      else if (command === 'V') steps.push(['L', x, v[0]!]);
      else if (command === 'A') steps.push(['A', v[5]!, v[6]!]);
      else if (command === 'Q') {
        const raised = (from: number, handle: number) => from + (2 / 3) * (handle - from);
        const [hx, hy, tx, ty] = v as [number, number, number, number];
        steps.push(['C', raised(x, hx), raised(y, hy), raised(tx, hx), raised(ty, hy), tx, ty]);
      } else steps.push([command.toUpperCase(), ...v]);
    });
  return steps;
}

const number = fc.oneof(
  fc.integer({ min: -999, max: 999 }).map(String),
  fc.integer({ min: -99_999, max: 99_999 }).map((n) => String(n / 1000)),
  fc.constantFrom('.5', '-.25', '+4', '1e2', '-2.5e-1', '3.'),
);
const COUNTS: Record<string, number> = { M: 2, L: 2, H: 1, V: 1, C: 6, S: 4, Q: 4, T: 2, Z: 0 };
const command = fc
  .constantFrom(...Object.keys(COUNTS), ...Object.keys(COUNTS).map((letter) => letter.toLowerCase()))
  .chain((letter) => {
    const count = COUNTS[letter.toUpperCase()]!;
    return fc.array(number, { minLength: count, maxLength: count }).map((values) => `${letter}${values.join(' ')}`);
  });
const arc = fc.tuple(number, fc.constantFrom('01', '0 1', '1,1', '10 '), number, number);

test('paths are told as svgpath reads them', () => {
  const drawn = fc.array(
    fc.oneof(
      { weight: 9, arbitrary: command },
      { weight: 1, arbitrary: arc.map(([turn, flags, ...to]) => `A5 6 ${turn} ${flags}${to.join(' ')}`) },
    ),
    { maxLength: 12 },
  );
  fc.assert(
    fc.property(drawn, (commands) => {
      const d = `M1 2${commands.join('')}`;
      const wanted = due(d);
      const { whole, steps } = told(d);
      expect(whole).toBe(true);
      expect(steps.map(([name]) => name)).toEqual(wanted.map(([name]) => name));
      steps.flat().forEach((value, at) => {
        const other = wanted.flat()[at]!;
        if (typeof value === 'number') expect(Math.abs(value - (other as number))).toBeLessThan(1e-6);
      });
    }),
    { numRuns: 400 },
  );
});

// SVG 1.1, 8.3.1 and 8.3.9: numbers close up, a command that is repeated without its letter, and what each of these comes to.
test.each([
  ['M 100-200', [['M', 100, -200]]],
  ['M.6.5', [['M', 0.6, 0.5]]],
  [
    'm1 1 2 2',
    [
      ['M', 1, 1],
      ['L', 3, 3],
    ],
  ],
  ['', []],
])('%j', (d, steps) => expect(told(d)).toEqual({ whole: true, steps }));

test.each(['L5 5', '5 5', 'M1', 'M1 1L2', 'M0 0z5', 'M0 0A5 5 0 2 0 9 9', 'M0 0 & 5', 'M0 0LNaN 5'])(
  '%j cannot be read',
  (d) => expect(told(d).whole).toBe(false),
);

test('an arc is not told where it cannot be', () => {
  const none = () => {};
  expect(walkPath('M0 0A5 5 0 0 1 9 9', { move: none, line: none, cubic: none, close: none })).toBe(false);
});
