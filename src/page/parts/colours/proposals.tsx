import { useSignal } from '@preact/signals';
import { useId } from 'preact/hooks';
import type { Proposed } from '../../../colour/proposed.ts';
import { FileButton } from '../../drop/file-button.tsx';
import { maker } from '../../engine/client.ts';
import type { ColoursFrom } from '../../engine/colours.ts';
import { useStops } from '../../fields/stops.ts';
import { isDrawn, look } from '../../state/answer.ts';
import { base, chosen, endStep, sayAll, tree } from '../../state/job.ts';
import { coloursTold } from './asking.ts';
import { KEYS } from './by-keys.tsx';
import { addChanges, inFull, keepChanges, type Way } from './palette.ts';
import { saysColours } from './ways.tsx';
import { WorkDrawn } from './work-drawn.tsx';

/** Other ways to colour the work, found when they are asked for. */
export function Proposals() {
  const id = useId();
  const asks = useStops();
  const rows = useStops('li');
  const found = useSignal<Proposed | undefined>(undefined);
  const says = useSignal('');
  const isBusy = useSignal(false);
  const shade = useSignal('');
  const job = look.value?.job;
  const told = coloursTold.value;
  if (!job || !told) return null;
  const parts = told.parts.map(({ part }) => part);
  const palette = { ...job.palette, ...found.value?.palette };
  const names = Object.keys(job.palette);
  const ask = async (from: ColoursFrom): Promise<void> => {
    isBusy.value = true;
    says.value = 'Looking for colours that read well…';
    const answer = await maker()
      .propose({ base: base.value, tree: tree.value, chosen: chosen.value }, from)
      .catch((error: unknown) => String(error));
    isBusy.value = false;
    if (typeof answer === 'string') says.value = answer;
    else if (!answer.ok)
      says.value = answer.issues.map((one) => `${one.says}.${one.hint ? ` Try: ${one.hint}.` : ''}`).join(' ');
    else {
      found.value = answer.value;
      const { ways } = answer.value;
      says.value = [...answer.value.says, ways.length > 0 ? `${ways.length} found.` : ''].filter(Boolean).join(' ');
    }
  };
  const keep = (way: Way, isOwn: boolean): void => {
    endStep();
    const used = new Set(parts.map((part) => way.colours[part]));
    const fresh = Object.fromEntries(Object.entries(found.value?.palette ?? {}).filter(([name]) => used.has(name)));
    const added = Object.keys(fresh).length > 0 || isOwn ? addChanges(tree.value, job, parts, fresh) : [];
    if (isOwn) {
      const colours = added.find(([path]) => path[0] === 'colours')![1];
      const next = {
        ...(colours as Record<string, string>),
        ...(inFull(way.colours, parts) as Record<string, string>),
      };
      sayAll([...added, [['colours'], next]], `the colours of ${way.name} taken`);
    } else sayAll([...added, ...keepChanges(tree.value, parts, way)], `${way.name} kept`);
  };
  const ways = (found.value?.ways ?? []).filter((way) => parts.every((part) => palette[way.colours[part]]));
  return (
    <section class="group" aria-labelledby="colours-proposals" aria-describedby={KEYS}>
      <h3 id="colours-proposals">Colours to try</h3>
      <div ref={asks}>
        <div class="acts">
          <button type="button" disabled={isBusy.value || !isDrawn.value} onClick={() => void ask({ from: 'palette' })}>
            Change these paints about
          </button>
          <FileButton
            take={async ([file]) => {
              if (!file) return;
              const bytes = new Uint8Array(await file.arrayBuffer());
              await ask({ from: 'picture', name: file.name, bytes });
            }}
          >
            Take colours from a picture of mine
          </FileButton>
        </div>
        <div class="shades">
          <label for={`${id}-shade`}>Shades of one paint:</label>
          <select
            id={`${id}-shade`}
            value={shade.value || names[0]}
            onChange={({ currentTarget }) => {
              shade.value = currentTarget.value;
            }}
          >
            {names.map((name) => (
              <option key={name} value={name}>
                {name}
              </option>
            ))}
          </select>
          <button
            type="button"
            disabled={isBusy.value || !isDrawn.value}
            onClick={() => void ask({ from: 'shades', colour: shade.value || names[0]! })}
          >
            Mix shades of {shade.value || names[0]}
          </button>
        </div>
      </div>
      <p class="usual" role="status">
        {says.value}
      </p>
      <ul class="ways-hung" ref={rows}>
        {ways.map((way) => (
          <li key={way.name}>
            <WorkDrawn palette={palette} colours={way.colours} says={saysColours(way.colours, parts)} />
            <div>
              <p class="called">{way.name}</p>
              <p class="usual">{saysColours(way.colours, parts)}</p>
              <div class="acts">
                <button type="button" onClick={() => keep(way, true)}>
                  Paint it in {way.name}
                </button>
                <button type="button" onClick={() => keep(way, false)}>
                  Keep {way.name}
                </button>
              </div>
            </div>
          </li>
        ))}
      </ul>
    </section>
  );
}
