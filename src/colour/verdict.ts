import { contrast } from './contrast.ts';
import { difference, labOf } from './difference.ts';
import { faded } from './fade.ts';
import { DEFICIENCIES, type Deficiency, seenWith } from './vision.ts';

/** Two colours side by side: what was measured of them, and whether a pattern of them can be seen. */
export interface Verdict {
  /** WCAG 2, 1 to 21. */
  contrast: number;
  /** CIEDE2000. */
  difference: number;
  /** Of CIELAB lightness, 0 to 100; in dim light it is nearly all that an eye has. */
  lightness: number;
  /** CIEDE2000 as it is seen with each deficiency, and after fading. */
  seen: Record<Deficiency, number>;
  faded: number;
  reads: 'well' | 'weakly' | 'hardly';
  /** Where it reads less than well, in the person's words. */
  because: string[];
}

/** How far two colours fade before they are looked at again, as a share. */
export const FADING = 0.3;

/**
 * From here on a pattern reads well, and below the second number it is hardly seen, for someone standing in the room. A rule of the thumb tried on the samples, no
 * source; floors are not text, and no conformance to any standard follows.
 */
const LIMITS = {
  difference: [20, 10],
  lightness: [15, 7],
  seen: [12, 6],
  faded: [12, 6],
} as const;

const WITH: Record<Deficiency, string> = {
  protan: 'to people who see no red',
  deutan: 'to people who see no green',
  tritan: 'to people who see no blue',
};

/**
 * By how much two colours read well: the least of what was measured, each as a multiple of its limit. 1 or more exactly where they read well.
 */
export function marginOf({ difference, lightness, seen, faded, reads }: Verdict): number {
  const margin = Math.min(
    difference / LIMITS.difference[0],
    lightness / LIMITS.lightness[0],
    ...DEFICIENCIES.map((deficiency) => seen[deficiency] / LIMITS.seen[0]),
    faded / LIMITS.faded[0],
  );
  return reads === 'well' ? Math.max(1, margin) : Math.min(margin, 1 - Number.EPSILON);
}

export function judgePair(one: string, other: string): Verdict {
  const apart = (a: string, b: string): number => difference(labOf(a), labOf(b));
  const seen = Object.fromEntries(
    DEFICIENCIES.map((deficiency) => [deficiency, apart(seenWith(deficiency, one), seenWith(deficiency, other))]),
  ) as Record<Deficiency, number>;
  const measured = {
    contrast: contrast(one, other),
    difference: apart(one, other),
    lightness: Math.abs(labOf(one)[0] - labOf(other)[0]),
    seen,
    faded: apart(faded(one, FADING), faded(other, FADING)),
  };
  const looks: [value: number, limits: readonly [number, number], where: string][] = [
    [measured.difference, LIMITS.difference, 'from across the room'],
    [measured.lightness, LIMITS.lightness, 'in dim light'],
    ...DEFICIENCIES.map((deficiency): [number, readonly [number, number], string] => [
      seen[deficiency],
      LIMITS.seen,
      WITH[deficiency],
    ]),
    [measured.faded, LIMITS.faded, 'when they have faded'],
  ];
  const worst = looks.some(([value, [, hardly]]) => value < hardly);
  const because = looks
    .filter(([value, [well, hardly]]) => value < (worst ? hardly : well))
    .map(([, , where]) => where);
  return { ...measured, reads: worst ? 'hardly' : because.length > 0 ? 'weakly' : 'well', because };
}
