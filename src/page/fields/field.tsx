import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';
import { issuesAt } from '../state/answer.ts';
import { endStep, say, tree } from '../state/job.ts';
import { type Path, textAt, valueAt } from '../state/tree.ts';
import { readBack, unitOf } from './read-back.ts';

interface Common {
  path: Path;
  label: string;
  /** One plain sentence, always seen. */
  says?: ComponentChildren;
}

/** What is wrong at a place of the job, each with what to write instead; a hint that can be typed as it stands is a button. */
export function Wrong({ path, id }: { path: Path; id?: string }) {
  const wrong = issuesAt(path);
  if (wrong.length === 0) return null;
  return (
    <div class="wrong" id={id} role="status">
      {wrong.map(({ says, hint }) => (
        <p key={says}>
          {says}. {hint && <span class="hint">Try: {hint}</span>}
        </p>
      ))}
    </div>
  );
}

/** What a branch says where a single text is expected, as one would write it in a line. */
const inLine = (path: Path): string => {
  const value = valueAt(tree.value, path);
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return textAt(tree.value, path);
  const { from, to, wish } = value as Record<string, unknown>;
  return typeof from === 'string' && typeof to === 'string' ? `${from} to ${to}${wish ? `, wish ${wish}` : ''}` : '';
};

/** `34 to 38, wish 36` becomes the branch that the job file has for it. */
function outOfLine(text: string) {
  const [, from, to, wish] = /^(.+?)\s+to\s+(.+?)\s*,\s*wish\s+(.+)$/i.exec(text) ?? [];
  return wish === undefined ? text : { from: from!, to: to!, wish };
}

/** A line to type in. `kind`: a length is read back in both systems. */
export function Line({
  path,
  label,
  says,
  example,
  kind = 'words',
  help,
}: Common & { example?: string; kind?: 'length' | 'range' | 'count' | 'words'; help?: ComponentChildren }) {
  const id = useId();
  const text = inLine(path);
  const back = kind === 'length' ? readBack(text, unitOf(textAt(tree.value, ['units']))) : undefined;
  const wrong = issuesAt(path).length > 0;
  return (
    <div class={`field ${kind}`}>
      <label for={id}>{label}</label>
      <input
        id={id}
        type="text"
        value={text}
        placeholder={example ? `such as ${example}` : undefined}
        autocomplete="off"
        autocapitalize="off"
        spellcheck={kind === 'words'}
        aria-invalid={wrong || undefined}
        aria-describedby={`${id}-says ${id}-wrong`}
        onInput={({ currentTarget: { value } }) => say(path, value.trim() === '' ? undefined : outOfLine(value))}
        onBlur={endStep}
      />
      <div class="says" id={`${id}-says`}>
        {back && !back.wrong && <output for={id}>{back.says}</output>}
        {says && <p>{says}</p>}
      </div>
      <Wrong path={path} id={`${id}-wrong`} />
      {help}
    </div>
  );
}

/** A few things of which one holds. `usual` is what holds while the job says nothing. */
export function Choice({
  path,
  label,
  says,
  options,
  usual,
}: Common & { options: readonly (readonly [value: string, label: ComponentChildren])[]; usual?: string }) {
  const id = useId();
  const value = textAt(tree.value, path) || usual;
  return (
    <fieldset class="field choice">
      <legend>{label}</legend>
      <div class="options">
        {options.map(([option, words]) => (
          <label key={option}>
            <input
              type="radio"
              name={id}
              value={option}
              checked={value === option}
              onChange={() => say(path, option)}
            />
            <span>{words}</span>
          </label>
        ))}
      </div>
      {says && <div class="says">{says}</div>}
      <Wrong path={path} />
    </fieldset>
  );
}
