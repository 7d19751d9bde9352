import type { Claim } from '../../../src/check/claim.ts';
import paint from '../../../src/check/claims/paint.ts';
import paintDays from '../../../src/check/claims/paint-days.ts';
import paintGoods from '../../../src/check/claims/paint-goods.ts';
import paintPage from '../../../src/check/claims/paint-page.ts';
import { fileSet } from '../../../src/check/file-set.ts';
import type { Files } from './tamper.ts';

/** Everything that is claimed of the paint of some files. */
export function paintClaims(files: Files): Claim[] {
  const set = fileSet(files);
  return [paint, paintDays, paintGoods, paintPage].flatMap((family) => family(set));
}

export const refutedPaint = (files: Files): string[] =>
  paintClaims(files)
    .filter(({ holds }) => !holds)
    .map(({ claim }) => claim);
