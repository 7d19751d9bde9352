import type { Drawing } from '../../compose/drawing.ts';
import { boxHeight, boxWidth } from '../../geometry/measure.ts';
import type { Job } from '../../job/job.ts';
import type { Raster } from '../../picture/raster.ts';
import type { Layers } from '../../preview/layers.ts';
import { shownWork } from '../../write/colourways/shown.ts';
import { outline } from '../outline.ts';

/** Finer than this shows nothing more, mm. */
const FINEST = 0.8;

const channels = (hex: string): [number, number, number] => {
  const all = Number.parseInt(hex.slice(1), 16);
  return [all >> 16, (all >> 8) & 255, all & 255];
};

/** For each pixel the number of the paint nearest to it, 0 where there is hardly any. */
function shapesOf({ width, height, data }: Raster, paints: readonly string[]): Uint8Array {
  const colours = paints.map(channels);
  const shapes = new Uint8Array(width * height);
  for (let at = 0; at < shapes.length; at++) {
    const n = 4 * at;
    if (data[n + 3]! < 128) continue;
    let [best, least] = [0, Number.POSITIVE_INFINITY];
    for (const [which, [r, g, b]] of colours.entries()) {
      const away = (data[n]! - r) ** 2 + (data[n + 1]! - g) ** 2 + (data[n + 2]! - b) ** 2;
      if (away < least) [best, least] = [which, away];
    }
    shapes[at] = best + 1;
  }
  return shapes;
}

/**
 * The work from straight above, coat over coat, as this browser draws it.
 * @param colours the colour of each part
 * @param most pixels of the whole picture, at most
 */
export async function layersHere(drawing: Drawing, job: Job, colours: Job['colours'], most: number): Promise<Layers> {
  const { box, ground, regions } = await shownWork(drawing, job);
  const [wide, high] = [boxWidth(box), boxHeight(box)];
  const wished = Math.max(FINEST, Math.sqrt((wide * high) / most));
  const width = Math.max(1, Math.round(wide / wished));
  const step = wide / width;
  const height = Math.max(1, Math.round(high / step));
  const hex = (part: keyof Job['colours']): string => job.palette[colours[part]]!;
  const drawn = (
    draw: (pen: OffscreenCanvasRenderingContext2D, at: (x: number, y: number) => void) => void,
  ): Raster => {
    const pen = new OffscreenCanvas(width, height).getContext('2d', { willReadFrequently: true })!;
    draw(pen, (x, y) =>
      pen.setTransform(
        width / wide,
        0,
        0,
        height / high,
        ((x - box.left) * width) / wide,
        ((y - box.top) * height) / high,
      ),
    );
    return { width, height, data: pen.getImageData(0, 0, width, height).data };
  };
  const pattern = drawn((pen, at) => {
    for (const region of regions) {
      const path = outline(region.pieces);
      pen.fillStyle = hex(region.part);
      for (let n = 0; n < region.at.length; n += 2) {
        at(region.at[n]!, region.at[n + 1]!);
        pen.fill(path);
      }
    }
  });
  return {
    width,
    height,
    step,
    box,
    ground: drawn((pen, at) => {
      at(0, 0);
      pen.fillStyle = hex('ground');
      pen.fill(outline(ground), 'evenodd');
    }),
    pattern,
    shapes: shapesOf(pattern, [...new Set(regions.map(({ part }) => hex(part)))]),
  };
}
