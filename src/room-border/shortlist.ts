/** One way to lay the border, in numbers. Lists are by the number of the wall. */
export interface RoomCandidate {
  width: number;
  strips: number[];
  counts: number[];
  cost: number;
}

/** The best candidates met so far, one of each kind: those with the same counts are one kind. */
export class RoomShortlist {
  private readonly best = new Map<string, RoomCandidate>();
  private limit = Number.POSITIVE_INFINITY;

  constructor(private readonly most: number) {}

  /** Nothing that costs more than this is taken any more. */
  get bound(): number {
    return this.limit;
  }

  /** Nothing with these counts that costs more than this is taken. */
  limitOf(counts: readonly number[]): number {
    return Math.min(this.limit, this.best.get(counts.join())?.cost ?? Number.POSITIVE_INFINITY);
  }

  offer(candidate: RoomCandidate): void {
    if (candidate.cost > this.limit) return;
    const kind = candidate.counts.join();
    const known = this.best.get(kind);
    if (known && known.cost <= candidate.cost) return;
    this.best.set(kind, candidate);
    const sorted = this.sorted;
    for (const [name, one] of this.best) if (sorted.indexOf(one) >= this.most) this.best.delete(name);
    if (sorted.length >= this.most) this.limit = sorted[this.most - 1]!.cost;
  }

  get sorted(): RoomCandidate[] {
    return [...this.best.values()].sort((a, b) => a.cost - b.cost || a.width - b.width);
  }
}
