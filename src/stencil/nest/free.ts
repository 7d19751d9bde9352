import { type Rectangle, SAME } from './rectangle.ts';

const overlaps = (a: Rectangle, b: Rectangle): boolean =>
  a.x < b.x + b.across - SAME &&
  b.x < a.x + a.across - SAME &&
  a.y < b.y + b.along - SAME &&
  b.y < a.y + a.along - SAME;

const inside = (a: Rectangle, b: Rectangle): boolean =>
  a.x >= b.x - SAME &&
  a.y >= b.y - SAME &&
  a.x + a.across <= b.x + b.across + SAME &&
  a.y + a.along <= b.y + b.along + SAME;

/** What is left of a free rectangle round what is taken of it: up to four rectangles, each as large as can be, which may overlap. */
function around(free: Rectangle, taken: Rectangle): Rectangle[] {
  const [right, below] = [taken.x + taken.across, taken.y + taken.along];
  const left: Rectangle[] = [
    { ...free, across: taken.x - free.x },
    { ...free, x: right, across: free.x + free.across - right },
    { ...free, along: taken.y - free.y },
    { ...free, y: below, along: free.y + free.along - below },
  ];
  return left.filter(({ across, along }) => across > SAME && along > SAME);
}

/** The largest free rectangles of a film once one more is taken. */
export function freeAfter(free: Rectangle[], taken: Rectangle): Rectangle[] {
  const kept: Rectangle[] = [];
  const cut: Rectangle[] = [];
  for (const one of free) {
    if (overlaps(one, taken)) cut.push(...around(one, taken));
    else kept.push(one);
  }
  const all = [...kept, ...cut];
  return all.filter((one, at) =>
    all.every((other, there) => at === there || !inside(one, other) || (inside(other, one) && at < there)),
  );
}
