import { Choice, Line, Wrong } from '../../fields/field.tsx';
import { tree } from '../../state/job.ts';
import { textAt, valueAt } from '../../state/tree.ts';
import { such } from '../room/examples.ts';

const BORDER = ['border'];
const LANDING = ['field', 'landing'];
const ENDS = [
  ['either', 'whichever fits'],
  ['whole', 'whole repeats'],
  ['half', 'half repeats'],
] as const;

/** The wishes that decide what lands: counts, sizes, how far a repeat may be pulled, and what may be left plain. */
export function Wishes() {
  const surface = textAt(tree.value, ['surface']);
  const border = valueAt(tree.value, BORDER);
  const bordered = border !== 'none' && surface !== 'floor' && (surface !== 'stairs' || border !== undefined);
  const walls = surface === 'room-border';
  return (
    <>
      {!walls && (
        <>
          <div class="pair">
            <Line
              path={['field', 'repeats', 'across']}
              kind="count"
              label={surface === 'floor' ? 'Repeats laid across' : 'Repeats across'}
              example="5, or 4 to 6"
            />
            <Line
              path={['field', 'repeats', 'along']}
              kind="count"
              label={surface === 'floor' ? 'Repeats laid along' : 'Repeats along'}
              example="20 to 30"
            />
            <Line
              path={['field', 'pitch', 'across']}
              kind="range"
              label="One repeat, wide"
              example={such('4 to 8', '10 to 20')}
            />
            <Line
              path={['field', 'pitch', 'along']}
              kind="range"
              label="One repeat, long"
              example={such('4 to 8', '10 to 20')}
            />
          </div>
          <p class="plainly">Count or size, whichever matters to you; the other follows. Left empty, it is open.</p>
          <Line
            path={['field', 'stretch']}
            kind="count"
            label="How far a repeat may be drawn out, 1 for not at all"
            says="Left empty, 0.95 to 1.05: five in a hundred is hardly seen. With 1, squares stay square."
            example="0.97 to 1.03"
          />
          {surface !== 'floor' && typeof valueAt(tree.value, LANDING) === 'object' && (
            <div class="pair">
              <Choice path={[...LANDING, 'across']} label="At the sides it ends on" usual="either" options={ENDS} />
              <Choice path={[...LANDING, 'along']} label="At the ends it ends on" usual="either" options={ENDS} />
            </div>
          )}
          {surface !== 'floor' && typeof valueAt(tree.value, LANDING) !== 'object' && (
            <Choice path={LANDING} label="At the edges the pattern ends on" usual="either" options={ENDS} />
          )}
        </>
      )}
      {bordered && typeof border !== 'string' && (
        <div class="pair">
          <Line
            path={['border', 'width']}
            kind="range"
            label="Width of the border"
            says="From what to what; a wish may follow: 2 to 4, wish 3."
            example={such('2 1/2 to 4, wish 3', '6 to 10, wish 8')}
          />
          <Line
            path={['border', 'stretch']}
            kind="count"
            label="How far a repeat of the border may be drawn out"
            says="Left empty, 0.85 to 1.15."
            example="0.9 to 1.1"
          />
        </div>
      )}
      {walls && (
        <div class="pair">
          <Choice
            path={['border', 'pitch']}
            label="Repeats of the border"
            usual="one"
            options={[
              ['one', 'all of one length; the strips differ a little'],
              ['each wall', 'a length for each wall; the strips are alike'],
            ]}
          />
          <Choice
            path={['border', 'at doors']}
            label="At doors"
            usual="stop"
            options={[
              ['stop', 'it stops before the casing'],
              ['run on', 'it runs on past it'],
            ]}
          />
        </div>
      )}
      {bordered && !walls && typeof valueAt(tree.value, ['reserve']) !== 'object' && (
        <Line
          path={['reserve']}
          kind="range"
          label="Plain strip between field and border"
          example={such('1/2', '1.5')}
        />
      )}
      {bordered && !walls && typeof valueAt(tree.value, ['reserve']) === 'object' && (
        <div class="pair">
          <Line path={['reserve', 'across']} kind="range" label="Plain strip inside the border, at the sides" />
          <Line path={['reserve', 'along']} kind="range" label="Plain strip inside the border, at the ends" />
        </div>
      )}
      {surface === 'runner' && (
        <Line
          path={['end gap']}
          kind="range"
          label="Plain floor left at each end"
          example={such('0 to 1/2', '0 to 1')}
        />
      )}
      <Wrong path={['field', 'repeats']} />
      <Wrong path={['field', 'pitch']} />
    </>
  );
}
