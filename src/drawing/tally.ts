import { MOST_ELEMENTS, MOST_NUMBERS, MOST_SIDES } from './limits.ts';
import { type Place, refuse } from './refusal.ts';

/** Keeps count of what the drawing holds, copies counted every time, and refuses what is too much. */
export class Tally {
  #elements = 0;
  #numbers = 0;
  #sides = 0;

  element(place: Place): void {
    this.#elements += 1;
    if (this.#elements <= MOST_ELEMENTS) return;
    refuse(
      'too-many',
      `the drawing has more than ${MOST_ELEMENTS} elements, counting copies (use)`,
      'simplify the drawing; use fewer copies of copies',
      place,
    );
  }

  numbers(count: number, place: Place): void {
    this.#numbers += count;
    if (this.#numbers <= MOST_NUMBERS) return;
    refuse(
      'too-many',
      `the drawing has more than ${MOST_NUMBERS} numbers, counting copies (use)`,
      'simplify the lines in the drawing program: fewer points, fewer copies',
      place,
    );
  }

  sides(count: number, place: Place): void {
    this.#sides += count;
    if (this.#sides <= MOST_SIDES) return;
    refuse(
      'too-many',
      `the drawing has more than ${MOST_SIDES} lines and curves in one repeat, counting copies (use)`,
      'simplify the lines in the drawing program: fewer points, fewer copies',
      place,
    );
  }
}
