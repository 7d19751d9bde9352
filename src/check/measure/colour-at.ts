import type { Frame } from '../read/outline.ts';
import type { Painted, Plan } from '../read/plan.ts';
import { flat, holds } from './flat.ts';

interface Layer {
  fill: string;
  polygons: { frame: Frame; points: () => number[] }[];
}

/** Which colour a drawing shows at a place: the last that was painted there, or the ground. */
export function colourAt({ painted, ground, groundFill }: Plan): (x: number, y: number) => string {
  const layers = new Map<string, Layer>();
  const add = (name: string, fill: string, outline: Painted['outline']): void => {
    const layer = layers.get(name) ?? { fill, polygons: [] };
    let points: number[] | undefined;
    layer.polygons.push({ frame: outline.frame, points: () => (points ??= flat(outline)) });
    layers.set(name, layer);
  };
  for (const outline of ground) add('', groundFill, outline);
  for (const { element, part, fill, outline } of painted) add(`${element} ${part} ${fill}`, fill, outline);
  return (x, y) => {
    let fill = 'none';
    for (const layer of layers.values()) {
      const over = layer.polygons.filter(
        ({ frame, points }) =>
          x >= frame.left && x <= frame.right && y >= frame.top && y <= frame.bottom && holds(points(), x, y),
      );
      if (over.length % 2 === 1) fill = layer.fill;
    }
    return fill;
  };
}
