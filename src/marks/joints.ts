/** A line on which two repeats meet, and the number of the repeat before it, counted from 1. */
export interface Joint {
  at: number;
  before: number;
  /** Number of the repeat that begins here, from 1; nothing where the line runs inside one, between two of its pieces. */
  begins?: number;
}

/**
 * Where repeats meet inside a strip.
 * @param length  of the strip, mm
 * @param pitch   length of one repeat, mm
 * @param phase   share of a repeat (0 to 1) at which the strip begins; at 0.5 its first repeat is a half
 * @param each    pieces in one repeat that are marked one by one, such as the two squares of a checkerboard
 * @returns places from the beginning of the strip, its two ends left out, each worked out on its own from the beginning
 */
export function joints(length: number, pitch: number, phase = 0, each = 1): Joint[] {
  const found: Joint[] = [];
  if (!(pitch > 0 && length > 0)) throw new RangeError(`repeats of ${pitch} mm cannot be marked on ${length} mm`);
  const slack = 1e-9 * length;
  for (let line = Math.floor(phase * each); ; line++) {
    const at = (line / each - phase) * pitch;
    if (at >= length - slack) return found;
    const begins = line % each === 0 ? { begins: line / each + 1 } : {};
    if (at > slack) found.push({ at, before: found.length + 1, ...begins });
  }
}
