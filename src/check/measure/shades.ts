import type { Frame } from '../read/outline.ts';
import type { Painted, Plan } from '../read/plan.ts';
import type { Picture } from '../read/png.ts';
import { distanceTo, flat, holds } from './flat.ts';
import { across, along, frameOf } from './frame.ts';

export type Shade = [red: number, green: number, blue: number];

/** `#rrggbb` as three channels of 0 to 255; NaN where it is written otherwise. */
const shadeOf = (fill: string): Shade => {
  const channel = (at: number) =>
    /^#[0-9a-f]{6}$/i.test(fill) ? Number.parseInt(fill.slice(at, at + 2), 16) : Number.NaN;
  return [channel(1), channel(3), channel(5)];
};

/** The mean shade of the work as its colours and their areas make it. */
export function dueShade(plan: Plan): Shade {
  const work = frameOf(plan.ground.map((outline) => outline.frame));
  const total = across(work) * along(work);
  const mean: Shade = [...shadeOf(plan.groundFill)];
  for (const { fill, outline } of plan.painted) {
    const shade = shadeOf(fill);
    const ground = shadeOf(plan.groundFill);
    for (const i of [0, 1, 2] as const) mean[i] += ((shade[i] - ground[i]) * outline.area) / total;
  }
  return mean;
}

/** The mean shade of the work's own pixels. Blended edges count for what they are. */
export function meanShade(picture: Picture, view: Plan['svg']['view'], work: Frame): Shade {
  const [left, top] = pixelAt(picture, view, work.left, work.top);
  const [right, bottom] = pixelAt(picture, view, work.right, work.bottom);
  const [from, to] = [Math.max(0, Math.round(left)), Math.min(picture.width, Math.round(right))];
  let [red, green, blue, count] = [0, 0, 0, 0];
  for (let y = Math.max(0, Math.round(top)); y < Math.min(picture.height, Math.round(bottom)); y++) {
    const row = picture.pixels.subarray(4 * (y * picture.width + from), 4 * (y * picture.width + to));
    for (let i = 0; i < row.length; i += 4) {
      red += row[i]!;
      green += row[i + 1]!;
      blue += row[i + 2]!;
    }
    count += row.length / 4;
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
