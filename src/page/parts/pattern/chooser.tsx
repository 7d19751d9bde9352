import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';
import { writeLength } from '../../../units/index.ts';
import type { Board } from '../../engine/motifs.ts';
import { pathOf, type Slot, takeChanges } from '../../engine/motifs-slots.ts';
import { Wrong } from '../../fields/field.tsx';
import { look } from '../../state/answer.ts';
import { endStep, sayAll, tree } from '../../state/job.ts';
import { PatchDrawn } from './patch.tsx';
import { Settings } from './settings.tsx';
import { shelfOf, takenAt, useShelf } from './shelf.ts';
import { boardName, boardWords } from './words.ts';
import './chooser.css';

/** Pixels across a board on the rail, and of the one that is taken. */
const [SMALL, LARGE] = [92, 132];

function sizeOf({ patch }: Board): string {
  const { units = 'in', step = 25.4 / 16 } = look.value?.job ?? {};
  const of = (mm: number): string => writeLength(mm, units, step);
  return `${of(patch.across)} by ${of(patch.along)}`;
}

function take(slot: Slot, name: string): void {
  endStep();
  sayAll(takeChanges(tree.value, slot, name), `${boardWords(slot, name)} taken`);
}

function Hung({ slot, board, why, name }: { slot: Slot; board: Board; why: readonly string[]; name: string }) {
  const id = useId();
  const isTaken = takenAt(slot) === board.name;
  return (
    <li class={`board${isTaken ? ' taken' : ''}${why.length > 0 ? ' refused' : ''}`}>
      <label>
        <input
          type="radio"
          name={name}
          checked={isTaken}
          disabled={why.length > 0 && !isTaken}
          aria-describedby={`${id}-says`}
          onChange={() => take(slot, board.name)}
        />
        <span class="hung" aria-hidden="true">
          <PatchDrawn patch={board.patch} wide={SMALL} />
        </span>
        <span class="called">{boardName(slot, board.name)}</span>
      </label>
      <span class="unseen" id={`${id}-says`}>
        {board.says} {board.patch.shapes.length > 0 && `Shown: ${sizeOf(board)} of the floor.`}
      </span>
      {why.length > 0 && !isTaken && <span class="why">{why.join(' ')}</span>}
    </li>
  );
}

/** Sample boards on a rail, one of which is taken; the rail is put up when it is asked for. */
export function Chooser({
  slot,
  label,
  many,
  says,
  more,
  children,
}: {
  slot: Slot;
  label: string;
  /** What the others are, after a number: `field patterns`. */
  many: string;
  says?: ComponentChildren;
  /** Beside the button. */
  more?: ComponentChildren;
  children?: ComponentChildren;
}) {
  const id = useId();
  const isOpen = useSignal(false);
  useShelf(slot, isOpen);
  const { boards, refusals } = shelfOf(slot).value;
  const taken = takenAt(slot);
  const now = boards.find(({ name }) => name === taken);
  // Its colours and its scale come with the plan.
  const isPainted = look.value !== undefined && now !== undefined && now.patch.shapes.length > 0;
  return (
    <div class="chooser">
      <h4>{label}</h4>
      {says && <p class="usual">{says}</p>}
      <div class="present">
        {isPainted && now && (
          <span class="hung" aria-hidden="true">
            <PatchDrawn patch={now.patch} wide={LARGE} />
          </span>
        )}
        <div>
          <p class="called">{taken === '' && !now ? '' : boardName(slot, taken)}</p>
          {now && <p class="usual">{now.says}</p>}
          {isPainted && now && <p class="usual">The board shows {sizeOf(now)} of the floor.</p>}
          <div class="acts">
            <button
              type="button"
              aria-expanded={isOpen.value}
              aria-controls={`${id}-rail`}
              onClick={() => {
                isOpen.value = !isOpen.value;
              }}
            >
              {isOpen.value ? `Put the other ${many} away` : `See the ${many}`}
            </button>
            {more}
          </div>
        </div>
      </div>
      <Wrong path={pathOf(slot)} />
      <fieldset class="rail" id={`${id}-rail`} hidden={!isOpen.value}>
        <legend class="unseen">{label}</legend>
        <ul>
          {isOpen.value &&
            boards.map((board) => (
              <Hung key={board.name} slot={slot} board={board} why={refusals[board.name] ?? []} name={`${id}-one`} />
            ))}
        </ul>
      </fieldset>
      {now && <Settings slot={slot} board={now} />}
      {children}
    </div>
  );
}
