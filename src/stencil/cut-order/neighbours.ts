import Flatbush from 'flatbush';
import type { Stops } from './tour.ts';

/** Stops nearest to each stop, by the least distance between any two of their points; the nearest first. */
export function nearestStops({ first, x, y }: Stops, most: number): Int32Array[] {
  const count = first.length - 1;
  const index = new Flatbush(x.length);
  for (let point = 0; point < x.length; point++) index.add(x[point]!, y[point]!, x[point]!, y[point]!);
  index.finish();
  const owner = new Int32Array(x.length);
  for (let stop = 0; stop < count; stop++) owner.fill(stop, first[stop]!, first[stop + 1]!);
  return Array.from({ length: count }, (_, stop) => {
    const near = new Map<number, number>();
    for (let point = first[stop]!; point < first[stop + 1]!; point++) {
      for (const other of index.neighbors(x[point]!, y[point]!, most, Infinity, (at) => owner[at] !== stop)) {
        const [dx, dy] = [x[point]! - x[other]!, y[point]! - y[other]!];
        const far = dx * dx + dy * dy;
        if (far < (near.get(owner[other]!) ?? Infinity)) near.set(owner[other]!, far);
      }
    }
    const sorted = [...near].sort((a, b) => a[1] - b[1] || a[0] - b[0]).slice(0, most);
    return Int32Array.from(sorted, ([other]) => other);
  });
}

/** Least and greatest x and y of the points of each stop. */
function boxesOf({ first, x, y }: Stops): Float64Array {
  const count = first.length - 1;
  const boxes = new Float64Array(4 * count);
  for (let stop = 0; stop < count; stop++) {
    let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity];
    for (let point = first[stop]!; point < first[stop + 1]!; point++) {
      left = Math.min(left, x[point]!);
      right = Math.max(right, x[point]!);
      top = Math.min(top, y[point]!);
      bottom = Math.max(bottom, y[point]!);
    }
    boxes.set([left, right, top, bottom], 4 * stop);
  }
  return boxes;
}

/** A round that goes from each stop to the nearest point of a stop not yet visited, and enters it there. */
export function nearestFirst(stops: Stops): { order: Int32Array; entry: Int32Array } {
  const { first, x, y } = stops;
  const count = first.length - 1;
  const left = Array.from({ length: count }, (_, stop) => stop);
  const order = new Int32Array(count);
  const entry = new Int32Array(count);
  const boxes = boxesOf(stops);
  let [at, point] = [0, first[0]!];
  for (let place = 0; place < count; place++) {
    const stop = left[at]!;
    order[place] = stop;
    entry[stop] = point;
    left[at] = left.at(-1)!;
    left.pop();
    const [x0, y0] = [x[point]!, y[point]!];
    let least = Infinity;
    for (let k = 0; k < left.length; k++) {
      const box = 4 * left[k]!;
      const wide = Math.max(0, boxes[box]! - x0, x0 - boxes[box + 1]!);
      const high = Math.max(0, boxes[box + 2]! - y0, y0 - boxes[box + 3]!);
      if (wide * wide + high * high >= least) continue;
      const end = first[left[k]! + 1]!;
      for (let other = first[left[k]!]!; other < end; other++) {
        const [dx, dy] = [x[other]! - x0, y[other]! - y0];
        const far = dx * dx + dy * dy;
        if (far < least) [least, at, point] = [far, k, other];
      }
    }
  }
  return { order, entry };
}
