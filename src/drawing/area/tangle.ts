import { MOST_CORNERS, MOST_PAIRS } from '../limits.ts';
import { type Path64, ringPath } from './clipper.ts';
import type { Layer } from './scene.ts';
import { TooMuch } from './too-much.ts';

type Corner = Path64[number];

interface Chord {
  from: Corner;
  to: Corner;
  left: number;
  right: number;
  top: number;
  bottom: number;
}

/** Whether the ends of one chord do not lie on the same side of the line through the other. */
function parts({ from, to }: Chord, other: Chord): boolean {
  const side = ({ x, y }: Corner): number => Math.sign((to.x - from.x) * (y - from.y) - (to.y - from.y) * (x - from.x));
  return side(other.from) * side(other.to) <= 0;
}

function chordsOf(path: Path64): Chord[] {
  return path.map((from, i) => {
    const to = path[(i + 1) % path.length]!;
    const [left, right] = from.x < to.x ? [from.x, to.x] : [to.x, from.x];
    const [top, bottom] = from.y < to.y ? [from.y, to.y] : [to.y, from.y];
    return { from, to, left, right, top, bottom };
  });
}

/** How many pairs of chords of all layers cross or touch, neighbours left out. Throws `TooMuch` beyond what can be worked out. */
export function countCrossings(layers: Layer[]): number {
  const rings = layers.flatMap(({ area }) => (area.kind === 'rings' ? area.rings : area.stroked.chords.flat()));
  const chords: Chord[] = [];
  for (const ring of rings) {
    for (const chord of chordsOf(ringPath(ring))) chords.push(chord);
    if (chords.length > MOST_CORNERS) throw new TooMuch('curves');
  }
  chords.sort((a, b) => a.top - b.top);
  let crossings = 0;
  let pairs = 0;
  for (let i = 0; i < chords.length; i++) {
    const one = chords[i]!;
    for (let j = i + 1; j < chords.length && chords[j]!.top <= one.bottom; j++) {
      const other = chords[j]!;
      pairs += 1;
      if (other.left > one.right || one.left > other.right || one.to === other.from || one.from === other.to) continue;
      if (parts(one, other) && parts(other, one)) crossings += 1;
    }
    if (pairs + 100 * crossings > MOST_PAIRS) throw new TooMuch('crossings');
  }
  return crossings;
}
