import type { Runs } from './axis.ts';

/** Frames of one direction by the pitches that their fields can have, so that those near a pitch are found at once. */
export class Matching<Framed extends { runs: Runs }> {
  private readonly pitches: Float64Array;
  private readonly owners: Uint32Array;

  constructor(private readonly frames: readonly Framed[]) {
    const all = frames.flatMap(({ runs }, owner) => runs.byPitch.map(({ pitch }) => ({ pitch, owner })));
    all.sort((a, b) => a.pitch - b.pitch);
    this.pitches = Float64Array.from(all, ({ pitch }) => pitch);
    this.owners = Uint32Array.from(all, ({ owner }) => owner);
  }

  /** Frames with a pitch in any of the windows, in the order they were given. */
  within(windows: readonly (readonly [from: number, to: number])[]): Framed[] {
    const found = new Set<number>();
    for (const [from, to] of windows) {
      for (let at = this.firstAtLeast(from); at < this.pitches.length && this.pitches[at]! <= to; at++)
        found.add(this.owners[at]!);
    }
    return [...found].sort((a, b) => a - b).map((at) => this.frames[at]!);
  }

  private firstAtLeast(pitch: number): number {
    let [low, high] = [0, this.pitches.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (this.pitches[middle]! < pitch) low = middle + 1;
      else high = middle;
    }
    return low;
  }
}
