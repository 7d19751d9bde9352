import { parseLength } from '../../units/index.ts';
import { type Claim, equal, type Proof, stated, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import type { RoomBorderEntry, WallEntry } from '../read/room-border.ts';

const FILE = 'marks.csv';
/** true_mm is written to 1 µm, mm. */
const WRITTEN = 0.0015;

export const proof: Proof = {
  claims: 'marks of every wall are its drawing: repeats, casings, strips',
  files: ['layout.json', 'marks.csv'],
  method: 'places of marks.csv against outlines of the plan',
  tolerance: '0.05 mm',
};

/** The marks of a room border are its drawing: every repeat, every casing, the strips, and the walls from end to end. */
export default function roomMarks(set: FileSet): Claim[] {
  const layout = set.layout();
  if (!layout.ok || layout.value.job.surface !== 'room-border') return [];
  const { roomBorder: room, job } = layout.value;
  const marks = set.marks();
  if (!marks.ok || !room)
    return [unproven(FILE, 'every mark of a wall lies on a line of the border', marks.ok ? 'no walls' : marks.says)];
  const rows = marks.value.filter(({ line }) => line !== 'span' && line !== 'check');
  const misread = rows.find(({ tape, true: at }) => {
    const read = parseLength(tape, job.units);
    return !read.ok || Math.abs(read.mm - at) > job.step / 2 + WRITTEN;
  });
  let stray = '';
  let off = 0;
  for (const row of rows) {
    const found = /^(off-)?wall-(\d+)(-back)?$/.exec(row.line);
    const wall = room.walls[Number(found?.[2]) - 1];
    if (!found || !wall) {
      stray ||= `${row.line} is no line of this room`;
      continue;
    }
    const due = found[1] ? [wall.strip, wall.strip + room.width] : linesOf(room, wall);
    const at = found[3] ? -row.true : row.true;
    off = Math.max(off, Math.min(Infinity, ...due.map((one) => Math.abs(one - at))));
  }
  const lacking = room.walls.flatMap((wall, at) => {
    const name = `wall-${at + 1}`;
    const made = rows
      .filter(({ line }) => line === name || line === `${name}-back`)
      .map(({ line, true: one }) => (line === name ? one : -one));
    const strips = rows.filter(({ line }) => line === `off-${name}`).map((row) => row.true);
    const missing = (due: number[], all: number[]) =>
      due.some((one) => Math.abs(one) > 1e-6 && !all.some((mark) => Math.abs(mark - one) <= WRITTEN));
    return missing(needed(room, wall, at), made) || missing([wall.strip, wall.strip + room.width], strips)
      ? [wall.name]
      : [];
  });
  return [
    equal(FILE, 'every mark is rounded on its own', misread ? `${misread.tape} of ${misread.line}` : 'all', 'all'),
    stated(
      FILE,
      'every mark of a wall lies on a line of the border',
      stray === '' && off <= WRITTEN,
      stray || off,
      WRITTEN,
    ),
    equal(FILE, 'no repeat, strip, casing or wall lacks its marks', lacking[0] ?? 'none', 'none'),
  ];
}

/** Places along a wall that may be marked, mm. */
function linesOf(room: RoomBorderEntry, wall: WallEntry): number[] {
  const at = room.walls.indexOf(wall);
  return [...needed(room, wall, at), wall.from, wall.to, wall.from - room.width, wall.to + room.width];
}

/** Places along a wall that must be marked, mm. */
function needed({ walls, doors }: RoomBorderEntry, wall: WallEntry, at: number): number[] {
  return [
    wall.length,
    ...wall.painted.flatMap(({ first, count }) =>
      Array.from({ length: count + 1 }, (_, n) => wall.from + (first + n) * wall.pitch),
    ),
    ...wall.bands.flat(),
    ...doors.filter((door) => walls[door.wall] === walls[at]).flatMap(({ starts, ends }) => [starts, ends]),
  ];
}
