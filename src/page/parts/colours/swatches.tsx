import { useSignal } from '@preact/signals';
import { useId, useLayoutEffect } from 'preact/hooks';
import { listed } from '../../../words.ts';
import { Wrong } from '../../fields/field.tsx';
import { useStops } from '../../fields/stops.ts';
import { look } from '../../state/answer.ts';
import { endStep, say, sayAll, tree } from '../../state/job.ts';
import { textAt, valueAt } from '../../state/tree.ts';
import { coloursTold } from './asking.ts';
import { ByKeys, KEYS } from './by-keys.tsx';
import { addChanges, freeNameFor, paletteIn, removeChanges, renameChanges, usesOf } from './palette.ts';
import { inText } from './part-words.ts';

const HEX = /^#[0-9a-f]{6}$/i;

/** What a colour is painted as here: as typed where that is plain, else as the job reads it. */
const hexOf = (name: string): string => {
  const typed = textAt(tree.value, ['palette', name]);
  if (HEX.test(typed)) return typed.toLowerCase();
  return look.value?.job.palette[name] ?? '#888888';
};

/** What has to be painted in another colour before this one can go. */
function TakeOut({ name, done }: { name: string; done(): void }) {
  const id = useId();
  const job = look.value!.job;
  const parts = (coloursTold.value?.parts ?? []).map(({ part }) => part);
  const uses = usesOf(job, parts, name);
  const others = Object.keys(job.palette).filter((one) => one !== name);
  const instead = useSignal(others[0]!);
  useLayoutEffect(() => document.getElementById(`${id}-instead`)?.focus(), []);
  const where = [
    ...(uses.parts.length > 0 ? [listed(uses.parts.map(inText))] : []),
    ...(uses.ways.length > 0
      ? [`${uses.ways.length > 1 ? 'the colourways' : 'the colourway'} ${listed(uses.ways)}`]
      : []),
  ];
  return (
    <fieldset class="instead">
      <legend class="unseen">Take out {name}</legend>
      <p>
        {name} is in {where.join(', and in ')}.
      </p>
      <label for={`${id}-instead`}>
        Paint that in<span class="unseen">, in the place of {name}</span>
      </label>{' '}
      <select
        id={`${id}-instead`}
        value={instead.value}
        onChange={({ currentTarget }) => {
          instead.value = currentTarget.value;
        }}
      >
        {others.map((one) => (
          <option key={one} value={one}>
            {one}
          </option>
        ))}
      </select>
      <div class="acts">
        <button
          type="button"
          onClick={() => {
            endStep();
            sayAll(removeChanges(tree.value, job, parts, name, instead.value), `${name} taken out`);
            done();
          }}
        >
          Take {name} out
        </button>
        <button type="button" onClick={done}>
          Keep it
        </button>
      </div>
    </fieldset>
  );
}

function Swatch({ name }: { name: string }) {
  const id = useId();
  const typed = useSignal<string | undefined>(undefined);
  const isLeaving = useSignal(false);
  const wrong = useSignal('');
  const hex = hexOf(name);
  const job = look.value?.job;
  const names = Object.keys(paletteIn(tree.value, job));
  const rename = (): void => {
    const to = typed.value?.trim() ?? name;
    typed.value = undefined;
    wrong.value = '';
    if (to === '' || to === name) return;
    if (names.some((one) => one !== name && one.toLowerCase() === to.toLowerCase())) {
      wrong.value = `There is a colour called ${to} already; this one is still ${name}.`;
      return;
    }
    endStep();
    sayAll(renameChanges(tree.value, job, name, to), `${name} called ${to}`);
  };
  const setHex = (value: string): void => {
    // A job that says no palette gets the one that holds, with this colour changed.
    if (valueAt(tree.value, ['palette']) === undefined)
      sayAll([[['palette'], { ...paletteIn(tree.value, job), [name]: value }]], `palette ${name}`, `palette.${name}`);
    else say(['palette', name], value);
  };
  const parts = (coloursTold.value?.parts ?? []).map(({ part }) => part);
  const leave = (): void => {
    if (!job) return;
    const uses = usesOf(job, parts, name);
    if (uses.parts.length + uses.ways.length > 0) {
      isLeaving.value = true;
      return;
    }
    endStep();
    sayAll(removeChanges(tree.value, job, parts, name, undefined), `${name} taken out`);
  };
  return (
    <li class="dab">
      <span class="paint" style={{ background: hex }} aria-hidden="true" />
      <div class="field">
        <label for={`${id}-name`}>
          Name<span class="unseen"> of the paint {name}</span>
        </label>
        <input
          id={`${id}-name`}
          type="text"
          value={typed.value ?? name}
          autocomplete="off"
          onInput={({ currentTarget }) => {
            typed.value = currentTarget.value;
          }}
          onBlur={rename}
          onKeyDown={({ key, currentTarget }) => key === 'Enter' && currentTarget.blur()}
        />
        {wrong.value && (
          <p class="wrong" role="alert">
            {wrong.value}
          </p>
        )}
      </div>
      <div class="field">
        <label for={`${id}-hex`}>Colour of {name}</label>
        <span class="hex">
          <input
            id={`${id}-hex`}
            type="text"
            value={textAt(tree.value, ['palette', name]) || hex}
            autocomplete="off"
            spellcheck={false}
            aria-describedby={`${id}-wrong`}
            onInput={({ currentTarget }) => setHex(currentTarget.value)}
            onBlur={endStep}
          />
          <input
            type="color"
            value={hex}
            aria-label={`Mix ${name} by eye`}
            onInput={({ currentTarget }) => setHex(currentTarget.value)}
            onChange={endStep}
          />
        </span>
        <Wrong path={['palette', name]} id={`${id}-wrong`} />
      </div>
      {!isLeaving.value && names.length > 2 && (
        <button type="button" onClick={leave}>
          Take out<span class="unseen"> {name}</span>
        </button>
      )}
      {isLeaving.value && job && (
        <TakeOut
          name={name}
          done={() => {
            isLeaving.value = false;
            document.getElementById(`${id}-name`)?.focus();
          }}
        />
      )}
    </li>
  );
}

/** The paints that there are, as dabs with their names. */
export function Swatches() {
  const rows = useStops('.dab');
  const job = look.value?.job;
  const names = Object.keys(paletteIn(tree.value, job));
  const add = (): void => {
    if (!job) return;
    endStep();
    const parts = (coloursTold.value?.parts ?? []).map(({ part }) => part);
    sayAll(addChanges(tree.value, job, parts, { [freeNameFor('new colour', names)]: '#7a7f6a' }), 'a colour added');
  };
  return (
    <section class="group" aria-labelledby="colours-paints" aria-describedby={KEYS}>
      <h3 id="colours-paints">The paints</h3>
      <p class="usual">
        A colour is # and six figures, or rgb(59 74 87), lab(38% 10 -20), oklch(62% 0.12 45). Screens show paint only
        nearly: try it on a board first.
      </p>
      <ByKeys />
      <ul class="dabs" ref={rows}>
        {names.map((name) => (
          <Swatch key={name} name={name} />
        ))}
      </ul>
      <Wrong path={['palette']} />
      <button type="button" onClick={add}>
        Add a paint
      </button>
    </section>
  );
}
