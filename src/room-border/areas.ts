import type { Motifs } from '../fit/problem.ts';
import type { Box } from '../geometry/path.ts';
import type { Job } from '../job/job.ts';
import { besideWall, type RoomOutline } from '../site/walls-outline.ts';
import type { Area } from '../stencil/area.ts';
import type { Guides, Ruling } from '../stencil/guide.ts';
import { type Axis, makePatch, type Placed } from '../stencil/patch.ts';
import { placedOf, single } from '../stencil/placed.ts';
import type { ShapeBook } from '../stencil/shape.ts';
import type { Work } from '../stencil/work.ts';
import { reversesIn } from './compose.ts';
import { bandBox, cornerBox } from './footprint.ts';
import type { RoomLayout } from './layout.ts';

/** Nearer than this, mm, a piece lies in a run or a corner. */
const TOUCH = 1e-4;

const holds = (box: Box, { centre: [x, y] }: Placed): boolean =>
  x >= box.left - TOUCH && x <= box.right + TOUCH && y >= box.top - TOUCH && y <= box.bottom + TOUCH;

/** What of a room's border is cut: the layout, its walls, and how the border goes round. */
export interface RoomFloor {
  outline: RoomOutline;
  layout: RoomLayout;
  job: Pick<Job, 'border'>;
  motifs: Partial<Motifs>;
}

/** The run of every wall; in two halves where the border reverses at its middle. */
function wallAreas({ outline, layout, job, motifs }: RoomFloor, { name }: Work, placed: Placed[]): Area[] {
  return layout.runs.flatMap((run): Area[] => {
    if (run.repeats === 0) return [];
    const wall = outline.walls[run.wall]!;
    const box = bandBox(outline, layout, run.wall, run.from, run.to);
    const level = wall.heading % 2 === 1;
    const cells: Axis = { start: level ? box.left : box.top, pitch: run.pitch, repeats: true };
    const [x, y] = level ? [cells, single(box.top, box.bottom)] : [single(box.left, box.right), cells];
    const ends: [number, number] = level ? [box.left, box.right] : [box.top, box.bottom];
    const lattice = { start: ends[0], step: run.pitch, from: ends[0], to: ends[1] };
    const repeats: Ruling = { fixed: ends, lattice };
    const edges: Ruling = { fixed: level ? [box.top, box.bottom] : [box.left, box.right] };
    const guides: Guides = level ? { x: repeats, y: edges } : { x: edges, y: repeats };
    const area = (pieces: Placed[], half?: Area['half']): Area[] =>
      pieces.length === 0
        ? []
        : [
            {
              family: 'border',
              place: `wall ${run.wall + 1}`,
              ...(half ? { half } : {}),
              name,
              patch: makePatch(x, y, pieces),
              guides,
            },
          ];
    const here = placed.filter((piece) => holds(box, piece));
    if (!reversesIn(job, motifs)) return area(here);
    const middle = besideWall(wall, (run.from + run.to) / 2, 0)[level ? 0 : 1];
    const onward = wall.heading === 1 || wall.heading === 2 ? 1 : -1;
    const isFirst = ({ centre }: Placed) => onward * (centre[level ? 0 : 1] - middle) < 0;
    return [
      ...area(here.filter(isFirst), 'first'),
      ...area(
        here.filter((piece) => !isFirst(piece)),
        'second',
      ),
    ];
  });
}

/** Every corner on its own. */
function blockAreas({ outline, layout, job }: RoomFloor, { name }: Work, placed: Placed[]): Area[] {
  return layout.corners.flatMap(({ wall, painted }): Area[] => {
    const box = cornerBox(outline, layout, wall);
    const here = painted ? placed.filter((piece) => holds(box, piece)) : [];
    if (here.length === 0) return [];
    const guides: Guides = { x: { fixed: [box.left, box.right] }, y: { fixed: [box.top, box.bottom] } };
    return [
      {
        family: 'corner',
        place: `corner ${wall + 1}`,
        ...(job.border.turn === 'block' ? {} : { blockless: true }),
        name,
        patch: makePatch(single(box.left, box.right), single(box.top, box.bottom), here),
        guides,
      },
    ];
  });
}

/** The areas of one element of a room's border. */
export function roomAreas(floor: RoomFloor, work: Work, book: ShapeBook): Area[][] {
  const placed = placedOf(work.regions, book);
  return [work.group === 'corner' ? blockAreas(floor, work, placed) : wallAreas(floor, work, placed)];
}
