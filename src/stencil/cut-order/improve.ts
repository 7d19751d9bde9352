import type { Tour } from './tour.ts';

/** Gains below this are the noise of sums, mm. */
const GAIN = 1e-7;
/** Stops that are moved together at most. */
const RUN = 3;

/**
 * Shortens a tour by small changes until none helps: another entry into a stop, two ways crossed over (2-opt), one to three stops
 * that follow each other put in elsewhere (Or-opt), a single one by the entry that suits there. Only nearby stops are tried.
 */
export class Improver {
  private readonly waiting: number[] = [];
  private readonly isWaiting: Uint8Array;

  constructor(
    private readonly tour: Tour,
    private readonly near: readonly Int32Array[],
  ) {
    this.isWaiting = new Uint8Array(tour.count);
  }

  /** Has a stop looked at by the next `run`. */
  look(stop: number): void {
    if (this.isWaiting[stop]) return;
    this.isWaiting[stop] = 1;
    this.waiting.push(stop);
  }

  /** Improves round the stops to be looked at. Returns the change of length, mm, never above nought. */
  run(): number {
    let change = 0;
    while (this.waiting.length > 0) {
      const stop = this.waiting.pop()!;
      this.isWaiting[stop] = 0;
      for (;;) {
        const gained = this.enterBetter(stop) || this.cross(stop) || this.moveRun(stop);
        if (gained === 0) break;
        change -= gained;
      }
    }
    return change;
  }

  private isFree(stop: number): boolean {
    const { first } = this.tour.stops;
    return first[stop + 1]! - first[stop]! > 1;
  }

  private enterBetter(stop: number): number {
    if (!this.isFree(stop)) return 0;
    const { tour } = this;
    const [a, b] = [tour.before(stop), tour.next(stop)];
    const point = this.entryBetween(stop, a, b);
    const gain = tour.way(a, stop) + tour.way(stop, b) - this.throughPoint(point, a, b);
    if (gain <= GAIN) return 0;
    tour.enter(stop, point);
    return this.looked(gain, a, b, a, b);
  }

  private throughPoint(point: number, a: number, b: number): number {
    const { tour } = this;
    return tour.apart(tour.entry[a]!, point) + tour.apart(point, tour.entry[b]!);
  }

  /** The point by which a stop is best entered between two others. */
  private entryBetween(stop: number, a: number, b: number): number {
    const { first } = this.tour.stops;
    let best = first[stop]!;
    let least = Infinity;
    for (let point = first[stop]!; point < first[stop + 1]!; point++) {
      const length = this.throughPoint(point, a, b);
      if (length < least) {
        best = point;
        least = length;
      }
    }
    return best;
  }

  /** 2-opt: the ways after (or before) two stops are crossed over. */
  private cross(a: number): number {
    const { tour } = this;
    const [after, ahead] = [tour.next(a), tour.before(a)];
    const [out, back] = [tour.way(a, after), tour.way(ahead, a)];
    const near = this.near[a]!;
    for (let k = 0; k < near.length; k++) {
      const c = near[k]!;
      const link = tour.way(a, c);
      if (link < out) {
        const d = tour.next(c);
        const gain = out + tour.way(c, d) - link - tour.way(after, d);
        if (gain > GAIN && c !== after && d !== a) {
          tour.reverse(after, c);
          return this.looked(gain, a, after, c, d);
        }
      }
      if (link < back) {
        const d = tour.before(c);
        const gain = back + tour.way(d, c) - link - tour.way(ahead, d);
        if (gain > GAIN && c !== ahead && d !== a) {
          tour.reverse(a, d);
          return this.looked(gain, a, ahead, c, d);
        }
      }
    }
    return 0;
  }

  /** Or-opt: a run of stops that ends at `a` moves beside a stop near `a`. */
  private moveRun(a: number): number {
    const most = Math.min(RUN, this.tour.count - 3);
    let [head, tail] = [a, a];
    for (let long = 1; long <= most; long++) {
      const gain = this.moveFrom(a, head, tail, long);
      if (gain > 0) return gain;
      tail = this.tour.next(tail);
    }
    for (let long = 2; long <= most; long++) {
      head = this.tour.before(head);
      const gain = this.moveFrom(a, head, a, long);
      if (gain > 0) return gain;
    }
    return 0;
  }

  private moveFrom(a: number, head: number, tail: number, long: number): number {
    const { tour } = this;
    const [p, n] = [tour.before(head), tour.next(tail)];
    const freed = tour.way(p, head) + tour.way(tail, n) - tour.way(p, n);
    if (freed <= GAIN) return 0;
    const far = a === head ? tail : head;
    const anyEntry = long === 1 && this.isFree(a);
    const near = this.near[a]!;
    for (let k = 0; k < near.length; k++) {
      const c = near[k]!;
      const link = tour.way(c, a);
      // Way that is freed must at least pay for the way to `c`, if `a` is not entered elsewhere there.
      if ((link >= freed && !anyEntry) || tour.ahead(head, c) < long) continue;
      for (let side = 0; side < 2; side++) {
        const behind = side === 0 ? c : tour.before(c);
        const then = side === 0 ? tour.next(c) : c;
        if (behind === p || behind === tail) continue;
        const joined = freed + tour.way(behind, then);
        const point = anyEntry ? this.entryBetween(a, behind, then) : -1;
        const added = anyEntry
          ? this.throughPoint(point, behind, then)
          : link + tour.way(far, side === 0 ? then : behind);
        if (joined - added <= GAIN) continue;
        tour.shift(head, long, behind, (side === 0 ? a : far) !== head);
        if (anyEntry && point !== tour.entry[a]) tour.enter(a, point);
        this.look(p);
        this.look(n);
        return this.looked(joined - added, a, far, behind, then);
      }
    }
    return 0;
  }

  private looked(gain: number, a: number, b: number, c: number, d: number): number {
    this.look(a);
    this.look(b);
    this.look(c);
    this.look(d);
    return gain;
  }
}
