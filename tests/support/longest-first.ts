import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** What takes longest, a quarter of a minute or more each: begun last, it would keep one core waiting for the other. */
const LONG = [
  'check/every-pairing',
  'page/browser/access',
  'check/every-motif',
  'page/browser/stops',
  'page/browser/keyboard',
  'cli/make',
  'motif/every-motif',
  'page/browser/same-bytes',
  'cli/kill',
  'page/browser/offline',
  'tests/samples',
  'cli/house',
  'page/browser/keep',
  'page/browser/floor',
  'page/browser/reading',
  'page/browser/newcomer',
  'paint/sample-areas',
  'fuzz/fuzz',
];

/** Tests that take long begin first; the others follow as they would. */
export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const rank = ({ moduleId }: TestSpecification): number => {
      const at = LONG.findIndex((name) => moduleId.includes(`${name}.test`));
      return at < 0 ? LONG.length : at;
    };
    return (await super.sort(files)).sort((a, b) => rank(a) - rank(b));
  }
}
