import { Floor } from './floor/floor.tsx';
import { onFloor } from './floor/open.ts';
import { Foot } from './foot/foot.tsx';
import { Head } from './head/head.tsx';
import { Colours } from './parts/colours/colours.tsx';
import { Elsewhere } from './parts/elsewhere.tsx';
import { Files } from './parts/files/files.tsx';
import { Fit } from './parts/fit/fit.tsx';
import { Marks } from './parts/marks/marks.tsx';
import { Paint } from './parts/paint/paint.tsx';
import { Pattern } from './parts/pattern/pattern.tsx';
import { Room } from './parts/room/room.tsx';
import { Stencil } from './parts/stencil/stencil.tsx';
import { Plan } from './plan/plan.tsx';
import { broken } from './state/answer.ts';

/** The job card, and the plan lying beside it; on the floor the marks alone. */
export function App() {
  if (onFloor.value) return <Floor />;
  return (
    <div class="bench">
      <Head />
      <main class="card" aria-label="The job">
        {broken.value && (
          <div class="wrong" role="alert">
            <p>Something in the tool broke, not in your job: {broken.value.split('\n')[0]}</p>
          </div>
        )}
        <Elsewhere />
        <Room />
        <Fit />
        <Pattern />
        <Colours />
        <Stencil />
        <Marks />
        <Paint />
        <Files />
        <Foot />
      </main>
      <aside class="drawing" aria-label="The plan">
        <Plan />
      </aside>
    </div>
  );
}
