import { useId } from 'preact/hooks';
import { isMade, look, made, makeAll, making } from '../state/answer.ts';
import { sheetNames, sheetWords } from './sheets.ts';
import { cutWrong, KINDS, type Kind, sheet, shown, way } from './state.ts';

const WORDS: Record<Kind, string> = {
  guides: 'guide lines',
  marks: 'marks',
  numbers: 'numbers',
  walls: 'walls',
  bridges: 'bridges',
};

function Ticks() {
  const has: Record<Kind, boolean> = {
    guides: true,
    marks: true,
    numbers: true,
    walls: look.value?.lines.walls !== undefined,
    bridges: true,
  };
  return (
    <fieldset class="ticks">
      <legend>Drawn over the work</legend>
      <div class="options">
        {KINDS.filter((kind) => has[kind]).map((kind) => (
          <label key={kind}>
            <input
              type="checkbox"
              checked={shown.value[kind]}
              onChange={({ currentTarget: { checked } }) => {
                shown.value = { ...shown.value, [kind]: checked };
              }}
            />
            <span>{WORDS[kind]}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}

/** The whole floor as it is cut, or one of the sheets, once they are made. */
function Sheets() {
  const id = useId();
  const names = isMade.value ? sheetNames(made.value!.files) : [];
  if (names.length === 0)
    return (
      <p class="sheets">
        <button type="button" disabled={making.value} onClick={() => void makeAll()}>
          {making.value ? 'Making the sheets' : 'Make the sheets, to see each alone'}
        </button>
      </p>
    );
  return (
    <p class="sheets">
      <label for={id}>Look at</label>
      <select
        id={id}
        value={sheet.value}
        onChange={({ currentTarget: { value } }) => {
          sheet.value = value;
        }}
      >
        <option value="">the whole floor</option>
        {names.map((name) => (
          <option key={name} value={name}>
            {sheetWords(name)}
          </option>
        ))}
      </select>
    </p>
  );
}

/** What is seen of the plan: as painted or as cut, and what is drawn over it. */
export function WhatIsSeen() {
  const name = useId();
  const options = [
    ['painted', 'as painted'],
    ['cut', 'as cut'],
  ] as const;
  return (
    <div class="choices">
      <fieldset class="ways">
        <legend>The work</legend>
        <div class="options">
          {options.map(([value, words]) => (
            <label key={value}>
              <input
                type="radio"
                name={name}
                checked={way.value === value}
                onChange={() => {
                  way.value = value;
                  if (value === 'painted') sheet.value = '';
                }}
              />
              <span>{words}</span>
            </label>
          ))}
        </div>
      </fieldset>
      <Ticks />
      {way.value === 'cut' && <Sheets />}
      {cutWrong.value !== '' && <p class="wrong">{cutWrong.value}</p>}
    </div>
  );
}
