import { type Candidate, compareCandidates, kindOf } from './candidate.ts';
import type { Tape } from './tape.ts';

/** Room for rounding in sums of costs: nothing within this of a limit is passed over. */
export const ROUNDING = 2e-9;

/** The cheapest candidate of each of the best kinds, and what a newcomer must not exceed to be listed. */
export class Shortlist {
  private readonly kinds = new Map<number, Candidate>();
  private last = Number.POSITIVE_INFINITY;

  /** @param ceiling nothing dearer is asked for yet */
  constructor(
    private readonly most: number,
    private readonly tape: Tape,
    public ceiling = Number.POSITIVE_INFINITY,
  ) {}

  /** What the last place on the list costs, or the ceiling while there are free places. */
  get bound(): number {
    return Math.min(this.last, this.ceiling);
  }

  /** Every place is taken, and by nothing dearer than the ceiling. */
  get isFull(): boolean {
    return this.kinds.size >= this.most && this.last <= this.ceiling;
  }

  /** What a candidate of this kind must not exceed: the last place on the list, or the one of its kind that is held. */
  limitOf(kind: number): number {
    const held = this.kinds.get(kind);
    return held === undefined ? this.bound : Math.min(this.bound, held.cost + ROUNDING);
  }

  offer(candidate: Candidate): void {
    const kind = kindOf(candidate, this.tape);
    const held = this.kinds.get(kind);
    if (held && compareCandidates(held, candidate) <= 0) return;
    this.kinds.set(kind, candidate);
    if (this.kinds.size < this.most) return;
    const best = this.best();
    // A kind that is crowded out can only come back cheaper.
    if (this.kinds.size > this.most) this.kinds.delete(kindOf(best.pop()!, this.tape));
    this.last = best.at(-1)!.cost + ROUNDING;
  }

  /** Cheapest first. */
  best(): Candidate[] {
    return [...this.kinds.values()].sort(compareCandidates);
  }
}
