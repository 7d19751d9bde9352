import './slider.css';
import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';
import { endStep } from '../state/job.ts';

/** A number from a least to a most, by sliding or by typing; what is typed is taken as it stands, and told of where it is wrong. */
export function Slider({
  label,
  says,
  text,
  usual,
  min,
  max,
  step,
  unit = '',
  take,
}: {
  label: string;
  says?: ComponentChildren;
  /** What the job says; empty where it says nothing. */
  text: string;
  /** What holds while the job says nothing. */
  usual: number;
  min: number;
  max: number;
  step: number;
  /** Written after the ends of the range. */
  unit?: string;
  take(text: string | undefined): void;
}) {
  const id = useId();
  const number = text.trim() === '' ? usual : Number.parseFloat(text);
  const shown = Number.isFinite(number) ? number : usual;
  const plain = (value: number): string => String(Number(value.toFixed(4)));
  return (
    <div class="field slider">
      <label for={id}>{label}</label>
      <div class="slide">
        <input
          id={id}
          type="range"
          min={min}
          max={max}
          step={step}
          value={shown}
          aria-describedby={`${id}-says`}
          onInput={({ currentTarget }) => take(plain(Number(currentTarget.value)))}
          onChange={endStep}
        />
        <input
          type="text"
          inputMode="decimal"
          aria-label={`${label}, as a number`}
          value={text}
          placeholder={plain(usual)}
          onInput={({ currentTarget: { value } }) => take(value.trim() === '' ? undefined : value)}
          onBlur={endStep}
        />
      </div>
      <div class="says" id={`${id}-says`}>
        {plain(min)} to {plain(max)}
        {unit}, usually {plain(usual)}
        {says && <>. {says}</>}
      </div>
    </div>
  );
}
