import type { MarkRow } from '../read/marks.ts';
import type { RoomBorderEntry } from '../read/room-border.ts';
import type { GuideLines } from './guide-lines.ts';
import { beside } from './room-walls.ts';

/** Takes every mark of a room border to the plan: those along a wall are squared off it, those off it run along it. */
export function roomGuideLines(rows: readonly MarkRow[], { walls }: RoomBorderEntry): GuideLines {
  const lines: GuideLines = { x: [], y: [] };
  for (const row of rows) {
    const found = /^(off-)?wall-(\d+)(-back)?$/.exec(row.line);
    const wall = walls[Number(found?.[2]) - 1];
    if (!found || !wall || Number.isNaN(row.true)) continue;
    const [x, y] = found[1] ? beside(wall, 0, row.true) : beside(wall, found[3] ? -row.true : row.true, 0);
    const level = wall.heading % 2 === 1;
    if (level === (found[1] !== undefined)) lines.y.push(y);
    else lines.x.push(x);
  }
  const sorted = (values: number[]) => [...new Set(values)].sort((a, b) => a - b);
  return { x: sorted(lines.x), y: sorted(lines.y) };
}
