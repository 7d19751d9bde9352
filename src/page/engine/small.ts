import type { Drawing } from '../../compose/drawing.ts';
import { asDrawn } from '../../compose/finish.ts';
import { composeWork } from '../../compose/work.ts';
import type { Box, Point } from '../../geometry/path.ts';
import type { Job } from '../../job/job.ts';
import { faceFinder } from '../../lettering/faces.ts';
import type { Assets } from '../../pipeline.ts';
import { outlineOf } from '../../site/walls.ts';
import { fillRegions, inPlan, type Onto, trace } from '../plan/regions.ts';
import { ASKED, fitOnce } from './fitted.ts';

/** A layout as it is painted, small; all layouts of a job to one scale. */
export interface Small {
  picture: ImageBitmap;
  /** It lies on its side, the near end at the left. */
  turned: boolean;
}

/** Work that is so much longer than wide is laid on its side. */
const LONG = 1.5;

/** What there is to paint, inside which outline and clear of what. */
interface Scene {
  job: Job;
  drawing: Drawing;
  box: Box;
  floor?: Point[];
  clear: Point[][];
}

async function sceneOf(
  text: string,
  rank: number,
  assets: Assets,
): Promise<{ scene: Scene; most: number } | undefined> {
  const fitted = await fitOnce(text, ASKED, assets);
  if (!fitted.ok) return undefined;
  const { kind, value } = fitted.value;
  const size = ({ left, right, top, bottom }: Box): number => Math.max(right - left, bottom - top);
  if (kind === 'room border') {
    const layout = value.fit.layouts[rank];
    if (!layout) return undefined;
    const { composeRoom } = await import('../../room-border/compose.ts');
    const { job, outline: room, motifs } = value;
    const drawing = await composeRoom(room, layout, job, motifs, asDrawn);
    const scene = { job, drawing, box: room.box, floor: room.walls.map(({ start }) => start), clear: [] };
    return { scene, most: size(room.box) };
  }
  const layout = value.fit.layouts[rank];
  if (!layout) return undefined;
  const { job, site, motifs } = value;
  const drawn = await composeWork(layout, job, motifs, faceFinder(assets), asDrawn);
  if (!drawn.ok) return undefined;
  const { floor } = site;
  if (floor) {
    const corners = outlineOf(floor.painted);
    const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)];
    const box = { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
    const clear = floor.obstacles.map((one) => one.outline);
    return { scene: { job, drawing: drawn.value, box, floor: corners, clear }, most: size(box) };
  }
  const most = Math.max(...value.fit.layouts.map(({ work }) => Math.max(work.across, work.along)));
  return { scene: { job, drawing: drawn.value, box: drawn.value.work, clear: [] }, most };
}

function outlined(pen: Onto['pen'], points: readonly Point[]): void {
  pen.beginPath();
  trace(pen, points);
  pen.closePath();
}

function paint(onto: Onto, { job, drawing, box, floor, clear }: Scene): void {
  const { pen } = onto;
  const colour = (part: keyof Job['colours']): string => job.palette[job.colours[part]]!;
  inPlan(onto);
  if (floor) {
    outlined(pen, floor);
    pen.clip();
  }
  pen.fillStyle = colour('ground');
  pen.fillRect(box.left, box.top, box.right - box.left, box.bottom - box.top);
  fillRegions(onto, drawing.regions, ({ part }) => colour(part));
  pen.globalCompositeOperation = 'destination-out';
  for (const one of clear) {
    outlined(pen, one);
    pen.fill();
  }
}

/** A quarter turn clockwise. */
function onItsSide(upright: OffscreenCanvas): OffscreenCanvas {
  const turned = new OffscreenCanvas(upright.height, upright.width);
  const pen = turned.getContext('2d')!;
  pen.translate(upright.height, 0);
  pen.rotate(Math.PI / 2);
  pen.drawImage(upright, 0, 0);
  return turned;
}

/**
 * A small picture of one layout, counted from 0.
 * @param long pixels of the longest side of the largest layout
 * @returns nothing where there is no such layout, or no way to draw here
 */
export async function smallOf(text: string, rank: number, long: number, assets: Assets): Promise<Small | undefined> {
  if (typeof OffscreenCanvas === 'undefined') return undefined;
  const found = await sceneOf(text, rank, assets);
  if (!found) return undefined;
  const { scene, most } = found;
  const { box } = scene;
  const [across, along] = [box.right - box.left, box.bottom - box.top];
  const scale = long / most;
  const turned = along > LONG * across;
  const size = { width: Math.max(1, Math.round(across * scale)), height: Math.max(1, Math.round(along * scale)) };
  const upright = new OffscreenCanvas(size.width, size.height);
  const pen = upright.getContext('2d')!;
  paint({ pen, ratio: 1, view: { scale, x: -box.left * scale, y: -box.top * scale }, size }, scene);
  const canvas = turned ? onItsSide(upright) : upright;
  // Read from, it is painted here and now; otherwise whoever shows the picture would have to.
  canvas.getContext('2d')!.getImageData(0, 0, 1, 1);
  return { picture: canvas.transferToImageBitmap(), turned };
}
