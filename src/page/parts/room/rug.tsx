import type { Tree } from '../../../job/tree.ts';
import { Line, Wrong } from '../../fields/field.tsx';
import { Help } from '../../help/help.tsx';
import { tree } from '../../state/job.ts';
import { valueAt } from '../../state/tree.ts';
import { such } from './examples.ts';
import { FourWalls, PlainRoom } from './four-walls.tsx';
import { Axis, Obstacles, Openings, Place } from './in-room.tsx';
import { HowMeasured, type Way, wayNow } from './way.tsx';

const ROOM = ['site', 'room'];
const NO_WALLS: Tree = { near: null, right: null, far: null, left: null };

const WALLED: Way = {
  key: 'walls',
  words: 'all round: four walls and the diagonals',
  paths: [ROOM, ['site', 'openings'], ['site', 'obstacles'], ['site', 'axis'], ['site', 'place']],
  begins: [[ROOM, NO_WALLS]],
};
const PLAIN: Way = { key: 'plain', words: 'across and along: it is square', paths: [ROOM] };
const NONE: Way = { key: 'none', words: 'not measured', paths: [] };

const told = (): string | undefined => {
  const room = valueAt(tree.value, ROOM);
  if (room === undefined || room === null || typeof room === 'string') return undefined;
  return 'across' in room || 'along' in room ? 'plain' : 'walls';
};

/** Size over everything, of a rug or a cloth. */
export function Overall({ of }: { of: 'rug' | 'cloth' }) {
  return (
    <>
      <div class="pair">
        <Line
          path={['overall', 'across']}
          kind="range"
          label={of === 'rug' ? 'Width of the rug, border and all' : 'Finished width'}
          example={such(`9' to 9' 2"`, '270 to 280')}
        />
        <Line
          path={['overall', 'along']}
          kind="range"
          label={of === 'rug' ? 'Length of the rug, border and all' : 'Finished length'}
          example={such(`10' to 10' 4"`, '300 to 315')}
        />
      </div>
      <p class="plainly">Say from what to what it may be: the pattern then finds a size that lands whole.</p>
      <Help of={of} asks={of === 'rug' ? 'Where does it begin and end?' : 'Which size is meant?'} />
      <Wrong path={['overall']} />
    </>
  );
}

/** What a rug needs: its size; and the room, as far as it was measured. */
export function Rug() {
  const ways = [NONE, PLAIN, WALLED];
  const now = wayNow('rug', ways, told());
  return (
    <>
      <Overall of="rug" />
      <HowMeasured name="rug" label="The room" now={now} ways={ways} />
      {now === 'plain' && <PlainRoom />}
      {now === 'walls' && (
        <>
          <FourWalls />
          <Openings />
          <Obstacles />
          <Axis usual="parallel to the longest wall, as is usual" />
          <Place />
        </>
      )}
    </>
  );
}

/** What a whole floor needs: its room, wall to wall. */
export function Floor() {
  const ways = [PLAIN, WALLED];
  const now = wayNow('floor', ways, told());
  return (
    <>
      <HowMeasured name="floor" label="The room is measured" now={now} ways={ways} />
      {now === 'plain' && <PlainRoom />}
      {now === 'walls' && (
        <>
          <FourWalls />
          <Openings />
          <Obstacles />
          <Axis usual="parallel to the longest wall, as is usual" />
        </>
      )}
      <Line
        path={['reserve']}
        kind="length"
        label="Plain strip at the walls, if you want one"
        example={such('1"', '2.5')}
      />
    </>
  );
}
