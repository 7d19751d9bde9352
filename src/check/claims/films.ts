import { type Claim, DRAWN, equal, type Proof, stated, unproven } from '../claim.ts';
import type { FileSet, Sheet } from '../file-set.ts';
import { type Move, moveOutline, movePoint } from '../measure/move.ts';
import type { LayoutFile } from '../read/layout.ts';
import type { Frame, Outline } from '../read/outline.ts';
import { readPath } from '../read/path.ts';
import { readSvg } from '../read/svg.ts';

type Film = NonNullable<LayoutFile['films']>[number];

const FILE = 'layout.json';

export const proof: Proof = {
  claims: 'every sheet on one film, clear of the others and within the edge; a film file has just their lines',
  files: ['layout.json', 'stencil-*.svg'],
  method: 'rectangles of the sheets as drawn, placed and compared',
  tolerance: '0.05 mm',
};

/** Sheets lie on the film that they are cut from, none over another, and a film that is written holds just their lines. */
export default function films(set: FileSet): Claim[] {
  const layout = set.layout();
  const claim = 'every sheet lies on a film, clear of the others';
  if (!layout.ok) return [unproven(FILE, claim, layout.says)];
  const all = layout.value.films ?? [];
  const sheets = new Map(set.sheets().map((sheet) => [sheet.entry.file, sheet]));
  const placed = all.flatMap((film) => film.sheets.map(({ file }) => file));
  const missing = [...sheets.keys()].filter((file) => placed.filter((one) => one === file).length !== 1);
  const claims = [
    equal(
      FILE,
      'every sheet has its place on one film',
      missing.length === 0 ? 'it has' : `not ${missing[0]}`,
      'it has',
    ),
    equal(FILE, claim, all.every((film) => isClear(film, sheets)) ? 'it does' : 'it does not', 'it does'),
  ];
  for (const film of all) if (film.file !== undefined) claims.push(holdsLines(set, film, film.file, sheets));
  return claims;
}

/** From the sheet's own file to the film, both as they are seen from the front. */
function placing({ x, y, turned }: Film['sheets'][number], height: number): Move {
  return turned ? [0, -1, 1, 0, x + height, y] : [1, 0, 0, 1, x, y];
}

function frameOn(lie: Film['sheets'][number], sheets: ReadonlyMap<string, Sheet>): Frame | undefined {
  const drawn = sheets.get(lie.file)?.drawn;
  if (!drawn?.ok) return undefined;
  const { width, height } = drawn.value.svg.view;
  const move = placing(lie, height);
  const [a, b] = [movePoint(move, 0, 0), movePoint(move, width, height)];
  return {
    left: Math.min(a[0], b[0]),
    right: Math.max(a[0], b[0]),
    top: Math.min(a[1], b[1]),
    bottom: Math.max(a[1], b[1]),
  };
}

function isClear(film: Film, sheets: ReadonlyMap<string, Sheet>): boolean {
  const frames = film.sheets.map((lie) => frameOn(lie, sheets));
  return frames.every((one, at) => {
    if (!one) return false;
    const inside =
      one.left >= -DRAWN && one.top >= -DRAWN && one.right <= film.across + DRAWN && one.bottom <= film.along + DRAWN;
    return (
      inside &&
      frames.slice(at + 1).every((other) => {
        if (!other) return false;
        return (
          one.right <= other.left + DRAWN ||
          other.right <= one.left + DRAWN ||
          one.bottom <= other.top + DRAWN ||
          other.bottom <= one.top + DRAWN
        );
      })
    );
  });
}

/** Points of one path from those of another as it is written, begun alike, the farthest, mm; endless where they are not alike. */
function apartAsWritten(one: Outline, other: Outline): number {
  if (one.corners.length !== other.corners.length) return Infinity;
  const far = (a: Float64Array, b: Float64Array): number => {
    let most = 0;
    for (let at = 0; at < a.length; at++) {
      const [p, q] = [a[at]!, b[at]!];
      if (Number.isNaN(p) && Number.isNaN(q)) continue;
      const by = Math.abs(p - q);
      if (!(by <= most)) most = Number.isNaN(by) ? Infinity : by;
    }
    return most;
  };
  return Math.max(far(one.corners, other.corners), far(one.handles, other.handles));
}

function holdsLines(set: FileSet, film: Film, file: string, sheets: ReadonlyMap<string, Sheet>): Claim {
  const claim = 'the film holds every line of its sheets, and no other';
  const text = set.text(file);
  if (!text.ok) return unproven(file, claim, text.says);
  const svg = set.read(file, readSvg);
  if (!svg.ok) return unproven(file, claim, svg.says);
  const { width, height } = svg.value;
  if (Math.abs(width - film.across) > DRAWN || Math.abs(height - film.along) > DRAWN)
    return stated(file, claim, false, `a film of ${width} by ${height} mm`, `${film.across} by ${film.along} mm`);
  const left = new Map(svg.value.paths.map(({ attributes }) => [attributes.id ?? '', attributes]));
  let off = 0;
  for (const [at, lie] of film.sheets.entries()) {
    const sheet = sheets.get(lie.file);
    if (!sheet?.drawn.ok) return unproven(file, claim, `${lie.file} cannot be read`);
    const { view, paths } = sheet.drawn.value.svg;
    const { mirrored } = sheet.entry.cut;
    const flip = (across: number): Move => (mirrored ? [-1, 0, 0, 1, across, 0] : [1, 0, 0, 1, 0, 0]);
    for (const { attributes } of paths) {
      const id = `sheet-${at + 1}-${attributes.id}`;
      const there = left.get(id);
      left.delete(id);
      if (!there || there['data-line'] !== attributes['data-line'] || there['data-key'] !== attributes['data-key'])
        return stated(file, claim, false, `${id} is missing or of another kind`, `all, to ${DRAWN} mm`);
      const [own, other] = [readPath(attributes.d ?? ''), readPath(there.d ?? '')];
      if (!own.ok || !other.ok || own.value.outlines.length !== other.value.outlines.length)
        return stated(file, claim, false, `${id} is another line`, `all, to ${DRAWN} mm`);
      own.value.outlines.forEach((outline, n) => {
        const front = moveOutline(outline, flip(view.width));
        const placed = moveOutline(front, placing(lie, view.height));
        off = Math.max(off, apartAsWritten(moveOutline(placed, flip(film.across)), other.value.outlines[n]!));
      });
    }
  }
  const more = [...left.keys()].length;
  if (more > 0) return stated(file, claim, false, `${more} lines more`, 'no other');
  return stated(file, claim, off <= DRAWN, off, DRAWN);
}
