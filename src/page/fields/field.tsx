import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';
import type { Tree } from '../../job/tree.ts';
import { issuesAt } from '../state/answer.ts';
import { endStep, say, tree } from '../state/job.ts';
import { type Path, textAt, valueAt } from '../state/tree.ts';
import { otherReading } from './other-reading.ts';
import { readBack, readBackRange, unitOf } from './read-back.ts';
import { Wrong } from './wrong.tsx';

export { Wrong } from './wrong.tsx';

interface Common {
  path: Path;
  label: string;
  /** One plain sentence, always seen. */
  says?: ComponentChildren;
}

/** What a branch says where a single text is expected, as one would write it in a line. */
const inLine = (path: Path): string => {
  const value = valueAt(tree.value, path);
  if (Array.isArray(value)) return value.every((one) => typeof one === 'string') ? value.join(', ') : '';
  if (typeof value !== 'object' || value === null) return textAt(tree.value, path);
  const { from, to, wish } = value as Record<string, unknown>;
  return typeof from === 'string' && typeof to === 'string' ? `${from} to ${to}${wish ? `, wish ${wish}` : ''}` : '';
};

/** `34 to 38, wish 36` becomes the branch that the job file has for it. */
function outOfLine(text: string): Tree {
  const [, from, to, wish] = /^(.+?)\s+to\s+(.+?)\s*,\s*wish\s+(.+)$/i.exec(text) ?? [];
  return wish === undefined ? text : { from: from!, to: to!, wish };
}

/** `36, 54, 72` becomes a list; what follows the last comma is still being typed. */
const asList = (text: string): Tree => text.split(/\s*,\s*/).filter((one, at) => at === 0 || one !== '');

interface LineProps extends Common {
  example?: string;
  /** A length is read back in both systems, and so are the ends of a range; `list`: several lengths with commas between. */
  kind?: 'length' | 'range' | 'list' | 'count' | 'words';
  help?: ComponentChildren;
  /** The key stays when nothing stands in it: rows of a list do not go away while one types. */
  stays?: boolean;
}

/** A line to type in. */
export function Line({ path, label, says, example, kind = 'words', help, stays = false }: LineProps) {
  const id = useId();
  const text = inLine(path);
  const bare = unitOf(textAt(tree.value, ['units']));
  const back = kind === 'length' || kind === 'range' ? readBackRange(text, bare) : undefined;
  const other = kind === 'length' || kind === 'range' ? otherReading(path, text, bare) : undefined;
  const list = kind === 'list' && text !== '' ? text.split(/\s*,\s*/).map((one) => readBack(one, bare)) : [];
  const wrong = issuesAt(path).length > 0;
  const write = (value: string): Tree | undefined => {
    if (value.trim() === '') return stays ? null : undefined;
    return kind === 'list' ? asList(value) : outOfLine(value);
  };
  const readAs = (reading: string): void => {
    endStep();
    say(path, reading);
    endStep();
    // The button goes with the question.
    document.getElementById(id)?.focus();
  };
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
        onInput={({ currentTarget: { value } }) => say(path, write(value))}
        onBlur={endStep}
      />
      <div class="says" id={`${id}-says`}>
        {back && (
          <output for={id}>
            {back.says}
            {other?.says && `: ${other.says} for this`}
          </output>
        )}
        {other && (
          <div class="other-reading">
            {other.readings.map((reading) => (
              <button type="button" key={reading} onClick={() => readAs(reading)}>
                Is it {reading}?
              </button>
            ))}
          </div>
        )}
        {list.length > 0 && list.every((one) => one && !one.wrong) && (
          <output for={id}>{list.map((one) => one!.says).join('; ')}</output>
        )}
        {says && <p>{says}</p>}
      </div>
      <Wrong path={path} id={`${id}-wrong`} {...(other ? { asked: other.readings } : {})} />
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

type Options = readonly (readonly [value: string, label: string])[];

/** The same as one line that opens, for more than a few. `usual`: what is chosen while the job says nothing. */
export function Pick({ path, label, says, options, usual }: Common & { options: Options; usual?: string }) {
  const value = textAt(tree.value, path) || usual || '';
  return (
    <Picked label={label} says={says} path={path} options={options} value={value} onPick={(one) => say(path, one)} />
  );
}

/** A line that opens, whose choice is written in a way of its own. */
export function Picked({
  path,
  label,
  says,
  options,
  value,
  onPick,
}: Common & { options: Options; value: string; onPick: (value: string) => void }) {
  const id = useId();
  return (
    <div class="field pick">
      <label for={id}>{label}</label>
      <select
        id={id}
        value={value}
        aria-describedby={`${id}-says ${id}-wrong`}
        onChange={({ currentTarget }) => onPick(currentTarget.value)}
      >
        {!options.some(([option]) => option === value) && <option value={value}>{value || 'choose'}</option>}
        {options.map(([option, words]) => (
          <option key={option} value={option}>
            {words}
          </option>
        ))}
      </select>
      <div class="says" id={`${id}-says`}>
        {says}
      </div>
      <Wrong path={path} id={`${id}-wrong`} />
    </div>
  );
}
