import { inches } from '../units/index.ts';

/** How an edge that people walk over may be made: upright, with a bevel at least so long, or not without a ramp. Lengths in mm. */
export type Edge = { way: 'upright' } | { way: 'bevel'; run: number } | { way: 'ramp' };

/** ADA Standards 303.2: up to here an edge may be upright. */
const UPRIGHT = inches(1 / 4);
/** ADA Standards 303.3: up to here it is bevelled, not steeper than 1 : 2; 303.4: above, it is a ramp. */
const BEVELLED = inches(1 / 2);
const SLOPE = 2;

/**
 * What the ADA Standards for Accessible Design (302.2, 303) ask of a change of level of this height, mm. They bind public places; at home
 * they are a measure of what trips people.
 */
export function edgeFor(height: number): Edge {
  if (height <= UPRIGHT + 1e-9) return { way: 'upright' };
  return height <= BEVELLED + 1e-9 ? { way: 'bevel', run: SLOPE * height } : { way: 'ramp' };
}

const LIMITS =
  'where the public walks, an edge up to 1/4 in (6 mm) may be upright and up to 1/2 in (13 mm) only with a slope of 1 in 2 (ADA Standards 302.2, 303). A good rule at home too.';

/** What to do about the edge, in a sentence or two; the limits alone where its height is not known. */
export function sayEdge(height: number | undefined, length: (mm: number) => string): string {
  if (height === undefined) return `Keep the edge low: ${LIMITS}`;
  const edge = edgeFor(height);
  const does = {
    upright: 'low enough to be left upright',
    bevel: `high enough to trip over: bevel it over at least ${edge.way === 'bevel' ? length(edge.run) : ''}`,
    ramp: 'too high for a bevel: take a thinner pad, or a flatter hem',
  }[edge.way];
  return `An edge of ${length(height)} is ${does}; ${LIMITS}`;
}
