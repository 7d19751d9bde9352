import type { Point } from '../../geometry/path.ts';
import { Catalogue, translationTo } from './alike.ts';
import { measureOf } from './edge.ts';
import { apply, type Isometry, reflects } from './isometry.ts';
import { type Basis, cellArea, combine, countIn } from './lattice.ts';
import { type Endless, type Feature, movedFeature } from './outline.ts';
import { Places } from './places.ts';
import { cross, dot, length, mean, minus } from './vector.ts';

const kindOf = (feature: Feature): string =>
  `${feature.part} ${feature.kind}${feature.kind === 'oval' ? ` ${feature.turn}` : ''}`;

const sizeOf = (feature: Feature): number => {
  if (feature.kind === 'endless') return 0;
  return feature.kind === 'oval' ? Math.sqrt(feature.spread[0] + feature.spread[2]) : measureOf(feature);
};

/** The shortest translation along an endless line, counted in the lattice's own moves, and how far apart the line's repeats lie, mm. */
export function spacingOf({ run }: Endless, lattice: Basis): { count: Point; spacing: number } {
  const [u, v] = countIn(lattice, run).map(Math.round) as [number, number];
  let [parts, rest] = [Math.abs(u), Math.abs(v)];
  while (rest !== 0) [parts, rest] = [rest, parts % rest];
  const count: Point = [u / parts, v / parts];
  return { count, spacing: cellArea(lattice) / length(combine(lattice, count)) };
}

function sameEndless(p: Endless, q: Endless, lattice: Basis, within: number): boolean {
  if (dot(p.run, q.run) <= 0) return false;
  if (Math.abs(cross(p.run, q.run)) > within * (length(p.run) + length(q.run))) return false;
  const offset = cross(q.run, minus(p.points[0], q.points[0])) / length(q.run);
  const { spacing } = spacingOf(q, lattice);
  return Math.abs(offset - spacing * Math.round(offset / spacing)) <= within;
}

function same(p: Feature, q: Feature, lattice: Basis, within: number): boolean {
  if (p.kind === 'endless') return q.kind === 'endless' && sameEndless(p, q, lattice, within);
  if (translationTo(lattice, p.points, q.points, within) === undefined) return false;
  if (p.kind !== 'oval' || q.kind !== 'oval') return true;
  if (p.turn !== q.turn) return false;
  const size = Math.sqrt(q.spread[0] + q.spread[2]);
  return p.spread.every((value, i) => Math.abs(value - q.spread[i]!) <= 2 * within * size);
}

/** An outline with the lattice it repeats by, ready to be compared with its own images. */
export class Pattern {
  readonly features: Feature[];
  readonly lattice: Basis;
  readonly within: number;
  readonly #endless: Endless[];
  readonly #places: Places<Feature>;
  readonly #catalogue: Catalogue<Feature>;

  /**
   * @param features each told once or more often of all its repeats
   * @param lattice reduced
   * @param within mm that an image may be off
   */
  constructor(features: readonly Feature[], lattice: Basis, within: number) {
    this.lattice = lattice;
    this.within = within;
    this.#endless = features.filter((feature) => feature.kind === 'endless');
    this.#places = this.#placed(features);
    const order = new Map(features.map((feature, at) => [feature, at]));
    this.features = features.filter((feature, at) => this.#alike(feature).every((one) => order.get(one)! >= at));
    this.#endless = this.#endless.filter((feature) => this.features.includes(feature));
    this.#places = this.#placed(this.features);
    this.#catalogue = new Catalogue(this.features, kindOf, sizeOf, 4 * within);
  }

  #placed(features: readonly Feature[]): Places<Feature> {
    const ended = features.filter(({ kind }) => kind !== 'endless');
    return new Places(ended, ({ points }) => mean(points), this.lattice);
  }

  /** Features of which one repeat lies just where this one does. */
  #alike(feature: Feature): Feature[] {
    const { lattice, within } = this;
    const alike = (other: Feature) =>
      other.part === feature.part && other.kind === feature.kind && same(feature, other, lattice, within);
    if (feature.kind === 'endless') return this.#endless.filter(alike);
    const found: Feature[] = [];
    for (const { thing } of this.#places.near(mean(feature.points), within)) if (alike(thing)) found.push(thing);
    return found;
  }

  /** Features that this one may be brought onto. */
  like(feature: Feature): Feature[] {
    return this.#catalogue.near(kindOf(feature), sizeOf(feature));
  }

  /** Whether the move brings the whole pattern onto itself, part for part. */
  isKeptBy(move: Isometry): boolean {
    const mirrors = reflects(move.linear);
    return this.features.every(
      (feature) => this.#alike(movedFeature(feature, (point) => apply(move, point), mirrors)).length > 0,
    );
  }

  /** Features of the rarest sort: every symmetry brings the first of them onto one of them. Endless lines come last. */
  rarest(): Feature[] {
    const ended = this.features.filter(({ kind }) => kind !== 'endless');
    let found: Feature[] = [];
    for (const feature of ended.length > 0 ? ended : this.features) {
      const like = this.like(feature);
      if (found.length === 0 || like.length < found.length) found = [feature, ...like.filter((one) => one !== feature)];
    }
    return found;
  }
}
