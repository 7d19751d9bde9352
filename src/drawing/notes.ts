import type { Place } from './refusal.ts';

const MOST_LINES = 4;
const MOST_NOTES = 20;

/** What was left out or taken otherwise than drawn, in plain words. The same remark is made once, with all its lines. */
export class Notes {
  readonly #lines = new Map<string, Set<number>>();

  /** `says` is a sentence without its full stop. */
  add(says: string, place?: Place): void {
    const lines = this.#lines.get(says) ?? new Set<number>();
    if (place) lines.add(place.line);
    this.#lines.set(says, lines);
  }

  list(): string[] {
    const all = [...this.#lines].map(([says, lines]) => `${says}${writeLines([...lines])}.`);
    if (all.length <= MOST_NOTES) return all;
    return [...all.slice(0, MOST_NOTES), `There are ${all.length - MOST_NOTES} more remarks of this sort.`];
  }
}

function writeLines(lines: number[]): string {
  if (lines.length === 0) return '';
  if (lines.length === 1) return ` (line ${lines[0]})`;
  const sorted = [...lines].sort((a, b) => a - b);
  const more = sorted.length - MOST_LINES;
  if (more > 0) return ` (lines ${sorted.slice(0, MOST_LINES).join(', ')} and ${more} more)`;
  return ` (lines ${sorted.slice(0, -1).join(', ')} and ${sorted.at(-1)})`;
}
