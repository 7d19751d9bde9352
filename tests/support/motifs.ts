import type { Piece } from '../../src/geometry/path.ts';
import { findMotif } from '../../src/motif/library.ts';
import type { Cell, Motif } from '../../src/motif/motif.ts';
import { drawMotif } from '../../src/motif/record.ts';
import { fillSettings } from '../../src/motif/settings.ts';

export function needMotif(name: string): Motif {
  const motif = findMotif(name);
  if (motif === undefined) throw new Error(`no motif ${name}`);
  return motif;
}

/** Settings of a motif, those left out at their defaults; throws where a test gives wrong ones. */
export function settingsOf(motif: Motif, given: Record<string, number> = {}): Record<string, number> {
  const filled = fillSettings(motif, given);
  if (!filled.ok) throw new Error(filled.issues.map((issue) => issue.says).join('; '));
  return filled.value;
}

export const drawNamed = (name: string, cell: Cell, given: Record<string, number> = {}) =>
  drawMotif(needMotif(name), cell, settingsOf(needMotif(name), given));

/** All pieces of a motif, whatever their part. */
export const piecesOf = (name: string, cell: Cell, given: Record<string, number> = {}): Piece[] =>
  drawNamed(name, cell, given).flatMap(({ pieces }) => pieces);

/** Every combination of the least, the usual and the greatest value of a motif's parameters. */
export function extremes(motif: Motif): Record<string, number>[] {
  return Object.entries(motif.parameters).reduce<Record<string, number>[]>(
    (found, [name, { min, max, default: usual }]) =>
      found.flatMap((settings) => [min, usual, max].map((value) => ({ ...settings, [name]: value }))),
    [{}],
  );
}
