import type { Parameter } from '../../../motif/motif.ts';
import { upper } from '../../../words.ts';
import type { Board } from '../../engine/motifs.ts';
import { namedAt, pathOf, type Slot, settingChanges } from '../../engine/motifs-slots.ts';
import { Wrong } from '../../fields/field.tsx';
import { Slider } from '../../fields/slider.tsx';
import { sayPlace } from '../../state/did.ts';
import { sayAll, tree } from '../../state/job.ts';

const UNIT: Record<Parameter['kind'], string> = { ratio: '', count: '', degrees: ' degrees' };
/** Steps of a slider from end to end. */
const STEPS = 50;

function stepOf({ kind, min, max }: Parameter): number {
  if (kind !== 'ratio') return 1;
  return Math.max(0.001, Number(((max - min) / STEPS).toPrecision(1)));
}

/** What can be set of the motif that is taken. */
export function Settings({ slot, board: { parameters } }: { slot: Slot; board: Board }) {
  const named = namedAt(tree.value, slot);
  const path = pathOf(slot);
  return (
    <div class="settings">
      {Object.entries(parameters).map(([name, parameter]) => (
        <div key={name}>
          <Slider
            label={upper(name)}
            says={`${upper(parameter.says)}.`}
            text={named.settings[name] ?? ''}
            usual={parameter.default}
            min={parameter.min}
            max={parameter.max}
            step={stepOf(parameter)}
            unit={UNIT[parameter.kind]}
            take={(text) =>
              sayAll(settingChanges(tree.value, slot, name, text), sayPlace([...path, name]), [...path, name].join('.'))
            }
          />
          <Wrong path={[...path, name]} />
        </div>
      ))}
    </div>
  );
}
