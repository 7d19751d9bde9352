import { Line, Wrong } from '../../fields/field.tsx';
import { Help } from '../../help/help.tsx';
import { such } from './examples.ts';

const ROOM = ['site', 'room'] as const;

/** A room that is known to be square: across and along. */
export function PlainRoom() {
  return (
    <>
      <div class="pair">
        <Line
          path={[...ROOM, 'across']}
          kind="length"
          label="Across, from wall to wall"
          example={such(`11' 10"`, '361')}
        />
        <Line
          path={[...ROOM, 'along']}
          kind="length"
          label="Along, from wall to wall"
          example={such(`14' 1/4"`, '427')}
        />
      </div>
      <Help of="plain" />
      <Wrong path={ROOM} />
    </>
  );
}

/** A room by its four walls and one diagonal, or better both. */
export function FourWalls() {
  return (
    <>
      <p class="plainly">Stand at the near wall and look along the work: the far wall is before you.</p>
      <div class="pair">
        <Line path={[...ROOM, 'near']} kind="length" label="Near wall" example={such(`9' 8 3/4"`, '296.5')} />
        <Line path={[...ROOM, 'right']} kind="length" label="Right wall" example={such(`12' 1"`, '368.3')} />
        <Line path={[...ROOM, 'far']} kind="length" label="Far wall" example={such(`9' 9 1/2"`, '298.5')} />
        <Line path={[...ROOM, 'left']} kind="length" label="Left wall" example={such(`12' 3/4"`, '367.7')} />
      </div>
      <Help of="wall" />
      <div class="pair">
        <Line
          path={[...ROOM, 'diagonals', 'near-left to far-right']}
          kind="length"
          label="Near left corner to far right"
          example={such(`15' 6 5/8"`, '474')}
        />
        <Line
          path={[...ROOM, 'diagonals', 'near-right to far-left']}
          kind="length"
          label="Near right corner to far left"
          example={such(`15' 5 7/8"`, '472.1')}
        />
      </div>
      <p class="plainly">One diagonal is needed. With both, a wrong reading is found and named.</p>
      <Help of="diagonal" />
      <Wrong path={[...ROOM, 'diagonals']} />
      <Wrong path={ROOM} />
    </>
  );
}
