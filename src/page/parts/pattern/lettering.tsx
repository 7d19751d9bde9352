import { FileButton } from '../../drop/file-button.tsx';
import { Choice, Line, Wrong } from '../../fields/field.tsx';
import { Slider } from '../../fields/slider.tsx';
import { sayPlace } from '../../state/did.ts';
import { giveFor } from '../../state/given.ts';
import { endStep, say, sayAll, tree } from '../../state/job.ts';
import { refuse } from '../../state/notice.ts';
import { isBranch, type Path, textAt, valueAt } from '../../state/tree.ts';
import { such } from '../room/examples.ts';

const KEY: Path = ['lettering'];

function FontFile({ path }: { path: Path }) {
  const font = textAt(tree.value, [...path, 'font']);
  return (
    <div class="field">
      <p class="usual">
        {font === '' ? 'Set in Libre Baskerville, which comes with the tool.' : `Set in ${font.replace('./', '')}.`} A
        stencil face has no islands, so it needs no bridges.
      </p>
      <div class="acts">
        <FileButton
          take={async ([file]) => {
            if (!file) return;
            if (!/\.(ttf|otf|woff)$/i.test(file.name)) {
              refuse(
                `${file.name} is no font that is read here; one ends in .ttf, .otf or .woff. Nothing was changed.`,
              );
              return;
            }
            const name = `./${file.name}`;
            await giveFor(name, file);
            say([...path, 'font'], name);
            endStep();
          }}
        >
          Use a font of mine
        </FileButton>
        {font !== '' && (
          <button type="button" onClick={() => say([...path, 'font'], undefined)}>
            Back to the usual face
          </button>
        )}
      </div>
      <Wrong path={[...path, 'font']} />
    </div>
  );
}

function OneLine({ path, at }: { path: Path; at: number }) {
  const arc = [...path, 'arc'];
  const hasWidth = textAt(tree.value, [...path, 'width']) !== '';
  const hasCaps = textAt(tree.value, [...path, 'cap height']) !== '';
  return (
    <fieldset class="lettered field">
      <legend>Line {at + 1}</legend>
      <Line path={[...path, 'text']} label="Words, a date or initials" example="Dunmore 1908" stays={true} />
      <Choice
        path={[...path, 'place']}
        label="Where it stands"
        usual="centre"
        options={[
          ['centre', 'in the middle of the field'],
          ['near', 'in the border at the near end'],
          ['far', 'in the border at the far end'],
        ]}
      />
      <div class="pair">
        {!hasWidth && (
          <Line
            path={[...path, 'cap height']}
            kind="length"
            label="Height of the capitals"
            example={such('3"', '7.5')}
            says="Left empty, it suits its place."
          />
        )}
        {!hasCaps && (
          <Line
            path={[...path, 'width']}
            kind="length"
            label="Or width of the whole line"
            example={such('30"', '75')}
          />
        )}
      </div>
      <Slider
        label="Bend"
        says="Above 0 it rises in the middle, below 0 it sags."
        text={textAt(tree.value, arc)}
        usual={0}
        min={-300}
        max={300}
        step={5}
        unit=" degrees"
        take={(text) => sayAll([[arc, text]], sayPlace(arc), arc.join('.'))}
      />
      <Wrong path={arc} />
      <FontFile path={path} />
      <div class="acts">
        <button
          type="button"
          onClick={() => {
            endStep();
            say(path, undefined);
          }}
        >
          Take out line {at + 1}
        </button>
      </div>
      <Wrong path={path} />
    </fieldset>
  );
}

/** Names, dates and monograms. */
export function Lettering() {
  const value = valueAt(tree.value, KEY);
  const list = Array.isArray(value) ? value : isBranch(value) ? [value] : [];
  const add = (): void => {
    endStep();
    say(KEY, [...list, { text: '' }]);
  };
  return (
    <section class="group" aria-labelledby="pattern-lettering">
      <h3 id="pattern-lettering">Letters</h3>
      {list.length === 0 && <p class="usual">A name, a date or a monogram; the repeats make room for it.</p>}
      {list.map((_, at) => (
        <OneLine key={at} path={Array.isArray(value) ? [...KEY, at] : KEY} at={at} />
      ))}
      <button type="button" onClick={add}>
        {list.length === 0 ? 'Add lettering' : 'Add another line'}
      </button>
    </section>
  );
}
