import './room.css';
import type { JSX } from 'preact';
import { SURFACES, type Surface } from '../../../job/job.ts';
import { Choice, Line, Wrong } from '../../fields/field.tsx';
import { look } from '../../state/answer.ts';
import { isExample } from '../../state/example.ts';
import { folded } from '../../state/folded.ts';
import { tree } from '../../state/job.ts';
import { textAt } from '../../state/tree.ts';
import { Part } from '../part.tsx';
import { Cloth } from './cloth.tsx';
import { Example, LeftOfExample } from './example.tsx';
import { KindOfWork } from './kind.tsx';
import { OtherSystem } from './other-system.tsx';
import { Floor, Rug } from './rug.tsx';
import { Runner } from './runner.tsx';
import { Stairs } from './stairs.tsx';
import { saysRoom } from './summary.ts';
import { Walls } from './walls.tsx';

const MEASURED: Record<Surface, () => JSX.Element> = {
  runner: Runner,
  rug: Rug,
  'floor-cloth': Cloth,
  floor: Floor,
  'room-border': Walls,
  stairs: Stairs,
};

const isSurface = (text: string): text is Surface => (SURFACES as readonly string[]).includes(text);

/** What kind of work it is, and what is measured for it. */
export function Room() {
  const surface = textAt(tree.value, ['surface']);
  const Measured = isSurface(surface) ? MEASURED[surface] : undefined;
  // Unfolded, the part says so at its head.
  const isNotOwn = isExample.value && folded.value.has('room');
  return (
    <Part
      part="room"
      title="The room"
      line={`${isNotOwn ? 'still the example’s: ' : ''}${saysRoom(look.value, surface)}`}
      onward={isExample.value ? 'Go on with the example' : 'The room is measured'}
    >
      <Example />
      <KindOfWork />
      {Measured && (
        <>
          <div class="pair">
            <Line path={['title']} label="What you call it" example="Back passage" />
            <Choice
              path={['units']}
              label="Your tape is in"
              says={<p>Plan and marks come in it too, and so does a number without a unit.</p>}
              options={[
                ['in', 'inches'],
                ['cm', 'centimetres'],
                ['mm', 'millimetres'],
              ]}
            />
          </div>
          <OtherSystem />
          <p class="plainly">
            Write lengths as you would on paper: 12' 6 3/8", 12 ft 6 3/8 in, 150.4 cm or 3 m. Each is read back in
            inches and in millimetres.
          </p>
          <Measured />
          <Wrong path={['site']} />
          <LeftOfExample />
        </>
      )}
    </Part>
  );
}
