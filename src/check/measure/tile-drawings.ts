import { type Claim, DRAWN, equal, stated, unproven } from '../claim.ts';
import type { FileSet } from '../file-set.ts';
import type { PrintedDrawing, PrintFile } from '../read/print.ts';
import { readSvg } from '../read/svg.ts';

/** A, B, … Z, AA, AB, … */
const letters = (column: number): string =>
  (column < 26 ? '' : letters(Math.floor(column / 26) - 1)) + String.fromCharCode(65 + (column % 26));

const number = '(-?\\d+(?:\\.\\d+)?)';
const MOVE = new RegExp(`transform="translate\\(${number} ${number}\\)(?: scale\\(${number}\\))?"`);
const CLIP = new RegExp(`<clipPath id="page"><rect x="${number}" y="${number}"`);

/** The pages as SVG files: all there, as large as their paper, the drawing where it belongs; no page of another layout among them. */
export function tileDrawings(set: FileSet, file: PrintFile, names: string[]): Claim[] {
  const due = new Map<string, Place>(
    (file.svg ? file.drawings : []).flatMap((drawing) =>
      Array.from({ length: drawing.rows * drawing.columns }, (_, at) => {
        const base = drawing.file.replace(/^stencil-|\.svg$/g, '');
        const [row, column] = [Math.floor(at / drawing.columns), at % drawing.columns];
        return [`tile-${base}-${row + 1}-${letters(column).toLowerCase()}.svg`, { drawing, row, column }] as const;
      }),
    ),
  );
  const strange = names.filter((name) => !due.has(name));
  return [
    equal('', 'no pages of another layout lie among the files', strange[0] ?? 'none', 'none'),
    ...[...due].flatMap(([name, place]) => tileClaims(set, file, name, place)),
  ];
}

interface Place {
  drawing: PrintedDrawing;
  row: number;
  column: number;
}

function tileClaims(set: FileSet, { factor }: PrintFile, name: string, { drawing, row, column }: Place): Claim[] {
  const [text, svg] = [set.text(name), set.read(name, readSvg)];
  if (!text.ok || !svg.ok) return [unproven(name, 'the page can be read', svg.ok ? '' : svg.says)];
  const { width, height, view } = svg.value;
  const size = Math.max(
    Math.abs(width - drawing.paper.across),
    Math.abs(height - drawing.paper.along),
    Math.abs(width - view.width),
    Math.abs(height - view.height),
  );
  const move = MOVE.exec(text.value)
    ?.slice(1)
    .map((one) => Number(one ?? 1));
  const clip = CLIP.exec(text.value)?.slice(1).map(Number);
  const [left, top] = drawing.box;
  const off =
    move && clip
      ? Math.max(
          Math.abs((clip[0]! - move[0]!) / move[2]! - left - column * drawing.step.across),
          Math.abs((clip[1]! - move[1]!) / move[2]! - top - row * drawing.step.along),
          Math.abs(move[2]! / factor - 1) * 1000,
        )
      : Number.POSITIVE_INFINITY;
  return [
    stated(name, 'the page is as large as its paper', size <= 0.002, size, 0.002),
    stated(name, 'the page shows its own part, to size', off <= DRAWN, off, DRAWN),
  ];
}
