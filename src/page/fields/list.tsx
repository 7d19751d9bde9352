import './list.css';
import type { ComponentChildren } from 'preact';
import { useRef } from 'preact/hooks';
import type { Tree } from '../../job/tree.ts';
import { endStep, say, tree } from '../state/job.ts';
import { type Path, valueAt } from '../state/tree.ts';
import { Wrong } from './wrong.tsx';

/** The entries of a list; none where the job says none. */
export const entriesAt = (path: Path): Tree[] => {
  const list = valueAt(tree.value, path);
  return Array.isArray(list) ? list : [];
};

interface Entries {
  path: Path;
  /** What one entry is called: `Wall 3`. */
  name: (at: number) => string;
  /** What is written for a new entry; `at`: the place it comes to. */
  fresh: (at: number) => Tree;
  /** The button that adds one at the end. */
  add: string;
  /** Entries may change places. */
  ordered?: boolean;
  children: (path: Path, at: number) => ComponentChildren;
}

/** A list of which every entry has a few fields: one can be added, taken out, and moved where the order counts. */
export function List({ path, name, fresh, add, ordered = false, children }: Entries) {
  const box = useRef<HTMLDivElement>(null);
  const list = entriesAt(path);
  const set = (next: Tree[]): void => {
    endStep();
    say(path, next.length === 0 ? undefined : next);
    endStep();
  };
  const focus = (find: (box: HTMLElement) => HTMLElement | null | undefined): void => {
    requestAnimationFrame(() => box.current && find(box.current)?.focus());
  };
  const entry = (at: number) => (within: HTMLElement) =>
    within.querySelectorAll<HTMLElement>(':scope > ol > li')[at]?.querySelector<HTMLElement>('input, select');
  const insert = (at: number): void => {
    set([...list.slice(0, at), fresh(at), ...list.slice(at)]);
    focus(entry(at));
  };
  const remove = (at: number): void => {
    set(list.filter((_, n) => n !== at));
    focus((within) => within.querySelector<HTMLElement>(':scope > .add'));
  };
  const move = (at: number, by: number): void => {
    const next = [...list];
    next.splice(at + by, 0, ...next.splice(at, 1));
    set(next);
    focus(entry(at + by));
  };
  return (
    <div class="list" ref={box}>
      <ol>
        {list.map((_, at) => (
          <li key={at}>
            <fieldset>
              <legend>{name(at)}</legend>
              {children([...path, at], at)}
              <div class="entry">
                {ordered && (
                  <>
                    <button type="button" onClick={() => insert(at + 1)}>
                      Add one after it
                    </button>
                    <button type="button" disabled={at === 0} onClick={() => move(at, -1)}>
                      Move up
                    </button>
                    <button type="button" disabled={at === list.length - 1} onClick={() => move(at, 1)}>
                      Move down
                    </button>
                  </>
                )}
                <button type="button" onClick={() => remove(at)}>
                  Take out {name(at).toLowerCase()}
                </button>
              </div>
            </fieldset>
          </li>
        ))}
      </ol>
      <Wrong path={path} />
      <button type="button" class="add" onClick={() => insert(list.length)}>
        {add}
      </button>
    </div>
  );
}
