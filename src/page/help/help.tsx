import './help.css';
import { others } from './other-scenes.tsx';
import { plans } from './plan-scenes.tsx';

const SCENES = { ...plans, ...others };

/** What a drawing of how to measure is about. */
export type Measuring = keyof typeof SCENES;

/** Where to put the tape for one measurement: folded away until it is asked for. */
export function Help({ of, asks = 'Where do I hold the tape?' }: { of: Measuring; asks?: string }) {
  const { says, alt, drawing: Drawing } = SCENES[of];
  return (
    <details class="help">
      <summary>{asks}</summary>
      <figure>
        <svg class="scene" viewBox="0 0 320 240" role="img" aria-label={alt}>
          <Drawing />
        </svg>
        <figcaption>{says}</figcaption>
      </figure>
    </details>
  );
}
