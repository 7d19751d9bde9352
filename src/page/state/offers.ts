import { effect, signal } from '@preact/signals';
import type { Issue } from '../../issue.ts';
import { engine } from '../engine/client.ts';
import type { Offer } from '../engine/offers/offer.ts';
import { issues } from './answer.ts';
import { base, chosen, endStep, sayAll, tree } from './job.ts';

/** What would help with what is wrong, each already tried; empty while it is looked for. */
const offers = signal<readonly Offer[]>([]);
/** The issues that `offers` answers. */
const answered = signal<readonly Issue[]>([]);
export const isLooking = signal(false);

/** Typing goes on meanwhile, so nothing is tried before it rests. Milliseconds. */
const REST = 350;

let rest: ReturnType<typeof setTimeout> | undefined;

async function look(wrong: readonly Issue[]): Promise<void> {
  isLooking.value = true;
  const ask = { base: base.peek(), tree: tree.peek(), chosen: chosen.peek() };
  const found = await engine.offers(ask, [...wrong]).catch(() => undefined);
  if (issues.peek() !== wrong) return;
  isLooking.value = false;
  if (!found) return;
  answered.value = wrong;
  offers.value = found;
}

effect(() => {
  const wrong = issues.value;
  clearTimeout(rest);
  offers.value = [];
  isLooking.value = false;
  if (wrong.length > 0) rest = setTimeout(() => void look(wrong), REST);
});

/** What answers this issue. */
export const offersFor = (issue: Issue): Offer[] =>
  offers.value.filter((offer) => answered.value[offer.issue] === issue);

export function take({ changes, says }: Offer): void {
  endStep();
  sayAll(changes, says.charAt(0).toLowerCase() + says.slice(1));
}
