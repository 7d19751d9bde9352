import type { Placed } from './pack.ts';
import { SAME, type Size, turnedSize } from './rectangle.ts';

interface Shelf {
  film: number;
  y: number;
  along: number;
  used: number;
}

/**
 * Lays pieces on shelves: longest first, each on the first shelf with room, a new shelf below the last where none has. Every piece lies with its longer
 * side across where the film is wide enough. What other ways of packing must be at least as good as.
 */
export function packOnShelves(sizes: Size[], stock: Size): Placed[] {
  const lying = sizes.map((size): Size & { turned: boolean } => {
    const wide = size.across >= size.along ? size : turnedSize(size);
    const fits = wide.across <= stock.across + SAME && wide.along <= stock.along + SAME;
    const chosen = fits ? wide : turnedSize(wide);
    return { ...chosen, turned: chosen.across !== size.across };
  });
  const order = lying.map((_, at) => at).sort((a, b) => lying[b]!.along - lying[a]!.along || a - b);
  const shelves: Shelf[] = [];
  const filled: number[] = [];
  const found: Placed[] = [];
  for (const which of order) {
    const { across, along, turned } = lying[which]!;
    let shelf = shelves.find((one) => along <= one.along + SAME && one.used + across <= stock.across + SAME);
    if (!shelf) {
      let film = filled.findIndex((used) => used + along <= stock.along + SAME);
      if (film < 0) film = filled.push(0) - 1;
      shelf = { film, y: filled[film]!, along, used: 0 };
      filled[film]! += along;
      shelves.push(shelf);
    }
    found[which] = { film: shelf.film, x: shelf.used, y: shelf.y, turned };
    shelf.used += across;
  }
  return found;
}
