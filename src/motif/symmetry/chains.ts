import type { Point } from '../../geometry/path.ts';
import { type Edge, endOf, movedEdge, startOf } from './edge.ts';
import { KINDS } from './kinds.ts';
import type { Basis } from './lattice.ts';
import { Places } from './places.ts';
import { plus } from './vector.ts';

const shiftedEdge = (edge: Edge, by: Point): Edge => movedEdge(edge, (point) => plus(point, by));

/** A line of edges that lead each other on: each laid where the one before ends. `ring`: the last leads on into the first. */
export interface Chain {
  edges: [Edge, ...Edge[]];
  ring: boolean;
}

/** Sorts edges into the longest lines in which each leads on the one before, across repeats too. */
export function chains(edges: Edge[], lattice: Basis, within: number): Chain[] {
  const starts = new Places(edges, startOf, lattice);
  const nextOf = new Map<Edge, { edge: Edge; move: Point }>();
  const led = new Set<Edge>();
  for (const edge of edges) {
    for (const { thing, move } of starts.near(endOf(edge), 4 * within)) {
      if (led.has(thing) || thing.part !== edge.part || thing.kind !== edge.kind) continue;
      if (KINDS[edge.kind].join(edge, shiftedEdge(thing, move), within) === undefined) continue;
      nextOf.set(edge, { edge: thing, move });
      led.add(thing);
      break;
    }
  }
  const done = new Set<Edge>();
  const follow = (first: Edge): Chain => {
    const line: [Edge, ...Edge[]] = [first];
    done.add(first);
    let [at, move]: [Edge, Point] = [first, [0, 0]];
    for (;;) {
      const next = nextOf.get(at);
      if (next === undefined) return { edges: line, ring: false };
      if (next.edge === first) return { edges: line, ring: true };
      move = plus(move, next.move);
      line.push(shiftedEdge(next.edge, move));
      done.add(next.edge);
      at = next.edge;
    }
  };
  // Lines with a beginning first; what they leave are rings.
  return [...edges.filter((edge) => !led.has(edge)), ...edges].flatMap((edge) =>
    done.has(edge) ? [] : [follow(edge)],
  );
}
