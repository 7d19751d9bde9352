import type { Motifs } from '../../compose/compose.ts';
import type { Drawing } from '../../compose/drawing.ts';
import type { Layout } from '../../fit/layout.ts';
import type { Job } from '../../job/job.ts';
import type { FloorRoom } from '../../site/floor-room.ts';
import { writePlan } from '../plan.ts';
import { type Figure, PAGE_WIDTH } from './block.ts';

/** The largest the plan may stand on the first page, mm, and the lettering it should have there. */
const ROOM = { tall: { across: 100, along: 176 }, wide: { across: PAGE_WIDTH, along: 126 } };
const LETTERING = 2.7;

export const isTall = ({ overall }: Layout): boolean => overall.along > overall.across;

/** The plan drawn as large as the page allows, its lettering large enough to read there. */
export async function planFigure(
  drawing: Drawing,
  layout: Layout,
  job: Job,
  motifs: Motifs,
  floor?: FloorRoom,
): Promise<Figure> {
  const room = ROOM[isTall(layout) ? 'tall' : 'wide'];
  const longSide = Math.max(layout.overall.across, layout.overall.along);
  let lines = 60;
  for (let round = 0; ; round++) {
    const svg = await writePlan(drawing, layout, job, motifs, { key: false, lines, floor });
    const [, width, height] = / width="([\d.]+)mm" height="([\d.]+)mm"/.exec(svg)!.map(Number) as [
      number,
      number,
      number,
    ];
    const scale = Math.min(room.across / width, room.along / height);
    const lettering = (longSide / lines) * scale;
    if (round === 3 || lettering >= LETTERING * 0.97)
      return { kind: 'figure', svg, says: `${job.title}: plan`, share: (width * scale) / PAGE_WIDTH };
    lines *= lettering / LETTERING;
  }
}
