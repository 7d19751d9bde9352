import type { FloorRoom } from '../../site/floor-room.ts';
import { reachOf } from '../../site/floor-room.ts';
import type { RoomView } from '../../site/room-view.ts';

/** The room as it is seen from the crossing of the centre lines. */
export const viewOfFloor = ({ room, openings, obstacles }: FloorRoom): RoomView => ({
  corners: room,
  openings,
  obstacles,
  over: [],
  axis: { near: [0, reachOf(room, 'near').centre], far: [0, -reachOf(room, 'far').centre] },
});
