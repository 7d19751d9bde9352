import { besideChanges, NONE, namedAt, takeChanges } from '../../engine/motifs-slots.ts';
import { Line, Wrong } from '../../fields/field.tsx';
import { Slider } from '../../fields/slider.tsx';
import { look } from '../../state/answer.ts';
import { sayPlace } from '../../state/did.ts';
import { endStep, sayAll, tree } from '../../state/job.ts';
import { isBranch, textAt, valueAt } from '../../state/tree.ts';
import { Part } from '../part.tsx';
import { Border } from './border.tsx';
import { Chooser } from './chooser.tsx';
import { Lettering } from './lettering.tsx';
import { OwnDrawing } from './own-drawing.tsx';
import { shelfOf } from './shelf.ts';
import { boardWords } from './words.ts';
import './pattern.css';

const BY = [
  ['', 'all alike'],
  ['row', 'every second row'],
  ['column', 'every second column'],
  ['checker', 'as on a draughts board'],
] as const;

const alternateBy = (): string => {
  const value = valueAt(tree.value, ['field', 'alternate']);
  return isBranch(value) ? textAt(value, ['by']) : typeof value === 'string' ? value : '';
};

/** Which of the repeats are another motif, or in exchanged colours. */
function Alternation() {
  const by = alternateBy();
  return (
    <>
      <fieldset class="field choice">
        <legend>By turns</legend>
        <div class="options">
          {BY.map(([value, words]) => (
            <label key={value}>
              <input
                type="radio"
                name="alternate-by"
                checked={by === value}
                onChange={() => {
                  endStep();
                  sayAll(
                    value === ''
                      ? [[['field', 'alternate'], undefined]]
                      : besideChanges(tree.value, 'alternate', 'by', value),
                  );
                }}
              />
              <span>{words}</span>
            </label>
          ))}
        </div>
        <Wrong path={['field', 'alternate']} />
      </fieldset>
      {by !== '' && <Chooser slot="alternate" label="What every second one shows" many="field patterns" />}
    </>
  );
}

function Inset() {
  const taken = shelfOf('field').value.boards.find(({ name }) => name === namedAt(tree.value, 'field').name);
  const { name } = namedAt(tree.value, 'inset');
  if (name === '' && !taken?.hasRoom) return null;
  const path = ['field', 'inset', 'size'];
  return (
    <Chooser slot="inset" label="Inside the motif" many="patterns for inside">
      {name !== '' && (
        <>
          <Slider
            label="Size"
            says="Its share of the room there."
            text={textAt(tree.value, path)}
            usual={0.7}
            min={0.1}
            max={1}
            step={0.05}
            take={(text) => sayAll(besideChanges(tree.value, 'inset', 'size', text), sayPlace(path), path.join('.'))}
          />
          <Wrong path={path} />
        </>
      )}
    </Chooser>
  );
}

function Medallion() {
  const { name } = namedAt(tree.value, 'medallion');
  const isTwo = isBranch(valueAt(tree.value, ['medallion', 'repeats']));
  return (
    <Chooser slot="medallion" label="In the middle of the field" many="medallions">
      {name !== '' &&
        (isTwo ? (
          <div class="pair">
            <Line path={['medallion', 'repeats', 'across']} kind="count" label="Repeats it takes, across" example="3" />
            <Line path={['medallion', 'repeats', 'along']} kind="count" label="Repeats it takes, along" example="5" />
          </div>
        ) : (
          <Line
            path={['medallion', 'repeats']}
            kind="count"
            label="Repeats it takes, each way"
            says="Usual: 3."
            example="3"
          />
        ))}
      <Wrong path={['medallion']} />
    </Chooser>
  );
}

function line(): string {
  const job = look.value?.job;
  if (!job) return '';
  const { field, border, medallion, lettering } = job;
  const words = [
    ...(job.surface === 'room-border' ? [] : [boardWords('field', field.motif)]),
    ...(border.motif === NONE ? [] : [`${boardWords('border', border.motif)} round it`]),
    ...(medallion ? [boardWords('medallion', medallion.motif)] : []),
    ...(lettering ? [lettering.map(({ text }) => `“${text}”`).join(', ')] : []),
  ];
  return words.join(', ');
}

/** What is painted: the field and what stands in it, the border and its corners, letters. */
export function Pattern() {
  const surface = textAt(tree.value, ['surface']);
  const hasField = surface !== 'room-border';
  return (
    <Part part="pattern" title="Pattern" line={line()} onward="Go on to the colours">
      {hasField && (
        <section class="group" aria-labelledby="pattern-field">
          <h3 id="pattern-field">The field</h3>
          <Chooser
            slot="field"
            label="Field pattern"
            many="field patterns"
            more={
              <OwnDrawing take={(name) => sayAll(takeChanges(tree.value, 'field', name), 'a drawing of yours taken')} />
            }
          />
          <Alternation />
          <Inset />
          <Medallion />
        </section>
      )}
      {surface !== 'floor' && <Border surface={surface} />}
      {hasField && surface !== 'floor' && <Lettering />}
    </Part>
  );
}
