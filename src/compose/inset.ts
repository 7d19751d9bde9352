import type { Layout } from '../fit/layout.ts';
import type { Box } from '../geometry/path.ts';
import { shifted } from '../geometry/transform.ts';
import type { Drawn } from '../motif/motif.ts';
import { drawMotif } from '../motif/record.ts';
import type { Chosen } from './around.ts';
import type { Region } from './drawing.ts';
import { familiesOf } from './families.ts';
import { composeField } from './field.ts';

/** The largest cell of the motif's own ratio that a share of the room holds. */
function cellIn(room: { across: number; along: number }, share: number, ratio: number) {
  const across = Math.min(room.across, room.along / ratio) * share;
  return { across, along: across * ratio };
}

/** A motif inside the motif: one in every room that lies wholly in the field; none is cut. */
export function composeInset(layout: Layout, field: Box, host: Chosen, inset: Chosen & { size: number }): Region[] {
  const rooms = host.motif.rooms?.(layout.pitch, host.settings) ?? [];
  return rooms.flatMap((room) => {
    const cell = cellIn(room, inset.size, inset.motif.ratio);
    const pieces = drawMotif(inset.motif, cell, inset.settings).flatMap((one) => one.pieces);
    const drawn: Drawn[] = [{ part: 'inset', pieces: pieces.map((piece) => shifted(piece, room.x, room.y)) }];
    return composeField(layout, field, familiesOf({ drawn, lattice: host.motif.lattice })).filter(({ cut }) => !cut);
  });
}
