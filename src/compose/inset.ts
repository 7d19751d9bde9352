import type { Layout } from '../fit/layout.ts';
import type { Box } from '../geometry/path.ts';
import { shifted } from '../geometry/transform.ts';
import type { Drawn } from '../motif/motif.ts';
import { drawMotif } from '../motif/record.ts';
import type { Chosen } from './around.ts';
import type { Region } from './drawing.ts';
import { familiesOf } from './families.ts';
import { composeField } from './field.ts';
import type { Finish } from './finish.ts';

/** The largest cell of the motif's own ratio that a share of the room holds. */
function cellIn(room: { across: number; along: number }, share: number, ratio: number) {
  const across = Math.min(room.across, room.along / ratio) * share;
  return { across, along: across * ratio };
}

/** A motif inside the motif: one in every room that lies wholly in the field; none is cut. */
export function composeInset(
  layout: Layout,
  field: Box,
  host: Chosen,
  inset: Chosen & { size: number },
  finish: Finish,
): Region[] {
  const rooms = host.motif.rooms?.(layout.pitch, host.settings) ?? [];
  return rooms.flatMap((room) => {
    const cell = cellIn(room, inset.size, inset.motif.ratio);
    const bare = drawMotif(inset.motif, cell, inset.settings).flatMap((one) => one.pieces);
    const drawn = finish.unit([{ part: 'inset', pieces: bare }], 'motif').map(({ part, pieces }): Drawn => {
      return { part, pieces: pieces.map((piece) => shifted(piece, room.x, room.y)) };
    });
    return composeField(layout, field, familiesOf({ drawn, lattice: host.motif.lattice })).filter(({ cut }) => !cut);
  });
}
