import type { Issue } from '../issue.ts';
import type { Wishes } from './shape/shape.ts';
import { borderOf, letteringOf } from './wishes.ts';

const WHERE = { centre: 'in the middle of the field', near: 'in the near border', far: 'in the far border' };
const PLACES = ['centre', 'near', 'far'] as const;

/** Lettering that has two sizes, or stands where nothing can. */
export function checkLettering(wishes: Wishes): Issue[] {
  const lines = letteringOf(wishes);
  const bare = borderOf(wishes).motif?.name === 'none';
  const taken = new Set<string>(wishes.medallion ? ['centre'] : []);
  return lines.flatMap(({ wish, path }) => {
    const issues: Issue[] = [];
    const { 'cap height': capHeight, width, place = 'centre' } = wish;
    if (capHeight !== undefined && width !== undefined)
      issues.push({
        code: 'job/two-sizes',
        path: [...path, 'width'],
        says: 'both `cap height` and `width` are given; one follows from the other',
        hint: 'one of the two',
      });
    const where = wish.place === undefined ? path : [...path, 'place'];
    if (place !== 'centre' && bare)
      issues.push({
        code: 'job/lettering-place',
        path: where,
        says: `there is no border, so nothing can stand ${WHERE[place]}`,
        hint: 'place: centre, or a border',
      });
    else if (taken.has(place)) {
      const free = PLACES.filter((one) => !taken.has(one) && (one === 'centre' || !bare))[0];
      issues.push({
        code: 'job/lettering-place',
        path: where,
        says: `${place === 'centre' && wishes.medallion ? 'the medallion stands' : 'other lettering stands'} ${WHERE[place]} already`,
        hint: free === undefined ? 'leave one of them out' : `place: ${free}`,
      });
    }
    taken.add(place);
    return issues;
  });
}
