import type { Path } from './tree.ts';

/** Branches that a person does not think of as part of a measurement's name. */
const UNSAID = new Set(['site']);

/** The name of a place in the job as one says it: `border width`, `lettering 2 text`; counted from 1. */
export const sayPlace = (path: Path): string =>
  path
    .filter((key, at) => !(at === 0 && path.length > 1 && UNSAID.has(String(key))))
    .map((key) => (typeof key === 'number' ? key + 1 : key))
    .join(' ');

/** What was changed by a step that says something at these places: the place, or the branch that they have in common. */
export function sayPlaces(paths: readonly Path[]): string {
  const [first = [], ...rest] = paths;
  const common = first.filter((_, at) =>
    rest.every((path) => first.slice(0, at + 1).every((key, n) => path[n] === key)),
  );
  return sayPlace(common) || 'several things';
}
