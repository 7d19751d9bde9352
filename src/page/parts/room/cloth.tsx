import { Choice, Line, Wrong } from '../../fields/field.tsx';
import { Help } from '../../help/help.tsx';
import { such } from './examples.ts';
import { Overall } from './rug.tsx';

const TRIAL = ['cloth', 'shrinkage'];

/** What a floor cloth needs beside its finished size: hem, canvas, and what priming takes of it. */
export function Cloth() {
  return (
    <>
      <Overall of="cloth" />
      <Line
        path={['cloth', 'hem']}
        kind="length"
        label="Hem, turned under on all four sides"
        says={such('Left empty, 1 in. 0 for a raw edge.', 'Left empty, 25 mm. 0 for a raw edge.')}
        example={such('1"', '2.5')}
      />
      <Choice
        path={['cloth', 'corners']}
        label="Corners of the hem"
        usual="mitred"
        options={[
          ['mitred', 'cut off, so that they meet flat'],
          ['folded', 'folded one over the other'],
        ]}
      />
      <Line
        path={['cloth', 'trim']}
        kind="length"
        label="Left all round for priming, and cut off square after it"
        says={such('Left empty, 1 in.', 'Left empty, 25 mm.')}
        example={such('1"', '2.5')}
      />
      <Line
        path={['cloth', 'rolls']}
        kind="list"
        label="Widths the canvas is sold in, with commas between"
        example={such('36, 54, 72', '90, 140, 180')}
        help={<Help of="roll" />}
      />
      <div class="pair">
        <Line
          path={['cloth', 'waste']}
          kind="length"
          label="Selvedge cut off at each side of the roll"
          example={such('1/2"', '1')}
        />
        <Line
          path={['cloth', 'edge height']}
          kind="length"
          label="Height of the finished edge above the floor, pad and all"
          example={such('3/16"', '0.5')}
        />
      </div>
      <section class="chapter" aria-label="The trial piece">
        <h3>The trial piece</h3>
        <p class="plainly">Canvas draws in when it is primed. A trial piece tells by how much.</p>
        <div class="pair">
          <Line
            path={[...TRIAL, 'before', 'across']}
            kind="length"
            label="Before, across the roll"
            example={such('20"', '50')}
          />
          <Line
            path={[...TRIAL, 'before', 'along']}
            kind="length"
            label="Before, along the roll"
            example={such('20"', '50')}
          />
          <Line
            path={[...TRIAL, 'after', 'across']}
            kind="length"
            label="Primed and dry, across"
            example={such('19 3/4"', '49.4')}
          />
          <Line
            path={[...TRIAL, 'after', 'along']}
            kind="length"
            label="Primed and dry, along"
            example={such('19 1/2"', '48.8')}
          />
        </div>
        <Help of="trial" />
        <Wrong path={TRIAL} />
      </section>
      <Wrong path={['cloth']} />
    </>
  );
}
