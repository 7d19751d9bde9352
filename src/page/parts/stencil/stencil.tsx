import { Choice, Line } from '../../fields/field.tsx';
import { isMade, look, made } from '../../state/answer.ts';
import { tree } from '../../state/job.ts';
import { textAt } from '../../state/tree.ts';
import { useWanted } from '../../state/wanted.ts';
import { Making, Refused } from '../making.tsx';
import { Part } from '../part.tsx';
import { Sheets } from './sheets.tsx';
import './stencil.css';

/** What the sheets are cut from, and how they hold. */
function Film() {
  return (
    <>
      <h3>The film or card you cut</h3>
      <div class="two-up">
        <Line
          path={['stencil', 'sheet', 'across']}
          label="Its width"
          kind="length"
          example={'18"'}
          says={'Usual: 18" (457 mm)'}
        />
        <Line
          path={['stencil', 'sheet', 'along']}
          label="Its length"
          kind="length"
          example={'24"'}
          says={'Usual: 24" (610 mm)'}
        />
      </div>
      <Line
        path={['stencil', 'sheet', 'rim']}
        label="Rim kept free of openings"
        kind="length"
        example={'1"'}
        says={'Usual: 1" (25 mm). It keeps paint off the floor beside the sheet.'}
      />
      <div class="two-up">
        <Line
          path={['stencil', 'bridge']}
          label="Least bridge"
          kind="length"
          example="3 mm"
          says="The strip of film left between two openings. Usual: 3 mm; wider is stronger."
        />
        <Line
          path={['stencil', 'window']}
          label="Least opening"
          kind="length"
          example="1.5 mm"
          says="Usual: 1.5 mm; narrower ones do not take paint well."
        />
      </div>
    </>
  );
}

function Ways() {
  const fills = textAt(tree.value, ['stencil', 'gaps']) === 'painted';
  return (
    <>
      <Choice
        path={['stencil', 'touching']}
        label="Repeats that touch one another"
        usual="by turns"
        options={[
          ['by turns', 'by turns: a sheet has every second one'],
          ['held apart', 'held apart by a bridge'],
          ['alone', 'one repeat to a sheet'],
        ]}
      />
      <Meeting />
      <Choice
        path={['stencil', 'corners']}
        label="Corners where a bridge meets an opening"
        usual="sharp"
        options={[
          ['sharp', 'sharp'],
          ['round', 'round, so that film does not tear there'],
        ]}
      />
      <Choice
        path={['stencil', 'gaps']}
        label="Gaps in the paint where bridges were"
        usual="open"
        options={[
          ['open', 'stay open'],
          ['painted', 'are painted through further sheets'],
        ]}
      />
      {fills && (
        <Line
          path={['stencil', 'lap']}
          label="How far those lap over the paint"
          kind="length"
          example="1 mm"
          says="Usual: 1 mm."
        />
      )}
    </>
  );
}

/** How colours meet is one line in the job: a way, and mostly a width. */
function Meeting() {
  return (
    <Line
      path={['stencil', 'colours meet']}
      label="Where two colours meet"
      example="overlap 1 mm"
      says="Usual: edge to edge. Write overlap 1 mm for the first colour to reach under the other, or gap 1/16&quot; for bare ground between them; up to 1/8&quot; (3 mm)."
    />
  );
}

function Cutting() {
  return (
    <details>
      <summary>For a cutting machine</summary>
      <p class="usual">
        Sheets cut by hand need none of this. Cut one opening on scrap before a whole film, and keep hands away from a
        machine that moves.
      </p>
      <Choice
        path={['stencil', 'cutting', 'outline']}
        label="The edge of the sheet"
        usual="cut"
        options={[
          ['cut', 'is cut, last of all'],
          ['draw', 'is only drawn'],
          ['none', 'is left out: the film has its size already'],
        ]}
      />
      <Choice
        path={['stencil', 'cutting', 'mirrored']}
        label="Left and right changed over"
        usual="no"
        options={[
          ['no', 'no'],
          ['yes', 'yes: film that is cut from the back'],
        ]}
      />
      <Line
        path={['stencil', 'cutting', 'overcut']}
        label="How far the blade runs on past its start"
        kind="length"
        example="0.3 mm"
        says="Usual: 0. A trailing blade needs 0.1 to 0.5 mm to close a corner."
      />
      <Choice
        path={['stencil', 'cutting', 'files']}
        label="Files"
        usual="one a sheet"
        options={[
          ['one a sheet', 'one for each sheet'],
          ['one a film', 'and one for each piece of film, its sheets side by side'],
        ]}
      />
    </details>
  );
}

function lineOf(): string {
  const told = made.value?.told;
  if (!told || !look.value) return '';
  const count = told.sheets.length;
  return `${count} sheet${count === 1 ? '' : 's'}${isMade.value ? '' : ', before your last change'}`;
}

function Body() {
  const seen = useWanted();
  return (
    <div ref={seen}>
      <Film />
      <Ways />
      <Cutting />
      <h3>The sheets</h3>
      <Making what="the sheets" />
      <Refused />
      <Sheets />
    </div>
  );
}

export function Stencil() {
  return (
    <Part part="stencil" title="Stencil" line={lineOf()} onward="Go on to the marks">
      <Body />
    </Part>
  );
}
