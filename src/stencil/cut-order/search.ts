import { Improver } from './improve.ts';
import { nearestFirst, nearestStops } from './neighbours.ts';
import { type Stops, Tour } from './tour.ts';

const NEAR = 8;
/** Stretches that change places lie within this many stops. */
const WITHIN = 50;
/** The search ends after this share of its trials in a row without a gain. */
const IDLE = 0.2;
/** The noise of sums, mm. */
const NOISE = 1e-9;

/** Whole numbers below a bound, the same ones every time (a 32-bit mixing generator with a fixed start). */
function counted(): (below: number) => number {
  let state = 0x9e3779b9;
  return (below) => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return Math.floor((((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32) * below);
  };
}

/** Trials for so many stops and points: enough for little work to be exact; bounded for much. Free entries settle sooner and cost more. */
const trialsFor = (stops: number, points: number): number =>
  points > stops + 1 ? Math.min(200 + 5 * stops, 5_000) : Math.min(200 + 25 * stops, 12_000);

/**
 * A short round trip through all stops: nearest first, improved, then two neighbouring stretches are made to change places again and
 * again, improved round there, and kept where the trip came out no longer. It stops by count, never by the clock.
 */
export function shortTour(stops: Stops, trials = trialsFor(stops.first.length - 1, stops.x.length)): Tour {
  const { order, entry } = nearestFirst(stops);
  const tour = new Tour(stops, order, entry);
  const { count } = tour;
  if (count < 2) return tour;
  const improver = new Improver(tour, nearestStops(stops, NEAR));
  for (let place = count - 1; place >= 0; place--) improver.look(tour.order[place]!);
  improver.run();
  tour.keep();
  if (count < 5) return tour;
  const random = counted();
  const idle = trials * IDLE;
  for (let trial = 0, gained = 0; trial < trials && trial - gained <= idle; trial++) {
    const change = swapStretches(tour, improver, random) + improver.run();
    if (change > NOISE) tour.takeBack();
    else tour.keep();
    if (change < -NOISE) gained = trial;
  }
  return tour;
}

/** Two stretches that follow each other change places (a local double bridge). Returns the change of length, mm. */
function swapStretches(tour: Tour, improver: Improver, random: (below: number) => number): number {
  const { count, order } = tour;
  const room = Math.min(WITHIN, count - 1);
  const start = random(count);
  const one = 1 + random(room - 1);
  const two = 1 + random(room - one);
  const at = (place: number): number => order[(start + place) % count]!;
  const [p, a, b, c, d, n] = [at(0), at(1), at(one), at(one + 1), at(one + two), at(one + two + 1)];
  const change = tour.way(p, c) + tour.way(d, a) + tour.way(b, n) - tour.way(p, a) - tour.way(b, c) - tour.way(d, n);
  const moved: number[] = [];
  for (let k = 0; k < one + two; k++) moved.push(at(1 + (k < two ? k + one : k - two)));
  for (let k = 0; k < one + two; k++) tour.put((start + 1 + k) % count, moved[k]!);
  improver.look(p);
  improver.look(a);
  improver.look(b);
  improver.look(c);
  improver.look(d);
  improver.look(n);
  return change;
}
