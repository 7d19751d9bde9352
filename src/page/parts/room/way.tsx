import { signal } from '@preact/signals';
import { useId } from 'preact/hooks';
import type { Tree } from '../../../job/tree.ts';
import { endStep, sayAll, tree } from '../../state/job.ts';
import { type Path, valueAt } from '../../state/tree.ts';

/** One way to measure something: what it writes, by which it is told from the others. */
export interface Way {
  key: string;
  words: string;
  /** Only this way says something here. */
  paths: readonly Path[];
  /** What has to stand there for it to be seen, where nothing was measured so before. */
  begins?: readonly (readonly [Path, Tree])[];
}

/** What each way had measured when another was picked, so that nothing is lost by looking at the others. */
const laidBy = new Map<string, Tree>();
/** What was picked where the job does not tell. */
const picked = signal<{ [name: string]: string }>({});

/** The way that the job tells, or that was picked. */
export function wayNow(name: string, ways: readonly Way[], told: string | undefined): string {
  return told ?? picked.value[name] ?? ways[0]!.key;
}

function change(name: string, ways: readonly Way[], from: string, to: string): void {
  const [was, is] = [from, to].map((key) => ways.find((way) => way.key === key)!) as [Way, Way];
  const at = (way: Way, path: Path) => `${name}\n${way.key}\n${path.join('\n')}`;
  for (const path of was.paths) {
    const value = valueAt(tree.value, path);
    if (value !== undefined) laidBy.set(at(was, path), value);
  }
  endStep();
  sayAll(
    [
      ...was.paths.map((path) => [path, undefined] as const),
      ...is.paths.flatMap((path) => {
        const value = laidBy.get(at(is, path)) ?? is.begins?.find(([one]) => one.join() === path.join())?.[1];
        return value === undefined ? [] : [[path, value] as const];
      }),
    ],
    'how it is measured',
  );
  picked.value = { ...picked.value, [name]: to };
}

/** How something is measured, where there is more than one way; the ways exclude each other. */
export function HowMeasured({
  name,
  label,
  now,
  ways,
}: {
  name: string;
  label: string;
  now: string;
  ways: readonly Way[];
}) {
  const group = useId();
  return (
    <fieldset class="field choice">
      <legend>{label}</legend>
      <div class="options ways">
        {ways.map(({ key, words }) => (
          <label key={key}>
            <input
              type="radio"
              name={group}
              value={key}
              checked={now === key}
              onChange={() => change(name, ways, now, key)}
            />
            <span>{words}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
