/** Keeps words from lying over each other: says whether there is room for a box, pixels, and takes it. */
export class RoomFor {
  private readonly cells = new Map<string, [number, number, number, number][]>();
  private readonly cell = 64;

  take(left: number, top: number, right: number, bottom: number): boolean {
    const keys: string[] = [];
    for (let x = Math.floor(left / this.cell); x * this.cell <= right; x++)
      for (let y = Math.floor(top / this.cell); y * this.cell <= bottom; y++) keys.push(`${x} ${y}`);
    const isTaken = keys.some((key) =>
      this.cells.get(key)?.some(([l, t, r, b]) => l < right && left < r && t < bottom && top < b),
    );
    if (isTaken) return false;
    for (const key of keys) {
      const there = this.cells.get(key);
      if (there) there.push([left, top, right, bottom]);
      else this.cells.set(key, [[left, top, right, bottom]]);
    }
    return true;
  }
}
