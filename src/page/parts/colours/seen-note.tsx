import { seenAs } from '../../state/seen-as.ts';

const WORDS = {
  protan: 'as it is seen by people who see no red',
  deutan: 'as it is seen by people who see no green',
  tritan: 'as it is seen by people who see no blue',
  faded: 'when it has faded',
} as const;

/** Says that the plan is shown in other colours than its own, and gives them back. */
export function SeenNote() {
  const way = seenAs.value;
  if (way === 'as it is') return null;
  return (
    <p class="seen-note">
      <span>The plan shows the work {WORDS[way]}.</span>
      <button
        type="button"
        onClick={() => {
          seenAs.value = 'as it is';
        }}
      >
        Show its own colours
      </button>
    </p>
  );
}
