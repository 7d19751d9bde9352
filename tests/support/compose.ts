import { compose } from '../../src/compose/compose.ts';
import type { Drawing, Region } from '../../src/compose/drawing.ts';
import type { Piece } from '../../src/geometry/path.ts';
import { shifted } from '../../src/geometry/transform.ts';
import type { Part } from '../../src/motif/motif.ts';
import { type LayoutWish, makeLayout } from './layout.ts';
import { needMotif, settingsOf } from './motifs.ts';

export interface Names {
  field: string;
  border?: string;
  corner?: string;
}

/** Composes a made-up layout with motifs by name, their settings left alone. */
export function composeNamed(wish: Partial<LayoutWish>, names: Names): Promise<Drawing> {
  const field = needMotif(names.field);
  const border = names.border === undefined ? undefined : needMotif(names.border);
  const corner = names.corner === undefined ? undefined : needMotif(names.corner);
  const chosen = {
    field: { settings: settingsOf(field) },
    border: {
      settings: border === undefined ? {} : settingsOf(border),
      corner: { settings: corner === undefined ? {} : settingsOf(corner) },
    },
  };
  return compose(makeLayout(wish), chosen, {
    field,
    ...(border === undefined ? {} : { border }),
    ...(corner === undefined ? {} : { corner }),
  });
}

/** Every piece of a region at every place it is painted. */
export function painted({ pieces, at }: Region): Piece[] {
  const found: Piece[] = [];
  for (let i = 0; i < at.length; i += 2) for (const piece of pieces) found.push(shifted(piece, at[i]!, at[i + 1]!));
  return found;
}

export const paintedIn = (drawing: Drawing, wanted: (region: Region) => boolean): Piece[] =>
  drawing.regions.filter(wanted).flatMap(painted);

export const partsOf = (drawing: Drawing): Part[] => [...new Set(drawing.regions.map(({ part }) => part))];
