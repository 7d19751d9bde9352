import type { FriezeGroup, PlaneGroup } from '../../../src/motif/symmetry/groups.ts';

export type System = 'oblique' | 'rectangular' | 'square' | 'hexagonal';

export interface PlaneRow {
  /** Number and symbol in the International Tables for Crystallography, volume A. */
  number: number;
  symbol: PlaneGroup;
  system: System;
  /** Points of one general position in the cell of the tables. */
  positions: number;
  /** A place off every mirror line and centre of turning, in shares of the cell: in general position. */
  place: readonly [number, number];
  /** Highest turn. */
  turn: number;
  /** Conway's symbol of the orbifold. */
  orbifold: string;
  /** Operations that make the group, besides translations, in the coordinates of the tables. */
  generators: string[];
  /** The layer group of the same symbol (International Tables, volume E), which holds these operations and no others. */
  layer: number;
  /** The space group of the pattern drawn on polar ground, from which moyo knows it. */
  space: number;
}

const plane = (
  number: number,
  symbol: PlaneGroup,
  system: System,
  positions: number,
  turn: number,
  orbifold: string,
  generators: string,
  layer: number,
  space: number,
): PlaneRow => ({
  ...{ number, symbol, system, positions, turn, orbifold, layer, space },
  place: symbol === 'p4gm' ? [0.22, 0.1] : [0.38, 0.11],
  generators: generators === '' ? [] : generators.split('; '),
});

/**
 * The 17 plane groups. Numbers, symbols, positions and operations: International Tables for Crystallography, volume A;
 * layer groups: volume E. Orbifolds: J. H. Conway's notation. Space groups: by moyo 0.15.0.
 */
export const PLANE_TABLE: PlaneRow[] = [
  plane(1, 'p1', 'oblique', 1, 1, 'o', '', 1, 1),
  plane(2, 'p2', 'oblique', 2, 2, '2222', '-x,-y', 3, 3),
  plane(3, 'pm', 'rectangular', 2, 1, '**', '-x,y', 11, 6),
  plane(4, 'pg', 'rectangular', 2, 1, 'xx', '-x,y+1/2', 12, 7),
  plane(5, 'cm', 'rectangular', 4, 1, '*x', '-x,y; x+1/2,y+1/2', 13, 8),
  plane(6, 'p2mm', 'rectangular', 4, 2, '*2222', '-x,-y; -x,y', 23, 25),
  plane(7, 'p2mg', 'rectangular', 4, 2, '22*', '-x,-y; -x+1/2,y', 24, 28),
  plane(8, 'p2gg', 'rectangular', 4, 2, '22x', '-x,-y; -x+1/2,y+1/2', 25, 32),
  plane(9, 'c2mm', 'rectangular', 8, 2, '2*22', '-x,-y; -x,y; x+1/2,y+1/2', 26, 35),
  plane(10, 'p4', 'square', 4, 4, '442', '-y,x', 49, 75),
  plane(11, 'p4mm', 'square', 8, 4, '*442', '-y,x; -x,y', 55, 99),
  plane(12, 'p4gm', 'square', 8, 4, '4*2', '-y,x; -x+1/2,y+1/2', 56, 100),
  plane(13, 'p3', 'hexagonal', 3, 3, '333', '-y,x-y', 65, 143),
  plane(14, 'p3m1', 'hexagonal', 6, 3, '*333', '-y,x-y; -y,-x', 69, 156),
  plane(15, 'p31m', 'hexagonal', 6, 3, '3*3', '-y,x-y; y,x', 70, 157),
  plane(16, 'p6', 'hexagonal', 6, 6, '632', '-y,x-y; -x,-y', 73, 168),
  plane(17, 'p6mm', 'hexagonal', 12, 6, '*632', '-y,x-y; -x,-y; -y,-x', 77, 183),
];

export interface FriezeRow {
  symbol: FriezeGroup;
  orbifold: string;
  place: readonly [number, number];
  /** Mirror across the run, mirror along it, half turn, glide along it (or what an along mirror makes of half a repeat). */
  has: { across: boolean; along: boolean; halfTurn: boolean; glide: boolean };
  /** Operations in one repeat. */
  positions: number;
  generators: string[];
  space: number;
}

const frieze = (
  symbol: FriezeGroup,
  orbifold: string,
  flags: string,
  positions: number,
  generators: string[],
  space: number,
): FriezeRow => {
  const [across, along, halfTurn, glide] = [...flags].map((flag) => flag !== '.') as [
    boolean,
    boolean,
    boolean,
    boolean,
  ];
  return {
    symbol,
    orbifold,
    place: [0.12, 0.19],
    has: { across, along, halfTurn, glide },
    positions,
    generators,
    space,
  };
};

/**
 * The 7 frieze groups, x along the run. Symbols: International Tables for Crystallography, volume E. What each has: the letters V, H,
 * R and G of the encyclopaedia article "Frieze group". Orbifolds: J. H. Conway's notation, i for infinity. Space groups: by moyo 0.15.0.
 */
export const FRIEZE_TABLE: FriezeRow[] = [
  frieze('p1', 'ii', '....', 1, [], 1),
  frieze('p11g', 'ix', '...G', 2, ['x+1/2,-y'], 7),
  frieze('p1m1', '*ii', 'V...', 2, ['-x,y'], 6),
  frieze('p11m', 'i*', '.H.G', 2, ['x,-y'], 6),
  frieze('p2', '22i', '..R.', 2, ['-x,-y'], 3),
  frieze('p2mg', '2*i', 'V.RG', 4, ['-x,-y', 'x+1/2,-y'], 28),
  frieze('p2mm', '*22i', 'VHRG', 4, ['-x,-y', '-x,y'], 25),
];
