import type { FriezeGroup, PlaneGroup } from './groups.ts';
import type { Basis } from './lattice.ts';
import type { Operation } from './operations.ts';
import { length } from './vector.ts';

type Reflection = Operation & { kind: 'mirror' | 'glide' };

const reflectionsOf = (operations: readonly Operation[]): Reflection[] =>
  operations.filter((operation): operation is Reflection => operation.kind !== 'turn');

const highestTurn = (operations: readonly Operation[]): number =>
  Math.max(...operations.map((operation) => (operation.kind === 'turn' ? operation.order : 1)));

/** The plane group by its turns, mirrors and glides (the usual questions, in the order of the International Tables). */
export function planeGroupOf(operations: readonly Operation[], lattice: Basis): PlaneGroup {
  const reflections = reflectionsOf(operations);
  const mirrors = reflections.filter(({ kind }) => kind === 'mirror').length;
  const centred = reflections.some((one) => one.centred);
  const plain = reflections.length === 0;
  switch (highestTurn(operations)) {
    case 1:
      if (plain) return 'p1';
      return centred ? 'cm' : mirrors > 0 ? 'pm' : 'pg';
    case 2:
      if (plain) return 'p2';
      return centred ? 'c2mm' : mirrors === 2 ? 'p2mm' : mirrors === 1 ? 'p2mg' : 'p2gg';
    case 3:
      if (plain) return 'p3';
      // Mirror lines run along the shortest translations, or square to them.
      return length(reflections[0]!.along) < 1.3 * length(lattice.a) ? 'p31m' : 'p3m1';
    case 4:
      if (plain) return 'p4';
      return reflections.some((one) => one.kind === 'mirror' && !one.centred) ? 'p4mm' : 'p4gm';
    default:
      return plain ? 'p6' : 'p6mm';
  }
}

/** The frieze group of a border that runs along x, from the operations of the same border repeated far apart along y. */
export function friezeGroupOf(operations: readonly Operation[]): FriezeGroup {
  const reflections = reflectionsOf(operations);
  const across = reflections.some((one) => Math.abs(one.axis[0]) < 0.5);
  const along = reflections.find((one) => Math.abs(one.axis[0]) > 0.5);
  if (highestTurn(operations) === 2) return along === undefined ? 'p2' : along.kind === 'glide' ? 'p2mg' : 'p2mm';
  if (across) return 'p1m1';
  return along === undefined ? 'p1' : along.kind === 'glide' ? 'p11g' : 'p11m';
}
