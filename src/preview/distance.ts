/** A line of squared distances, by the lowest parabola over each place; Felzenszwalb, Huttenlocher, Distance Transforms of Sampled Functions, 2012. */
function transform(
  line: Float64Array,
  count: number,
  places: Int32Array,
  bounds: Float64Array,
  out: Float64Array,
): void {
  let last = 0;
  places[0] = 0;
  bounds[0] = Number.NEGATIVE_INFINITY;
  bounds[1] = Number.POSITIVE_INFINITY;
  for (let q = 1; q < count; q++) {
    let s = 0;
    for (;;) {
      const p = places[last]!;
      s = (line[q]! + q * q - line[p]! - p * p) / (2 * (q - p));
      if (s > bounds[last]! || last === 0) break;
      last--;
    }
    if (s > bounds[last]!) last++;
    places[last] = q;
    bounds[last] = s;
    bounds[last + 1] = Number.POSITIVE_INFINITY;
  }
  for (let q = 0, at = 0; q < count; q++) {
    while (bounds[at + 1]! < q) at++;
    const p = places[at]!;
    out[q] = (q - p) ** 2 + line[p]!;
  }
}

/** Farther than any picture is wide, squared. */
const FAR = 1e12;

/**
 * From each pixel to the edge of the shape that it lies in, in pixels; half a pixel at the edge itself. Shapes are told apart by a number for each pixel.
 * The edge of the picture is the edge of every shape at it.
 */
export function edgeDistance(shapes: Uint8Array, width: number, height: number): Float32Array {
  const found = new Float32Array(width * height);
  const most = Math.max(width, height);
  const [line, out, bounds, places] = [
    new Float64Array(most),
    new Float64Array(most),
    new Float64Array(most + 1),
    new Int32Array(most),
  ];
  const isEdge = (at: number, x: number, y: number): boolean => {
    const own = shapes[at];
    return (
      x === 0 ||
      y === 0 ||
      x === width - 1 ||
      y === height - 1 ||
      shapes[at - 1] !== own ||
      shapes[at + 1] !== own ||
      shapes[at - width] !== own ||
      shapes[at + width] !== own
    );
  };
  for (let x = 0; x < width; x++) {
    for (let y = 0; y < height; y++) line[y] = isEdge(y * width + x, x, y) ? 0 : FAR;
    transform(line, height, places, bounds, out);
    for (let y = 0; y < height; y++) found[y * width + x] = Math.min(FAR, out[y]!);
  }
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) line[x] = found[y * width + x]!;
    transform(line, width, places, bounds, out);
    for (let x = 0; x < width; x++) found[y * width + x] = Math.sqrt(out[x]!) + 0.5;
  }
  return found;
}
