import type { Drawing } from '../compose/drawing.ts';
import { boxHeight, boxWidth } from '../geometry/measure.ts';
import type { Box } from '../geometry/path.ts';
import type { Job } from '../job/job.ts';
import type { Raster } from '../picture/raster.ts';
import { groundText, type Shown, shownWork } from '../write/colourways/shown.ts';
import { formatMm } from '../write/number.ts';
import { regionText } from '../write/path.ts';
import { element } from '../write/svg.ts';
import type { Grid } from './noise.ts';

/** The work as it is painted, coat over coat, in pixels of the floor. */
export interface Layers extends Grid {
  /** What it shows, in the coordinates of the drawing, mm. */
  box: Box;
  /** The ground, opaque where there is work. */
  ground: Raster;
  /** The pattern over it, opaque where it is painted. */
  pattern: Raster;
  /** For each pixel a number for its paint, 0 where there is none: those beside each other with different ones have an edge between them. */
  shapes: Uint8Array;
}

/** Colours with their opacity, from colours that opacity has been multiplied into. */
function straight(pixels: Uint8Array): Uint8Array {
  const made = new Uint8Array(pixels);
  for (let at = 0; at < made.length; at += 4) {
    const opacity = made[at + 3]!;
    if (opacity === 0 || opacity === 255) continue;
    for (let n = at; n < at + 3; n++) made[n] = Math.min(255, Math.round((made[n]! * 255) / opacity));
  }
  return made;
}

async function drawn(content: string, { box }: { box: Box }, { width, height }: Grid): Promise<Raster> {
  const { Resvg } = await import('@resvg/resvg-js');
  const view = [box.left, box.top, boxWidth(box), boxHeight(box)].map(formatMm).join(' ');
  const svg = element(
    'svg',
    { xmlns: 'http://www.w3.org/2000/svg', width, height, viewBox: view, preserveAspectRatio: 'none' },
    content,
  );
  const found = new Resvg(svg, { font: { loadSystemFonts: false } }).render();
  return { width: found.width, height: found.height, data: straight(found.pixels) };
}

/** Finer than this shows nothing more, mm. */
const FINEST = 0.8;

/**
 * Draws the work from straight above.
 * @param colours the colour of each part
 * @param most pixels of the whole picture, at most
 */
export async function layersOf(drawing: Drawing, job: Job, colours: Job['colours'], most: number): Promise<Layers> {
  const shown: Shown = await shownWork(drawing, job);
  const { box, regions } = shown;
  const [wide, high] = [boxWidth(box), boxHeight(box)];
  const wished = Math.max(FINEST, Math.sqrt((wide * high) / most));
  const width = Math.max(1, Math.round(wide / wished));
  const step = wide / width;
  const grid = { width, height: Math.max(1, Math.round(high / step)), step };
  const hex = (part: keyof Job['colours']) => job.palette[colours[part]]!;
  const named = [...new Set(regions.map(({ part }) => hex(part)))];
  const paths = (fill: (part: keyof Job['colours']) => string) =>
    regions.map(({ part, pieces, at }) => element('path', { fill: fill(part), d: regionText(pieces, at) })).join('');
  const of = { box };
  // Red tells the paints apart, so it is drawn without soft edges.
  const told = await drawn(
    element(
      'g',
      { 'shape-rendering': 'crispEdges' },
      paths((part) => `rgb(${named.indexOf(hex(part)) + 1},0,0)`),
    ),
    of,
    grid,
  );
  const shapes = new Uint8Array(grid.width * grid.height);
  for (let at = 0; at < shapes.length; at++) shapes[at] = told.data[4 * at]!;
  return {
    ...grid,
    box,
    ground: await drawn(element('path', { fill: hex('ground'), d: groundText(shown) }), of, grid),
    pattern: await drawn(paths(hex), of, grid),
    shapes,
  };
}
