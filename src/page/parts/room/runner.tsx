import type { Tree } from '../../../job/tree.ts';
import { Line, Wrong } from '../../fields/field.tsx';
import { Help } from '../../help/help.tsx';
import { endStep, say, tree } from '../../state/job.ts';
import { valueAt } from '../../state/tree.ts';
import { such } from './examples.ts';
import { FourWalls } from './four-walls.tsx';
import { Axis, Obstacles, Openings } from './in-room.tsx';
import { HowMeasured, type Way, wayNow } from './way.tsx';

const RUN = ['site', 'run'];
const SIDES = ['site', 'run at sides'];
const OPENINGS = ['site', 'openings'];
const ALONG = ['overall', 'along'];
const NO_WALLS: Tree = { near: null, right: null, far: null, left: null };
const TWO: Tree = [
  { wall: 'near', starts: null, ends: null },
  { wall: 'far', starts: null, ends: null },
];

const WAYS: readonly Way[] = [
  { key: 'run', words: 'from threshold to threshold', paths: [RUN, SIDES, OPENINGS] },
  {
    key: 'room',
    words: 'the passage all round: four walls, a diagonal, and both doors',
    paths: [['site', 'room'], OPENINGS, ['site', 'obstacles'], ['site', 'axis'], RUN, SIDES],
    begins: [
      [['site', 'room'], NO_WALLS],
      [OPENINGS, TWO],
    ],
  },
  { key: 'free', words: 'not at all: its ends lie free, as long as I say', paths: [ALONG] },
];

const told = (): string | undefined => {
  if (valueAt(tree.value, ['site', 'room']) !== undefined) return 'room';
  if (valueAt(tree.value, RUN) !== undefined) return 'run';
  return valueAt(tree.value, ALONG) === undefined ? undefined : 'free';
};

const THREE: readonly Way[] = [
  { key: 'one', words: 'once, in the middle', paths: [] },
  { key: 'three', words: 'at the left, in the middle and at the right', paths: [SIDES] },
];

function Run() {
  const three = wayNow('run at', THREE, valueAt(tree.value, SIDES) === undefined ? undefined : 'three') === 'three';
  return (
    <>
      <Line
        path={RUN}
        kind="length"
        label="From threshold to threshold, in the middle"
        example={such(`17' 9 7/16"`, '542')}
        help={<Help of="run" />}
      />
      <HowMeasured name="run at" label="Measured" now={three ? 'three' : 'one'} ways={THREE} />
      {three && (
        <>
          <div class="pair">
            <Line path={[...SIDES, 'left']} kind="length" label="At the left" example={such(`17' 9 1/2"`, '542.2')} />
            <Line path={[...SIDES, 'right']} kind="length" label="At the right" example={such(`17' 9 3/8"`, '541.9')} />
          </div>
          <Help of="sides" />
          <Wrong path={SIDES} />
        </>
      )}
    </>
  );
}

function Widths() {
  const openings = valueAt(tree.value, OPENINGS);
  if (typeof openings === 'string')
    return (
      <>
        <Line
          path={OPENINGS}
          kind="length"
          label="Both openings, over their casings"
          example={such('32"', '81')}
          help={<Help of="casing" />}
        />
        <button
          type="button"
          class="aside"
          onClick={() => {
            endStep();
            say(OPENINGS, { near: openings, far: openings });
          }}
        >
          Measure each opening
        </button>
      </>
    );
  return (
    <>
      <div class="pair">
        <Line
          path={[...OPENINGS, 'near']}
          kind="length"
          label="Near opening, over its casing"
          example={such('31 1/4"', '79.4')}
        />
        <Line
          path={[...OPENINGS, 'far']}
          kind="length"
          label="Far opening, over its casing"
          example={such('28 3/8"', '72')}
        />
      </div>
      <Help of="casing" />
      <Wrong path={OPENINGS} />
    </>
  );
}

/** What a runner needs: its run and its openings, a passage measured all round, or a length of its own. */
export function Runner() {
  const now = wayNow('runner', WAYS, told());
  return (
    <>
      <HowMeasured name="runner" label="What I measure" now={now} ways={WAYS} />
      {now === 'run' && (
        <>
          <Run />
          <Widths />
          <Line
            path={['overall', 'across']}
            kind="range"
            label="Width over everything, if it shall have one of its own"
            says="Left empty, it covers both openings."
            example={such('34 to 38', '86 to 96')}
          />
        </>
      )}
      {now === 'room' && (
        <>
          <FourWalls />
          <Openings needed />
          <Run />
          <p class="plainly">The run is left empty where the room alone shall say it.</p>
          <Obstacles />
          <Axis usual="from opening to opening, as is usual" />
        </>
      )}
      {now === 'free' && (
        <>
          <div class="pair">
            <Line path={ALONG} kind="range" label="Length over everything" example={such(`7' to 8'`, '210 to 240')} />
            <Line
              path={['overall', 'across']}
              kind="range"
              label="Width over everything"
              example={such('30 to 34', '76 to 86')}
            />
          </div>
          <Help of="rug" asks="Where does it begin and end?" />
        </>
      )}
      <Wrong path={['overall']} />
    </>
  );
}
