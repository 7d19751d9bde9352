import type { ColourPair } from '../../../colour/pairs.ts';
import type { Job } from '../../../job/job.ts';
import { look } from '../../state/answer.ts';
import { coloursTold } from './asking.ts';

const READS = { well: 'reads well', weakly: 'is weak', hardly: 'is hardly seen' } as const;
const HEAD = ['Side by side', 'Contrast', 'Difference', 'In dim light', 'No red', 'No green', 'No blue', 'Faded'];

const numbers = ({ contrast, difference, lightness, seen, faded }: ColourPair): string[] => [
  contrast.toFixed(1),
  ...[difference, lightness, seen.protan, seen.deutan, seen.tritan, faded].map((value) => value.toFixed(0)),
];

/** Two colours as they meet. */
function Meeting({ pair, palette }: { pair: ColourPair; palette: Job['palette'] }) {
  return (
    <span class="meeting" aria-hidden="true">
      {pair.colours.map((name) => (
        <span key={name} style={{ background: palette[name] }} />
      ))}
    </span>
  );
}

/** How the colours that lie beside each other on the floor are told apart. */
export function Reads() {
  const own = coloursTold.value?.ways[0];
  const palette = look.value?.job.palette;
  if (!own || !palette) return null;
  return (
    <section class="group" aria-labelledby="colours-reads">
      <h3 id="colours-reads">How they read side by side</h3>
      <ul class="reads">
        {own.pairs.map((pair) => (
          <li key={pair.colours.join()}>
            <Meeting pair={pair} palette={palette} />
            <span>
              <b>
                {pair.colours[0]} {pair.parted ? 'close to' : 'beside'} {pair.colours[1]}
              </b>{' '}
              {READS[pair.reads]}
              {pair.because.length > 0 && ` ${pair.because.join(', ')}`}.
            </span>
          </li>
        ))}
      </ul>
      <details>
        <summary>The numbers</summary>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: wide tables are scrolled by keys */}
        <section class="wide-table" tabIndex={0} aria-label="How colours read, in numbers">
          <table class="told-table">
            <thead>
              <tr>
                {HEAD.map((words) => (
                  <th key={words} scope="col">
                    {words}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {own.pairs.map((pair) => (
                <tr key={pair.colours.join()}>
                  <th scope="row">{pair.colours.join(' and ')}</th>
                  {numbers(pair).map((text, at) => (
                    <td key={HEAD[at + 1]}>{text}</td>
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </section>
        <p class="usual">
          Contrast is that of WCAG 2, from 1 to 21. The others are differences as the eye tells them (CIEDE2000); in dim
          light, the difference in lightness. From 20 a pattern reads well from across the room, below 10 hardly. A
          floor is no text, so this is a rule of thumb.
        </p>
      </details>
    </section>
  );
}
