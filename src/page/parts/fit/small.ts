import { effect, signal } from '@preact/signals';
import { engine } from '../../engine/client.ts';
import type { Small } from '../../engine/small.ts';
import { isDrawn, look } from '../../state/answer.ts';
import { folded } from '../../state/folded.ts';
import { base, chosen, file, tree } from '../../state/job.ts';

/** Pictures of the layouts, by their place in the list; those of the job before stay until there are new ones. */
export const pictures = signal<readonly (Small | undefined)[]>([]);

/** Typing goes on meanwhile, so nothing is drawn before it rests. Milliseconds. */
const REST = 250;
/** Pixels of the longest side: enough for a card on a fine screen. */
const LONG = 720;

let rest: ReturnType<typeof setTimeout> | undefined;
let of: unknown;

/** One after the other, so that the plan never waits for more than one of them. */
async function draw(): Promise<void> {
  const seen = look.peek();
  const mine = tree.peek();
  if (!seen) return;
  of = mine;
  const ask = { base: base.peek(), tree: mine, chosen: chosen.peek(), file: file.peek() };
  const drawn: (Small | undefined)[] = [];
  for (let rank = 0; rank < seen.layouts.length; rank++) {
    const small = await engine.small(ask, rank, LONG).catch(() => undefined);
    if (tree.peek() !== mine) return;
    drawn[rank] = small;
    pictures.value = [...drawn, ...pictures.peek().slice(drawn.length, seen.layouts.length)];
  }
}

effect(() => {
  const wanted = isDrawn.value && !folded.value.has('fit');
  const job = tree.value;
  clearTimeout(rest);
  if (wanted && of !== job) rest = setTimeout(() => void draw(), REST);
});
