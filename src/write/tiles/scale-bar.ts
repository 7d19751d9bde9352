import type { Point, Ring } from '../../geometry/path.ts';
import { inches } from '../../units/index.ts';
import { BAR } from './correction.ts';
import { MARK, WORDS } from './looks.ts';
import { line } from './outlines.ts';
import type { Surface } from './surface.ts';

/** Ticks of a scale: every `step` mm, so long, up to `to`. */
const ticks = (step: number, to: number, length: (n: number) => number): [at: number, length: number][] =>
  Array.from({ length: Math.floor(to / step + 1e-9) + 1 }, (_, n) => [n * step, length(n)]);

const INCH = (n: number): number => (n % 8 === 0 ? 5.5 : n % 4 === 0 ? 3.8 : n % 2 === 0 ? 2.6 : 1.7);
const MILLIMETRE = (n: number): number => (n % 50 === 0 ? 5.5 : n % 10 === 0 ? 4 : n % 5 === 0 ? 2.6 : 1.5);

/**
 * An upright bar of 10 in from its top down: inches to its left, centimetres to its right. Drawn with the printer's correction,
 * so that on paper it measures true.
 */
export function drawBar(surface: Surface, x: number, y: number, factor: number): void {
  const at = (mm: number): number => y + mm * factor;
  surface.group('scale-bar', () => surface.stroke([line([x, at(0)], [x, at(BAR)])], MARK, false));
  surface.group('ticks', () => {
    const left = ticks(inches(1 / 8), BAR, INCH).map(([mm, long]) => line([x, at(mm)], [x - long, at(mm)]));
    const right = ticks(1, BAR, MILLIMETRE).map(([mm, long]) => line([x, at(mm)], [x + long, at(mm)]));
    surface.stroke([...left, ...right], { ...MARK, width: 0.15 }, false);
  });
  for (let inch = 0; inch <= 10; inch++)
    surface.label(
      inch === 10 ? '10 in' : `${inch}`,
      { x: x - 6.2, y: at(inches(inch)) + 1.1, size: 3.2, anchor: 'end' },
      WORDS,
    );
  for (let cm = 0; cm <= 25; cm += 5)
    surface.label(
      cm === 25 ? '25 cm' : `${cm}`,
      { x: x + 6.2, y: at(10 * cm) + 1.1, size: 3.2, anchor: 'start' },
      WORDS,
    );
}

/** A small level bar of 2 in above and 5 cm below, for every page. */
export function drawSmallBar(surface: Surface, x: number, y: number, factor: number): void {
  const tick = (mm: number, long: number): Ring => {
    const from: Point = [x + mm * factor, y];
    return line(from, [from[0], y + long]);
  };
  surface.group('small-bar', () => surface.stroke([line([x, y], [x + inches(2) * factor, y])], MARK, false));
  surface.group('ticks', () => {
    const above = ticks(inches(1 / 4), inches(2), (n) => (n % 4 === 0 ? 2.2 : 1.3)).map(([mm, long]) =>
      tick(mm, -long),
    );
    const below = ticks(5, 50, (n) => (n % 2 === 0 ? 2.2 : 1.3)).map(([mm, long]) => tick(mm, long));
    surface.stroke([...above, ...below], { ...MARK, width: 0.15 }, false);
  });
  surface.label('2 in', { x: x + inches(2) * factor + 1.4, y: y - 0.5, size: 2.6, anchor: 'start' }, WORDS);
  surface.label('5 cm', { x: x + inches(2) * factor + 1.4, y: y + 2.2, size: 2.6, anchor: 'start' }, WORDS);
}
