import { type Claim, DRAWN, stated } from '../claim.ts';
import { onWork } from '../claims/covering.ts';
import type { Sheet } from '../file-set.ts';
import type { Frame, Outline } from '../read/outline.ts';
import type { Painted } from '../read/plan.ts';
import { distanceTo, flat, holds } from './flat.ts';
import { moveOutline } from './move.ts';
import { isLine, partOnFloor } from './part-box.ts';

/** Match keys that every line of a split has at least. */
const LEAST = 2;
/** Match keys of neighbouring parts that lie no farther apart than this are meant to be one, mm. */
const MEANT = 3;

/** A match key as it lies on the floor, on which sheet at which of its placements, and the lines of its part there. */
interface Laid {
  of: string;
  sheet: Sheet;
  id: string;
  outline: Outline;
  at: readonly [number, number];
  lay: string;
}

/** The lines of a part as they lie on the floor. */
interface Box {
  of: string;
  file: string;
  box: Frame;
}

/** A line along which two parts lie side by side. */
interface Line {
  of: string;
  file: string;
  way: 0 | 1;
  at: number;
}

function sharedLines(boxes: Box[]): Line[] {
  const found = new Map<string, Line>();
  for (const a of boxes) {
    for (const b of boxes) {
      if (a.of !== b.of) continue;
      const beside = Math.min(a.box.bottom, b.box.bottom) - Math.max(a.box.top, b.box.top);
      const above = Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left);
      for (const [way, high, low, along] of [
        [0, a.box.right, b.box.left, beside],
        [1, a.box.bottom, b.box.top, above],
      ] as const) {
        if (!isLine(high) || Math.abs(high - low) > 1 || along <= 1) continue;
        found.set(`${a.of} ${way} ${Math.round(high * 10)}`, { of: a.of, file: a.file, way, at: high });
      }
    }
  }
  return [...found.values()];
}

const middle = ({ frame }: Outline): [number, number] => [
  (frame.left + frame.right) / 2,
  (frame.top + frame.bottom) / 2,
];

const far = (a: Laid, b: Laid): number => Math.hypot(a.at[0] - b.at[0], a.at[1] - b.at[1]);

/**
 * Match keys of parts that are neighbours fall on the same points of the floor, off the paint of their colour, two at least on every
 * line along which shapes are split. Nothing where nothing is split.
 */
export function matchKeys(sheets: Sheet[], painted: Painted[], colours: Record<string, string>): Claim[] {
  const laid: Laid[] = [];
  const boxes: Box[] = [];
  for (const sheet of sheets) {
    const { entry, drawn } = sheet;
    if (!entry.part || !drawn.ok) continue;
    const of = `${entry.part.of}`;
    for (const [n, placement] of entry.passes.flat().entries()) {
      const box = partOnFloor(entry, placement)!;
      boxes.push({ of, file: entry.file, box });
      for (const key of drawn.value.keys.values()) {
        if (key.kind !== 'match' || key.outlines.length !== 1) continue;
        const outline = moveOutline(key.outlines[0]!, onWork(entry.origin, placement));
        laid.push({ of, sheet, id: key.id, outline, at: middle(outline), lay: `${entry.file} ${n}` });
      }
    }
  }
  if (boxes.length === 0) return [];
  return [together(laid), onEveryLine(laid, sharedLines(boxes)), offThePaint(laid, painted, colours)];
}

/** Every match key lies on one of another part wherever one is near, and does so at one placement or more. */
function together(laid: Laid[]): Claim {
  let [off, alone] = [0, ''];
  const paired = new Map<string, boolean>();
  for (const key of laid) {
    const name = `${key.id} of ${key.sheet.entry.file}`;
    const partners = laid.filter((other) => other.of === key.of && other.lay !== key.lay && far(key, other) <= MEANT);
    off = Math.max(off, ...partners.map((other) => far(key, other)));
    paired.set(name, (paired.get(name) ?? false) || partners.length > 0);
  }
  for (const [name, has] of paired) if (!has) alone ||= `${name} lies on no other part's`;
  return stated(
    'layout.json',
    'match keys of neighbouring parts fall on the same points of the floor',
    alone === '' && off <= DRAWN && laid.length > 0,
    alone || off,
    DRAWN,
  );
}

function onEveryLine(laid: Laid[], lines: Line[]): Claim {
  const counts = lines.map(({ way, at, of }) => {
    const on = laid.filter((key) => key.of === of && Math.abs(key.at[way] - at) <= DRAWN);
    const both = on.filter((key) => on.some((other) => other.lay !== key.lay && far(key, other) <= DRAWN));
    return new Set(both.map(({ at: [x, y] }) => Math.round((way === 0 ? y : x) * 2))).size;
  });
  const least = Math.min(...counts);
  return stated(
    lines[counts.indexOf(least)]?.file ?? 'layout.json',
    'every line of a split has match keys of both parts',
    least >= LEAST,
    counts.length === 0 ? 'no such line' : least,
    `${LEAST} or more`,
  );
}

/** A pencil mark must stay to be seen, and is not to be painted over. */
function offThePaint(laid: Laid[], painted: Painted[], colours: Record<string, string>): Claim {
  let hit = '';
  for (const { sheet, id, outline, at } of laid) {
    const reach = outline.frame.right - outline.frame.left;
    for (const piece of painted) {
      const { frame } = piece.outline;
      if (colours[piece.part] !== sheet.entry.colour) continue;
      if (at[0] < frame.left - reach || at[0] > frame.right + reach) continue;
      if (at[1] < frame.top - reach || at[1] > frame.bottom + reach) continue;
      const polygon = flat(piece.outline);
      if (holds(polygon, ...at) || distanceTo(polygon, ...at) < reach / 2)
        hit ||= `${id} of ${sheet.entry.file} lies on a ${piece.part} piece`;
    }
  }
  return stated('layout.json', 'match keys lie off the paint of their colour', hit === '', hit || 'they do', 'they do');
}
