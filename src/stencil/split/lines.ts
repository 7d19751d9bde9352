/** One direction that is split: what is to be parted, from `low` to `high`, and whether it goes on in the same way after `pitch`. */
export interface Stretch {
  low: number;
  high: number;
  repeats: boolean;
  pitch: number;
}

/** Split lines in order, and the harm they do. Where the pattern repeats, the next line is the first of the next cell. */
export interface Lines {
  at: number[];
  harm: number;
}

export interface Candidate {
  at: number;
  harm: number;
}

/**
 * A symmetric set of lines may do so much more harm than the best: of a drawing that is symmetric itself its parts are alike, which
 * saves sheets. Our own measure.
 */
const WORTH = { alike: 2, unlike: 1.25 };
const FREE = 10;
/** First lines tried where the pattern repeats. */
const FIRST = 12;

/** The least harmful chain of `count` lines from `low` to `high` with no two neighbours, nor an end, farther apart than `most`. */
function chain(candidates: Candidate[], low: number, high: number, count: number, most: number): Lines | undefined {
  const inside = candidates.filter(({ at }) => at > low + 1e-9 && at < high - 1e-9);
  let ends: (Lines & { last: number })[] = [{ at: [], harm: 0, last: low }];
  for (let n = 0; n < count; n++) {
    const next: typeof ends = [];
    for (const { at, harm } of inside) {
      let best: (typeof ends)[number] | undefined;
      for (const end of ends) {
        if (end.last < at - 1e-9 && at - end.last <= most + 1e-9 && (!best || end.harm < best.harm)) best = end;
      }
      if (best) next.push({ at: [...best.at, at], harm: best.harm + harm, last: at });
    }
    ends = next;
  }
  const fitting = ends.filter(({ last }) => high - last <= most + 1e-9);
  return fitting.reduce<Lines | undefined>((best, one) => (best && best.harm <= one.harm ? best : one), undefined);
}

/** The least harmful set that is its own mirror image about the middle. */
function symmetric(candidates: Candidate[], low: number, high: number, count: number, most: number): Lines | undefined {
  const middle = (low + high) / 2;
  const harmAt = (at: number) => candidates.find((one) => Math.abs(one.at - at) < 1e-6)?.harm;
  const paired = candidates.flatMap(({ at, harm }): Candidate[] => {
    const other = at > middle + 1e-6 ? harmAt(2 * middle - at) : undefined;
    return other === undefined ? [] : [{ at, harm: harm + other }];
  });
  const half = count >> 1;
  const centre = harmAt(middle);
  if (count % 2 === 1) {
    if (centre === undefined) return undefined;
    const found = chain(paired, middle, high, half, most);
    return found && mirroredAbout(middle, found, [middle], centre);
  }
  // The middle part reaches as far to either side.
  const found = paired
    .filter(({ at }) => 2 * (at - middle) <= most + 1e-9)
    .flatMap((first): Lines[] => {
      const rest = chain(paired, first.at, high, half - 1, most);
      return rest ? [{ at: [first.at, ...rest.at], harm: first.harm + rest.harm }] : [];
    })
    .reduce<Lines | undefined>((best, one) => (best && best.harm <= one.harm ? best : one), undefined);
  return found && mirroredAbout(middle, found, [], 0);
}

const mirroredAbout = (middle: number, { at, harm }: Lines, centre: number[], more: number): Lines => ({
  at: [...[...at].reverse().map((one) => 2 * middle - one), ...centre, ...at],
  harm: harm + more,
});

/** Whether lines do the same harm on either side of the middle: the drawing is its own mirror image, or turns into itself. */
function isEven(candidates: Candidate[], middle: number): boolean {
  return candidates.every(({ at, harm }) => {
    const other = candidates.find((one) => Math.abs(one.at + at - 2 * middle) < 1e-6);
    return other === undefined || Math.abs(other.harm - harm) < 0.01;
  });
}

/** The fewest lines that leave no part longer than `most` mm, the least harmful such lines; nothing where none can be drawn. */
export function chooseLines(stretch: Stretch, candidates: Candidate[], most: number, extra: number): Lines | undefined {
  const { low, high, repeats, pitch } = stretch;
  if (most <= 0) return undefined;
  if (repeats) {
    const count = Math.max(1, Math.ceil(pitch / most - 1e-9)) + extra;
    const all = [...candidates, ...candidates.map(({ at, harm }) => ({ at: at + pitch, harm }))];
    return [...candidates]
      .sort((a, b) => a.harm - b.harm || a.at - b.at)
      .slice(0, FIRST)
      .flatMap((first): Lines[] => {
        const rest = chain(all, first.at, first.at + pitch, count - 1, most);
        return rest ? [{ at: [first.at, ...rest.at], harm: first.harm + rest.harm }] : [];
      })
      .reduce<Lines | undefined>((best, one) => (best && best.harm <= one.harm ? best : one), undefined);
  }
  const count = Math.max(1, Math.ceil((high - low) / most - 1e-9) - 1) + extra;
  const best = chain(candidates, low, high, count, most);
  const even = symmetric(candidates, low, high, count, most);
  const worth = isEven(candidates, (low + high) / 2) ? WORTH.alike : WORTH.unlike;
  return even && best && even.harm <= best.harm * worth + FREE ? even : best;
}
