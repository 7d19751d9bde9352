import { Choice, Wrong } from '../../../fields/field.tsx';
import { Slider } from '../../../fields/slider.tsx';
import { sayAll, tree } from '../../../state/job.ts';
import { isBranch, type Path, textAt, valueAt } from '../../../state/tree.ts';

const LOOKS: Path = ['preview', 'looks'];
const KINDS = [
  ['thin coat', 'Thin coat', 'So much of the pattern’s paint is missing because it was put on thinly.'],
  ['dry brush', 'Dry brush', 'So much of it is missing at the ragged edges that a nearly dry brush leaves.'],
  ['wear', 'Wear', 'So much of it has gone under feet, on the line where people walk.'],
] as const;

/** What the job comes to say of one look; when none is left, of none at all. */
function say(key: string, text: string | undefined): void {
  const had = valueAt(tree.value, LOOKS);
  const next = { ...(isBranch(had) ? had : {}) };
  if (text === undefined || Number.parseFloat(text) === 0) delete next[key];
  else next[key] = /%\s*$/.test(text) ? text : `${text} %`;
  const isLeft = KINDS.some(([kind]) => next[kind] !== undefined);
  sayAll([[LOOKS, isLeft ? next : undefined]], `preview ${key}`, `preview.looks.${key}`);
}

/** How the work looks when it is not new. */
export function Worn() {
  return (
    <>
      {KINDS.map(([key, label, says]) => (
        <div key={key}>
          <Slider
            label={label}
            says={says}
            text={textAt(tree.value, [...LOOKS, key])}
            usual={0}
            min={0}
            max={90}
            step={5}
            unit=" %"
            take={(text) => say(key, text)}
          />
          <Wrong path={[...LOOKS, key]} />
        </div>
      ))}
      {textAt(tree.value, [...LOOKS, 'wear']) !== '' && (
        <Choice
          path={[...LOOKS, 'walks']}
          label="People walk"
          usual="along"
          options={[
            ['along', 'along the work'],
            ['across', 'across it'],
          ]}
        />
      )}
      <Wrong path={LOOKS} />
    </>
  );
}
