import { besideChanges, NONE, namedAt, OWN, type Slot } from '../../engine/motifs-slots.ts';
import { Line, Wrong } from '../../fields/field.tsx';
import { endStep, sayAll, tree } from '../../state/job.ts';
import { isBranch, textAt, valueAt } from '../../state/tree.ts';
import { such } from '../room/examples.ts';
import { Chooser } from './chooser.tsx';
import { shelfOf, takenAt } from './shelf.ts';

const RUNS = [
  ['reverse', 'turn back at the middle of each side'],
  ['round', 'run round the work one way'],
] as const;

/** A border that runs one way: where it turns back, if it does. */
function Run({ slot }: { slot: 'border' | 'inner' }) {
  const branch = slot === 'border' ? 'border' : 'inner border';
  const board = shelfOf(slot).value.boards.find(({ name }) => name === takenAt(slot));
  const said = textAt(tree.value, [branch, 'run']);
  if (!board?.runsOneWay && said === '') return null;
  return (
    <fieldset class="field choice">
      <legend>It runs one way; let it</legend>
      <div class="options">
        {RUNS.map(([value, words]) => (
          <label key={value}>
            <input
              type="radio"
              name={`${slot}-run`}
              checked={(said || 'reverse') === value}
              onChange={() => {
                endStep();
                sayAll(besideChanges(tree.value, slot, 'run', value));
              }}
            />
            <span>{words}</span>
          </label>
        ))}
      </div>
      <Wrong path={[branch, 'run']} />
    </fieldset>
  );
}

function Corners({ turn, corner }: { turn: Slot; corner: Slot }) {
  const way = takenAt(turn);
  return (
    <>
      <Chooser
        slot={turn}
        label={turn === 'turn' ? 'How it turns the corners' : 'How the second border turns the corners'}
        many="ways to turn"
      />
      {way !== '' && way !== OWN && way !== 'mitre' && way !== 'butt' && (
        <Chooser
          slot={corner}
          label={corner === 'corner' ? 'The square in each corner' : 'The square in each corner of the second border'}
          many="corners"
        />
      )}
    </>
  );
}

function Inner() {
  const { name } = namedAt(tree.value, 'inner');
  return (
    <>
      <Chooser
        slot="inner"
        label="A second border inside the first"
        many="second borders"
        says="The plain strip between the two is the reserve, under Fit."
      >
        {name !== '' && (
          <div class="pair">
            <Line
              path={['inner border', 'width']}
              kind="length"
              label="Its width"
              says="Left empty, half the first."
              example={such('1 1/2"', '4')}
            />
            <Line
              path={['inner border', 'gap']}
              kind="length"
              label="Plain strip between it and the field"
              says="Left empty, none."
              example={such('1/2"', '1')}
            />
          </div>
        )}
      </Chooser>
      {name !== '' && (
        <>
          <Corners turn="inner-turn" corner="inner-corner" />
          <Run slot="inner" />
        </>
      )}
      <Wrong path={['inner border']} />
    </>
  );
}

/** The band round the field, its corners, and a second one inside it. */
export function Border({ surface }: { surface: string }) {
  const has = takenAt('border') !== NONE && takenAt('border') !== '';
  const isLong = isBranch(valueAt(tree.value, ['border']));
  return (
    <section class="group" aria-labelledby="pattern-border">
      <h3 id="pattern-border">The border</h3>
      <Chooser slot="border" label="Border pattern" many="borders" />
      {has && (
        <>
          <Corners turn="turn" corner="corner" />
          <Run slot="border" />
        </>
      )}
      {has && surface !== 'room-border' && <Inner />}
      {isLong && <Wrong path={['border']} />}
    </section>
  );
}
