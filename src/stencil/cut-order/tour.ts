/** Stops of a round trip. Each has one point or more; the pen comes and goes by the same one. */
export interface Stops {
  /** Where the points of each stop begin in `x` and `y`; one number more than there are stops. */
  first: Int32Array;
  x: Float64Array;
  y: Float64Array;
}

/** A round trip that can be changed and, up to the last `keep`, changed back. */
export class Tour {
  readonly count: number;
  /** Stop at each place, and the place of each stop. */
  readonly order: Int32Array;
  readonly place: Int32Array;
  /** Point by which each stop is entered. */
  readonly entry: Int32Array;
  /** Where that point is. */
  private readonly x: Float64Array;
  private readonly y: Float64Array;
  /** Pairs: a place and the stop that was there, or -1 less a stop and the point by which it was entered. */
  private undone = new Int32Array(1024);
  private changes = 0;

  constructor(
    readonly stops: Stops,
    order: Int32Array,
    entry: Int32Array,
  ) {
    this.count = order.length;
    this.order = order;
    this.entry = entry;
    this.place = new Int32Array(this.count);
    for (let place = 0; place < this.count; place++) this.place[order[place]!] = place;
    this.x = Float64Array.from(entry, (point) => stops.x[point]!);
    this.y = Float64Array.from(entry, (point) => stops.y[point]!);
  }

  next(stop: number): number {
    const place = this.place[stop]! + 1;
    return this.order[place === this.count ? 0 : place]!;
  }

  before(stop: number): number {
    const place = this.place[stop]!;
    return this.order[place === 0 ? this.count - 1 : place - 1]!;
  }

  /** Distance between two points of stops, mm. */
  apart(a: number, b: number): number {
    const dx = this.stops.x[a]! - this.stops.x[b]!;
    const dy = this.stops.y[a]! - this.stops.y[b]!;
    return Math.sqrt(dx * dx + dy * dy);
  }

  /** Pen-up travel between two stops as they are entered now. */
  way(a: number, b: number): number {
    const dx = this.x[a]! - this.x[b]!;
    const dy = this.y[a]! - this.y[b]!;
    return Math.sqrt(dx * dx + dy * dy);
  }

  length(): number {
    let sum = 0;
    for (let place = 0; place < this.count; place++) sum += this.way(this.order[place]!, this.next(this.order[place]!));
    return sum;
  }

  enter(stop: number, point: number): void {
    this.note(-1 - stop, this.entry[stop]!);
    this.enterAt(stop, point);
  }

  private enterAt(stop: number, point: number): void {
    this.entry[stop] = point;
    this.x[stop] = this.stops.x[point]!;
    this.y[stop] = this.stops.y[point]!;
  }

  /** Puts a stop at a place; the caller sees to it that every stop keeps one. */
  put(place: number, stop: number): void {
    this.note(place, this.order[place]!);
    this.order[place] = stop;
    this.place[stop] = place;
  }

  /** Runs the stretch from one stop on to another the other way round; or all the rest, which comes to the same and may be shorter. */
  reverse(from: number, to: number): void {
    const { count, place } = this;
    let i = place[from]!;
    let j = place[to]!;
    let long = j - i + 1;
    if (long <= 0) long += count;
    if (2 * long > count) {
      [i, j] = [j + 1 === count ? 0 : j + 1, i === 0 ? count - 1 : i - 1];
      long = count - long;
    }
    for (let half = long >> 1; half > 0; half--) {
      const [a, b] = [this.order[i]!, this.order[j]!];
      this.put(i, b);
      this.put(j, a);
      i = i + 1 === count ? 0 : i + 1;
      j = j === 0 ? count - 1 : j - 1;
    }
  }

  /** How many steps forward one stop lies from another. */
  ahead(from: number, to: number): number {
    const steps = this.place[to]! - this.place[from]!;
    return steps < 0 ? steps + this.count : steps;
  }

  /** Takes `long` stops from `head` on and puts them in after the stop `behind`, turned round if asked. */
  shift(head: number, long: number, behind: number, turned: boolean): void {
    const { count, order, place } = this;
    const start = place[head]!;
    const run: number[] = [];
    for (let k = 0; k < long; k++) run.push(order[(start + k) % count]!);
    if (turned) run.reverse();
    const steps = this.ahead(head, behind) - long + 1;
    const back = count - long - steps;
    let at = start;
    if (steps <= back) {
      for (let k = 0; k < steps; k++) this.put((start + k) % count, order[(start + k + long) % count]!);
      at = start + steps;
    } else {
      const end = start + long - 1 + count;
      for (let k = 0; k < back; k++) this.put((end - k) % count, order[(end - k - long) % count]!);
      at = start - back + count;
    }
    for (let k = 0; k < long; k++) this.put((at + k) % count, run[k]!);
  }

  /** Makes what was changed final. */
  keep(): void {
    this.changes = 0;
  }

  /** Takes back everything since the last `keep`. */
  takeBack(): void {
    const { undone } = this;
    while (this.changes > 0) {
      this.changes -= 2;
      const place = undone[this.changes]!;
      const was = undone[this.changes + 1]!;
      if (place < 0) this.enterAt(-1 - place, was);
      else {
        this.order[place] = was;
        this.place[was] = place;
      }
    }
  }

  private note(what: number, was: number): void {
    if (this.changes === this.undone.length) {
      const longer = new Int32Array(2 * this.changes);
      longer.set(this.undone);
      this.undone = longer;
    }
    this.undone[this.changes] = what;
    this.undone[this.changes + 1] = was;
    this.changes += 2;
  }
}
