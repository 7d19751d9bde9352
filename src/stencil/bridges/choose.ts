import type { Point } from '../../geometry/path.ts';
import { type Candidate, candidatesFor, evened, widthOf } from './candidates.ts';
import type { Cluster } from './cluster.ts';
import { centreOf } from './outline.ts';
import { type Span, sameSpan, spansApart, turnedSpan } from './span.ts';
import { sameTurning, subgroupsOf, symmetriesOf, type Turning, turnedAbout } from './symmetry.ts';

export interface Wish {
  width: number;
  /** Least width of a window, mm. */
  window: number;
  atLeastTwoOver: number;
}

export interface Chosen {
  spans: Span[];
  /** Islands, by index of outline, for which there is no bridge. */
  loose: number[];
}

/** An island wider than this, mm, gets three bridges at least: a longer piece sags between two (common practice, no source). */
const THREE_OVER = 150;
const ORBITS = 40;

const least = (wide: number, { atLeastTwoOver }: Wish): number =>
  wide > Math.max(THREE_OVER, atLeastTwoOver) ? 3 : wide > atLeastTwoOver ? 2 : 1;

/** The images of a span under a group, each once; nothing where two of them would run together. */
function orbitOf(span: Candidate, ops: Turning[], centre: Point, apart: number): Candidate[] | undefined {
  const images: Candidate[] = [];
  for (const op of ops) {
    const image = { ...turnedSpan(span, op, centre), cost: span.cost };
    if (images.some((one) => sameSpan(one, image))) continue;
    if (images.some((one) => spansApart(one, image) < apart)) return undefined;
    images.push(image);
  }
  return images;
}

/** How unevenly spans stand round an island, radians: the widest opening between two, over an equal share. */
function uneven(spans: Span[], [cx, cy]: Point): number {
  if (spans.length < 2) return 0;
  const angles = spans.map(({ from }) => Math.atan2(from[1] - cy, from[0] - cx)).sort((a, b) => a - b);
  const gaps = angles.map((angle, at) => (at === 0 ? angle + 2 * Math.PI - angles.at(-1)! : angle - angles[at - 1]!));
  return Math.max(...gaps) - (2 * Math.PI) / spans.length;
}

/** No set of bridges costs less than this. */
const CHEAPEST = 0.65;

interface Choice {
  /** Which orbits, by index, ascending. */
  parts: number[];
  spans: Candidate[];
  score: number;
}

/** The best bridges for one island that keep its own symmetry, at least `k` of them; fewer where no more find room. */
function bestSet(orbits: Candidate[][], centre: Point, k: number, apart: number): Choice | undefined {
  const score = (spans: Candidate[], parts: number) =>
    evened(
      spans.reduce((sum, { cost }) => sum + cost, 0) / spans.length +
        1.2 * uneven(spans, centre) +
        0.15 * (parts - 1) +
        0.3 * Math.max(0, spans.length - k),
    );
  const clear = orbits.map((orbit, at) =>
    orbits.slice(0, at).map((other) => orbit.every((one) => other.every((two) => spansApart(one, two) >= apart))),
  );
  const most = Math.max(2 * k, 4);
  const sets = orbits.flatMap((spans, at): Choice[] =>
    spans.length <= Math.max(most, 6) ? [{ parts: [at], spans, score: score(spans, 1) }] : [],
  );
  let tried = sets;
  for (let count = 2; count <= (k > 2 ? 3 : 2); count++) {
    const grown: Choice[] = [];
    for (const { parts, spans } of tried) {
      if (count > 2 && spans.length >= k) continue;
      for (let at = parts[parts.length - 1]! + 1; at < orbits.length; at++) {
        if (spans.length + orbits[at]!.length > most || parts.some((part) => !clear[at]![part])) continue;
        const both = [...spans, ...orbits[at]!];
        grown.push({ parts: [...parts, at], spans: both, score: score(both, count) });
      }
    }
    grown.sort((a, b) => a.score - b.score);
    sets.push(...grown);
    tried = grown.slice(0, ORBITS);
  }
  const enough = sets.filter(({ spans }) => spans.length >= k).sort((a, b) => a.score - b.score)[0];
  if (enough) return enough;
  const fewer = sets.sort((a, b) => b.spans.length - a.spans.length || a.score - b.score)[0];
  return fewer && { ...fewer, score: fewer.score + 1.5 * (k - fewer.spans.length) };
}

/** For each motion of a group, which outline each outline becomes. */
function imagesOf(group: Turning[], { outlines }: Cluster, centre: Point): Map<Turning, number[]> {
  return new Map(
    group.map((op) => [
      op,
      outlines.map(({ centre: from, area, hole }, own) => {
        const [x, y] = turnedAbout(op, centre, from);
        let [best, least] = [own, Infinity];
        outlines.forEach((other, at) => {
          if (other.hole !== hole) return;
          const off = Math.abs(other.centre[0] - x) + Math.abs(other.centre[1] - y) + Math.abs(other.area / area - 1);
          // An outline that may be its own image is taken for it: nested rings share their centre.
          if (off < least - (at === own ? 0 : 1e-6)) [best, least] = [at, off];
        });
        return best;
      }),
    ]),
  );
}

