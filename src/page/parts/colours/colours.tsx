import { useEffect } from 'preact/hooks';
import { look } from '../../state/answer.ts';
import { keepSeeing } from '../../state/seen-as.ts';
import { Part } from '../part.tsx';
import { coloursTold, useColoursTold } from './asking.ts';
import { OnTheFloor } from './floor/floor.tsx';
import { PartsColoured } from './parts-coloured.tsx';
import { Proposals } from './proposals.tsx';
import { Reads } from './reads.tsx';
import { SeenAs } from './seen.tsx';
import { Swatches } from './swatches.tsx';
import { Ways } from './ways.tsx';
import './colours.css';

function line(): string {
  const job = look.value?.job;
  if (!job) return '';
  const parts = coloursTold.value?.parts ?? [];
  const used = new Set(parts.map(({ part }) => job.colours[part]));
  const others = job.colourways?.length ?? 0;
  return `${[...used].join(', ')}${others > 0 ? `; ${others} other colourway${others > 1 ? 's' : ''}` : ''}`;
}

function Body() {
  useColoursTold();
  return (
    <>
      <Swatches />
      <PartsColoured />
      <Reads />
      <Ways />
      <Proposals />
      <SeenAs />
      <OnTheFloor />
    </>
  );
}

/** The paints, what is painted in which, and how that is seen. */
export function Colours() {
  useEffect(keepSeeing, []);
  return (
    <Part part="colours" title="Colours" line={line()} onward="Go on to the stencil">
      <Body />
    </Part>
  );
}
