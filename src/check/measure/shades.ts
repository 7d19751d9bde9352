import type { Outline } from '../read/outline.ts';
import type { Painted, Plan } from '../read/plan.ts';
import type { Picture } from '../read/png.ts';
import { distanceTo, flat, holds, roundOf } from './flat.ts';
import { frameOf } from './frame.ts';

export type Shade = [red: number, green: number, blue: number];

/** `#rrggbb` as three channels of 0 to 255; NaN where it is written otherwise. */
const shadeOf = (fill: string): Shade => {
  const channel = (at: number) =>
    /^#[0-9a-f]{6}$/i.test(fill) ? Number.parseInt(fill.slice(at, at + 2), 16) : Number.NaN;
  return [channel(1), channel(3), channel(5)];
};

const groundArea = ({ ground }: Plan): number => Math.abs(ground.reduce((sum, { area }) => sum + area, 0));

/** The mean shade of the work as its colours and their areas make it. */
export function dueShade(plan: Plan): Shade {
  const total = groundArea(plan);
  const mean: Shade = [...shadeOf(plan.groundFill)];
  for (const { fill, outline } of plan.painted) {
    const shade = shadeOf(fill);
    const ground = shadeOf(plan.groundFill);
    for (const i of [0, 1, 2] as const) mean[i] += ((shade[i] - ground[i]) * outline.area) / total;
  }
  return mean;
}

/**
 * How much lighter or darker the picture may be for its edges alone. Where two pieces meet inside a pixel each is laid over the ground by its share of it, and
 * the ground shows through what is left of either: a sixth of the contrast on the mean over all ways an edge may run through a pixel.
 */
export function shadeOfEdges(plan: Plan, pixel: number): number {
  const known = new Map<Outline, number>();
  let edges = 0;
  for (const { outline } of plan.painted) {
    const own = outline.copyOf ?? outline;
    const round = known.get(own) ?? roundOf(flat(own, pixel / 4));
    known.set(own, round);
    edges += round;
  }
  const ground = shadeOf(plan.groundFill);
  const fills = [...new Set(plan.painted.map(({ fill }) => fill))].map(shadeOf);
  const contrast = Math.max(0, ...fills.flatMap((fill) => fill.map((channel, i) => Math.abs(channel - ground[i]!))));
  return (Math.min(1, (edges * pixel) / groundArea(plan)) * contrast) / 6;
}

/** Where a level line crosses the ground, from left to right: it lies in it from the first to the second, from the third to the fourth … */
function crossings(ground: readonly number[][], y: number): number[] {
  const found: number[] = [];
  for (const polygon of ground)
    for (let i = 0, j = polygon.length - 2; i < polygon.length; j = i, i += 2) {
      const [xi, yi, xj, yj] = [polygon[i]!, polygon[i + 1]!, polygon[j]!, polygon[j + 1]!];
      if (yi > y !== yj > y) found.push(xi + ((y - yi) / (yj - yi)) * (xj - xi));
    }
  return found.sort((a, b) => a - b);
}

/** The mean shade of the pixels of the work's own ground, which need be no rectangle. Blended edges count for what they are. */
export function meanShade(picture: Picture, view: Plan['svg']['view'], outlines: readonly Outline[]): Shade {
  const ground = outlines.map((outline) => flat(outline));
  const { top, bottom } = frameOf(outlines.map(({ frame }) => frame));
  const { pixels, width } = picture;
  const rowAt = (y: number): number => Math.round(pixelAt(picture, view, 0, y)[1]);
  const columnAt = (x: number): number => Math.round(pixelAt(picture, view, x, 0)[0]);
  let [red, green, blue, count] = [0, 0, 0, 0];
  for (let row = Math.max(0, rowAt(top)); row < Math.min(picture.height, rowAt(bottom)); row++) {
    const places = crossings(ground, view.y + ((row + 0.5) / picture.height) * view.height);
    for (let at = 0; at + 1 < places.length; at += 2) {
      const from = Math.max(0, columnAt(places[at]!));
      const to = Math.max(from, Math.min(width, columnAt(places[at + 1]!)));
      for (let i = 4 * (row * width + from); i < 4 * (row * width + to); i += 4) {
        red += pixels[i]!;
        green += pixels[i + 1]!;
        blue += pixels[i + 2]!;
      }
      count += to - from;
    }
  }
  return [red / Math.max(1, count), green / Math.max(1, count), blue / Math.max(1, count)];
}

/** Pieces that show their own colour at a place well inside them, and how many were large enough to be looked at. */
export function ownColours(
  picture: Picture,
  view: Plan['svg']['view'],
  pieces: readonly Painted[],
  off: number,
): { own: number; of: number } {
  const pixel = view.width / picture.width;
  const found = { own: 0, of: 0 };
  for (const { fill, outline } of pieces) {
    const polygon = flat(outline, pixel / 4);
    const places = [0, 2].map((from) => inside(polygon, from));
    const seen = places.filter(([x, y]) => holds(polygon, x, y) && distanceTo(polygon, x, y) >= 1.5 * pixel);
    if (seen.length === 0) continue;
    const shade = shadeOf(fill);
    found.of += 1;
    const own = seen.some(([x, y]) => {
      const [column, row] = pixelAt(picture, view, x, y).map(Math.floor) as [number, number];
      const at = 4 * (row * picture.width + column);
      return shade.every((channel, i) => Math.abs((picture.pixels[at + i] ?? Number.NaN) - channel) <= off);
    });
    if (own) found.own += 1;
  }
  return found;
}

/** A place off the middle, towards two corners that follow each other, as lines are drawn through the middles of pieces. */
function inside(polygon: readonly number[], from: number): [number, number] {
  let [x, y] = [0, 0];
  for (let i = 0; i < polygon.length; i += 2) {
    x += polygon[i]!;
    y += polygon[i + 1]!;
  }
  const n = polygon.length / 2;
  const corner = (at: number): [number, number] => [polygon[(2 * at) % (2 * n)]!, polygon[(2 * at + 1) % (2 * n)]!];
  const [[ax, ay], [bx, by]] = [corner(from), corner(from + 1)];
  return [0.6 * (x / n) + 0.25 * ax + 0.15 * bx, 0.6 * (y / n) + 0.25 * ay + 0.15 * by];
}

const pixelAt = ({ width, height }: Picture, view: Plan['svg']['view'], x: number, y: number): [number, number] => [
  ((x - view.x) / view.width) * width,
  ((y - view.y) / view.height) * height,
];
