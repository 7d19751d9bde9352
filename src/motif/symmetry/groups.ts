/** The 17 plane groups in the order and with the symbols of the International Tables for Crystallography, volume A. */
export const PLANE_GROUPS = [
  'p1',
  'p2',
  'pm',
  'pg',
  'cm',
  'p2mm',
  'p2mg',
  'p2gg',
  'c2mm',
  'p4',
  'p4mm',
  'p4gm',
  'p3',
  'p3m1',
  'p31m',
  'p6',
  'p6mm',
] as const;
export type PlaneGroup = (typeof PLANE_GROUPS)[number];

/**
 * The 7 frieze groups; x runs along the border. Symbols as in the International Tables for Crystallography, volume E, the
 * half-turn group written short: `m` in the second place mirrors across the run, `m` or `g` in the third mirrors or glides along it.
 */
export const FRIEZE_GROUPS = ['p1', 'p11g', 'p1m1', 'p11m', 'p2', 'p2mg', 'p2mm'] as const;
export type FriezeGroup = (typeof FRIEZE_GROUPS)[number];
