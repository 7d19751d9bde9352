import { signal } from '@preact/signals';
import { useLayoutEffect } from 'preact/hooks';
import type { Issue } from '../../issue.ts';
import { issues } from '../state/answer.ts';
import type { Path } from '../state/tree.ts';

/** Places of the job that something on the card shows the issues of, as it stands; each as often as it is shown. */
const shown = signal<readonly Path[]>([]);

const covers = (path: Path, of: Path): boolean => path.every((key, n) => String(of[n]) === String(key));

/** Says that the issues of a place are shown, as long as the component stands. */
export function useShown(path: Path): void {
  const key = path.join('\n');
  useLayoutEffect(() => {
    shown.value = [...shown.peek(), path];
    return () => {
      const at = shown.peek().indexOf(path);
      shown.value = shown.peek().filter((_, n) => n !== at);
    };
  }, [key]);
}

/** That nothing lands is no fault of one field; the part that fits says it. */
const isFit = ({ code }: Issue): boolean => code.startsWith('fit/');

/** Issues at a place or below it, without those that a place further below shows. */
export const issuesLeftAt = (path: Path): Issue[] =>
  issues.value.filter(
    (issue) =>
      !isFit(issue) &&
      covers(path, issue.path) &&
      !shown.value.some((one) => one.length > path.length && covers(one, issue.path)),
  );

/** Issues that nothing shows. */
export const issuesNowhere = (): Issue[] =>
  issues.value.filter((issue) => isFit(issue) || !shown.value.some((path) => covers(path, issue.path)));
