import { expect, test } from 'vitest';
import { otherSystem } from '../../src/page/parts/room/other-system.tsx';

const room = (across: string, along: string) => ({ site: { room: { across, along } } });

test.each([
  ['inches asked, metres written', { units: 'in', ...room('2.37 m', '3.05 m') }, 'metric'],
  ['centimetres asked, feet written', { units: 'cm', ...room(`3' 1 1/2"`, '11 ft 4 in') }, 'inch'],
  ['both in inches', { units: 'in', ...room(`37 1/2"`, `11' 4"`) }, undefined],
  ['one of each', { units: 'in', ...room('2.37 m', `10'`) }, undefined],
  ['a bare number, which would mean something else', { units: 'in', ...room('2.37 m', '120') }, undefined],
  ['nothing yet', { units: 'in' }, undefined],
  ['millimetres asked and written', { units: 'mm', ...room('2370 mm', '3050') }, undefined],
] as const)('%s', (_, job, other) => {
  expect(otherSystem(job)).toBe(other);
});