/** What bridging every island under one group costs. */
interface Plan extends Chosen {
  score: number;
}

/** What an island without a bridge costs. */
const LOOSE = 50;

/** Chooses for all islands, so that the whole keeps the symmetry of the group. Islands are held one after the other, from the outside in. */
function planUnder(
  group: Turning[],
  cluster: Cluster,
  centre: Point,
  images: Map<Turning, number[]>,
  known: (island: number) => Candidate[],
  wish: Wish,
): Plan {
  const { outlines, islands } = cluster;
  const image = (op: Turning, outline: number): number => images.get(op)![outline]!;
  const families: number[][] = [];
  for (const island of islands) {
    if (families.some((family) => family.includes(island))) continue;
    families.push([...new Set(group.map((op) => image(op, island)))]);
  }
  families.sort((p, q) => widthOf(outlines[q[0]!]!) - widthOf(outlines[p[0]!]!));

  const spans: Span[] = [];
  const held = new Set(outlines.flatMap(({ hole }, at) => (hole ? [] : [at])));
  let score = 0;
  let waiting = families;
  for (let before = Infinity; waiting.length < before; ) {
    before = waiting.length;
    waiting = waiting.filter((family) => {
      const first = family[0]!;
      const outline = outlines[first]!;
      const own = group.filter((op) => image(op, first) === first);
      const k = least(widthOf(outline), wish);
      const apart = Math.max(1.5 * wish.width + wish.window, Math.min(2.2 * wish.width, outline.round / (2 * k)));
      const clear = Math.max(wish.width + wish.window, 2 * wish.width);
      const others = group.filter((op) => image(op, first) !== first);
      const crowds = (orbit: Span[]) =>
        others.some((op) =>
          orbit.some((one) => {
            const moved = turnedSpan(one, op, centre);
            return orbit.some((other) => spansApart(moved, other) < clear);
          }),
        );
      const orbits = known(first)
        .filter((span) => held.has(span.lands) && !family.includes(span.lands))
        .flatMap((span) => {
          const orbit = orbitOf(span, own, centre, apart);
          if (!orbit || crowds(orbit) || orbit.some((one) => spans.some((other) => spansApart(one, other) < clear)))
            return [];
          return own.every((op) => held.has(image(op, span.lands))) ? [orbit] : [];
        })
        .filter((orbit, at, all) => {
          return all.findIndex((other) => other.some((one) => sameSpan(one, orbit[0]!))) === at;
        })
        .slice(0, ORBITS);
      const best = bestSet(orbits, outline.centre, k, apart);
      if (!best) return true;
      score += (best.score * family.length) / islands.length;
      for (const member of family) {
        const op = group.find((one) => image(one, first) === member)!;
        spans.push(...best.spans.map((span) => turnedSpan(span, op, centre)));
        held.add(member);
      }
      return false;
    });
  }
  const loose = waiting.flat();
  return { spans, loose, score: score + LOOSE * loose.length };
}

const upright = ({ mirror }: Turning) => mirror !== undefined && Math.abs(Math.sin(2 * mirror)) < 1e-9;

/** The symmetry of a cluster. Where all islands lie about its centre, as in a ring, a part of a high symmetry is as good as the whole and soon searched. */
function groupOf({ outlines, islands }: Cluster, centre: Point): Turning[] {
  const group = symmetriesOf(outlines, centre);
  const order = group.filter(({ mirror }) => mirror === undefined).length;
  const round = islands.every(
    (at) => Math.hypot(outlines[at]!.centre[0] - centre[0], outlines[at]!.centre[1] - centre[1]) < 0.05,
  );
  if (!round || order <= 6) return group;
  const enough = [4, 6, 5, 3, 2].find((n) => order % n === 0) ?? order;
  return subgroupsOf(group).find((sub) => sub.filter(({ mirror }) => mirror === undefined).length === enough)!;
}

/**
 * Bridges for one cluster of windows: short, square to the edges, even round each island, and keeping as much of the cluster's
 * symmetry as they can, its upright and level mirror lines first.
 * @param keep turns and mirror images of the whole sheet unit that the answer must keep
 */
export function chooseBridges(cluster: Cluster, keep: Turning[], wish: Wish): Chosen {
  const { outlines } = cluster;
  const centre = centreOf(outlines);
  const group = groupOf(cluster, centre);
  const found = new Map<number, Candidate[]>();
  const known = (island: number) => {
    const candidates = found.get(island) ?? candidatesFor(outlines, island, wish.width, group, centre);
    found.set(island, candidates);
    return candidates;
  };
  const images = imagesOf(group, cluster, centre);
  const main = group.filter(upright).length;
  let best: Plan | undefined;
  for (const sub of subgroupsOf(group)) {
    const kept = sub.filter(upright).length;
    const broken = keep.filter((op) => !sub.some((one) => sameTurning(one, op))).length;
    const price = 0.1 * Math.log2(group.length / sub.length) + 6 * (main - kept) + 5 * broken;
    if (best && price + CHEAPEST > best.score) continue;
    const plan = planUnder(sub, cluster, centre, images, known, wish);
    plan.score += price;
    if (!best || plan.score < best.score - 1e-3) best = plan;
  }
  return best!;
}
