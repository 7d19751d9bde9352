import type { Pair } from '../../fit/layout.ts';
import { boxHeight, boxWidth } from '../../geometry/measure.ts';
import type { RoomOutline } from '../../site/walls-outline.ts';

/** The room over everything, mm. */
export const boxSize = ({ box }: RoomOutline): Pair => ({ across: boxWidth(box), along: boxHeight(box) });
