import { type Claim, DRAWN, equal, type Proof, stated, unproven } from '../claim.ts';
import type { FileSet, Sheet } from '../file-set.ts';
import { flat, holds } from '../measure/flat.ts';
import { followed } from '../measure/overcut.ts';
import { cutTwice } from '../measure/twice.ts';
import type { Frame } from '../read/outline.ts';
import type { Line, Stencil } from '../read/stencil.ts';

/** How far a blade may run on more or less than stated, or beside its own line, mm. */
const RUN_ON = 0.01;

export const proof: Proof = {
  claims:
    'every line once, in the order listed, inside before outside, of a kind and colour that is stated, closed, run on as stated, mirrored as stated',
  files: ['layout.json', 'stencil-*.svg'],
  method: 'lines of the file followed point by point',
  tolerance: '0.01 mm',
};

/** What a cutter is given: every line once, in a good order, of a known kind, each one stroke of the blade. */
export default function cutLines(set: FileSet): Claim[] {
  return set.sheets().flatMap((sheet): Claim[] => {
    const { file, cut } = sheet.entry;
    if (!sheet.drawn.ok) return [unproven(file, 'no line is cut twice', sheet.drawn.says)];
    const { lines, mirrored } = sheet.drawn.value;
    return [
      order(sheet, lines),
      equal(file, 'what lies inside is cut before what lies round it', firstOutside(lines), 'it is'),
      once(file, lines),
      kinds(sheet, lines),
      ...edge(sheet, sheet.drawn.value),
      equal(
        file,
        'left and right are changed over as the layout states',
        mirrored ? 'yes' : 'no',
        cut.mirrored ? 'yes' : 'no',
      ),
      overcuts(sheet, lines),
    ];
  });
}

function order({ entry: { file, cut } }: Sheet, lines: Line[]): Claim {
  const due = cut.order.split(' ').filter(Boolean);
  const off = lines.findIndex(({ id }, at) => id !== due[at]);
  const found =
    off >= 0
      ? `number ${off + 1} is ${lines[off]!.id} instead of ${due[off] ?? 'none'}`
      : lines.length < due.length
        ? `${due[lines.length]} is missing`
        : 'it is';
  return equal(file, 'the order of the lines is that of the layout', found, 'it is');
}

const isWithin = (inner: Frame, outer: Frame): boolean =>
  inner.left >= outer.left && inner.right <= outer.right && inner.top >= outer.top && inner.bottom <= outer.bottom;

/** The first line that stands behind one it lies in. */
function firstOutside(lines: Line[]): string {
  const rings = lines.flatMap(({ id, outlines }) =>
    outlines.map((outline) => ({
      id,
      frame: outline.frame,
      area: Math.abs(outline.area),
      polygon: flat(outline, 0.05),
    })),
  );
  for (const [at, outer] of rings.entries()) {
    for (const later of rings.slice(at + 1)) {
      if (later.area >= outer.area || !isWithin(later.frame, outer.frame)) continue;
      const [x, y] = [later.polygon[0]!, later.polygon[1]!];
      if (holds(outer.polygon, x, y)) return `${later.id} lies in ${outer.id} and comes after it`;
    }
  }
  return 'it is';
}

function once(file: string, lines: Line[]): Claim {
  const twice = cutTwice(lines.map(({ outlines }) => outlines));
  const found = twice
    ? `${lines[twice.one]!.id} and ${lines[twice.other]!.id} run along each other for ${twice.long.toFixed(1)} mm`
    : 'none';
  return equal(file, 'no line is cut twice', found, 'none');
}

/** Every path is one line without a fill, its kind told by name and by colour. */
function kinds({ entry: { file, cut } }: Sheet, lines: Line[]): Claim {
  const colours: Record<string, string> = cut.lines;
  const trouble = ({ id, outlines, line, stroke, fill }: Line): string | undefined => {
    if (outlines.length !== 1) return `${id} draws ${outlines.length} lines`;
    if (fill !== 'none') return `${id} is filled`;
    if (line !== (id === 'outline' ? cut.outline : 'cut')) return `${id} is a ${line || 'nameless'} line`;
    return stroke === colours[line] ? undefined : `${id} has the colour ${stroke || 'of nothing'}`;
  };
  const found = lines.map(trouble).find((one) => one !== undefined) ?? 'they are';
  const apart = new Set(Object.values(colours)).size === Object.keys(colours).length;
  return equal(
    file,
    'every path is one line of the kind and colour that the layout states',
    apart ? found : 'two kinds of line share a colour',
    'they are',
  );
}

/** The edge of the sheet, where it is drawn, is the edge of the drawing. */
function edge({ entry: { file, cut } }: Sheet, { lines, svg: { view } }: Stencil): Claim[] {
  const drawn = lines.find(({ id }) => id === 'outline');
  const claim = 'the edge of the sheet is drawn where the sheet ends';
  if (!drawn) return cut.outline === 'none' ? [] : [unproven(file, claim, 'it is not drawn', DRAWN)];
  const [outline] = drawn.outlines;
  if (!outline) return [unproven(file, claim, 'it is empty', DRAWN)];
  const { left, top, right, bottom } = outline.frame;
  const off = Math.max(
    Math.abs(left - view.x),
    Math.abs(top - view.y),
    Math.abs(right - view.x - view.width),
    Math.abs(bottom - view.y - view.height),
    // A rectangle fills its frame.
    Math.abs(Math.abs(outline.area) - view.width * view.height) / (view.width + view.height),
  );
  return [stated(file, claim, off <= DRAWN, off, DRAWN)];
}

/** Every cut runs on past its start as far as stated, along its own line, and where nothing is stated, none does. */
function overcuts({ entry: { file, cut } }: Sheet, lines: Line[]): Claim {
  const claim = 'every cut runs on past its start as the layout states';
  let off = 0;
  for (const { id, line, overcut, outlines } of lines) {
    const due = line === 'cut' ? cut.overcut : 0;
    const says = Number(overcut?.stated ?? 0);
    if (!(Math.abs(says - due) <= 0.001))
      return unproven(file, claim, `${id} states ${overcut?.stated ?? 'nothing'}`, due);
    if (due === 0) continue;
    if (overcut?.drawn.length !== outlines.length) return unproven(file, claim, `${id} does not run on`, due);
    for (const one of overcut.drawn) {
      const { long, off: beside } = followed(one);
      off = Math.max(off, Math.abs(long - due), beside);
    }
  }
  return stated(file, claim, off <= RUN_ON, off, RUN_ON);
}
