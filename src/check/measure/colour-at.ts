import Flatbush from 'flatbush';
import type { Outline } from '../read/outline.ts';
import type { Plan } from '../read/plan.ts';
import { flat, holds } from './flat.ts';

interface Layer {
  fill: string;
  outlines: Outline[];
  index?: Flatbush;
}

/** Whether an odd number of a layer's outlines go round a place. */
function isPainted(layer: Layer, x: number, y: number): boolean {
  if (!layer.index) {
    layer.index = new Flatbush(layer.outlines.length);
    for (const { frame } of layer.outlines) layer.index.add(frame.left, frame.top, frame.right, frame.bottom);
    layer.index.finish();
  }
  return layer.index.search(x, y, x, y).filter((at) => holds(flat(layer.outlines[at]!), x, y)).length % 2 === 1;
}

/** Which colour a drawing shows at a place: the last that was painted there, or the ground. */
export function colourAt({ painted, ground, groundFill }: Plan): (x: number, y: number) => string {
  const layers = new Map<string, Layer>();
  const add = (name: string, fill: string, outline: Outline): void => {
    const layer = layers.get(name) ?? { fill, outlines: [] };
    layer.outlines.push(outline);
    layers.set(name, layer);
  };
  for (const outline of ground) add('', groundFill, outline);
  for (const { element, part, fill, outline } of painted) add(`${element} ${part} ${fill}`, fill, outline);
  return (x, y) => {
    let fill = 'none';
    for (const layer of layers.values()) if (isPainted(layer, x, y)) fill = layer.fill;
    return fill;
  };
}
