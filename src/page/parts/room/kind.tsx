import { useId } from 'preact/hooks';
import type { Surface } from '../../../job/job.ts';
import type { JobTree } from '../../engine/ask.ts';
import { Wrong } from '../../fields/field.tsx';
import { at, base, begin, file, steps, tree } from '../../state/job.ts';
import { textAt } from '../../state/tree.ts';
import { asKind } from './begin.ts';

interface Kind {
  surface: Surface;
  title: string;
  says: string;
  drawing: () => preact.JSX.Element;
}

/** Each 72 × 54, from above but for the stairs. */
const KINDS: readonly Kind[] = [
  {
    surface: 'runner',
    title: 'A runner',
    says: 'down a passage',
    drawing: () => (
      <>
        <path class="walls" d="M 2 12 H 70 M 2 42 H 70" />
        <rect class="laid" x="6" y="19" width="60" height="16" />
        <path
          class="pattern"
          d="M 10 27 l 7 -5 l 7 5 l 7 -5 l 7 5 l 7 -5 l 7 5 l 7 -5 M 10 27 l 7 5 l 7 -5 l 7 5 l 7 -5 l 7 5 l 7 -5 l 7 5"
        />
      </>
    ),
  },
  {
    surface: 'rug',
    title: 'A rug',
    says: 'free in a room',
    drawing: () => (
      <>
        <path class="walls" d="M 3 3 H 69 V 51 H 3 Z" />
        <rect class="laid" x="17" y="12" width="38" height="30" />
        <rect class="pattern" x="22" y="17" width="28" height="20" />
      </>
    ),
  },
  {
    surface: 'floor-cloth',
    title: 'A floor cloth',
    says: 'canvas, with a hem',
    drawing: () => (
      <>
        <path class="laid" d="M 16 6 H 56 V 48 L 24 48 L 16 40 Z" />
        <path class="pattern" d="M 22 12 H 50 V 42 H 27 L 22 37 Z" />
        <path class="turned" d="M 16 40 L 24 48 L 24 40 Z" />
      </>
    ),
  },
  {
    surface: 'floor',
    title: 'A whole floor',
    says: 'from wall to wall',
    drawing: () => (
      <>
        <rect class="laid" x="4" y="4" width="64" height="46" />
        <path class="pattern" d="M 18 4 V 50 M 36 4 V 50 M 54 4 V 50 M 4 15 H 68 M 4 27 H 68 M 4 39 H 68" />
        <path class="walls" d="M 3 3 H 69 V 51 H 3 Z" />
      </>
    ),
  },
  {
    surface: 'room-border',
    title: 'A room border',
    says: 'along its walls',
    drawing: () => (
      <>
        <path class="walls" d="M 3 3 H 26 V 12 H 46 V 3 H 69 V 51 H 3 Z" />
        <path class="band" d="M 9 9 H 20 V 18 H 52 V 9 H 63 V 45 H 9 Z" />
      </>
    ),
  },
  {
    surface: 'stairs',
    title: 'Stairs',
    says: 'risers or treads',
    drawing: () => (
      <>
        <rect class="laid" x="6" y="36" width="60" height="10" />
        <rect class="laid" x="10" y="21" width="52" height="8" />
        <rect class="laid" x="14" y="8" width="44" height="7" />
        <path class="walls" d="M 2 50 H 70 M 4 33 H 68 M 8 18 H 64 M 12 5 H 60" />
      </>
    ),
  },
];

export const titleOf = (surface: string): string => KINDS.find((kind) => kind.surface === surface)?.title ?? '';

/** What this job said before, the last first. What another job measured that was open earlier says nothing of this one. */
function before(): JobTree[] {
  const line = steps.value.slice(0, at.value + 1);
  const begun = line.findLastIndex((step) => step.base !== base.value) + 1;
  return line
    .slice(begun)
    .map((step) => step.tree)
    .reverse();
}

function become({ surface, title }: Kind): void {
  const did = `making it ${title.charAt(0).toLowerCase()}${title.slice(1)}`;
  begin(base.value, asKind(tree.value, surface, before()), file.value, did);
}

/** Which of the six kinds of work it is. Changing it keeps what both have in common. */
export function KindOfWork() {
  const name = useId();
  const surface = textAt(tree.value, ['surface']);
  return (
    <fieldset class="field kinds">
      <legend>{surface ? 'The work' : 'What will you paint?'}</legend>
      <div class="sorts">
        {KINDS.map((kind) => (
          <label key={kind.surface}>
            <input
              type="radio"
              name={name}
              value={kind.surface}
              checked={surface === kind.surface}
              onChange={() => become(kind)}
            />
            <svg viewBox="0 0 72 54" aria-hidden="true">
              <kind.drawing />
            </svg>
            <span>
              <b>{kind.title}</b> {kind.says}
            </span>
          </label>
        ))}
      </div>
      {surface && <Wrong path={['surface']} />}
    </fieldset>
  );
}
