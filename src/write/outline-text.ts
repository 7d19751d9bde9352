export type Spot = readonly [x: number, y: number];

/** Labels are written to 0.01 mm: they are read, not cut. */
const PER_MM = 100;

/** Steps of less than this many hundredths are met again and again; they are put into words once. */
const OFTEN = 2000;
const known: string[] = [];

/** `0.05` as `.05`, `-3` as `-3`: hundredths of a millimetre as millimetres, as short as SVG allows. */
function short(hundredths: number): string {
  if (Math.abs(hundredths) >= OFTEN) return shortly(hundredths);
  const at = hundredths + OFTEN;
  known[at] ??= shortly(hundredths);
  return known[at];
}

function shortly(hundredths: number): string {
  const text = String(Math.abs(hundredths) / PER_MM).replace(/^0\./, '.');
  return hundredths < 0 ? `-${text}` : text;
}

/** Numbers side by side; only where nothing else parts them is a space needed. */
function beside(numbers: number[]): string {
  let text = '';
  for (const number of numbers) {
    const next = short(number);
    text += text === '' || next.startsWith('-') ? next : ` ${next}`;
  }
  return text;
}

/** Whole hundredths of a millimetre, never minus nought. */
export const hundredths = (mm: number): number => Math.round(mm * PER_MM) + 0;

/** One outline of a glyph: where it starts from the glyph's own origin, in hundredths, and the steps that follow, closed. */
interface Contour {
  x: number;
  y: number;
  tail: string;
}

/** The outlines of one glyph in relative steps between points already rounded, so that nothing adds up; the same wherever it stands. */
export class GlyphText {
  private readonly contours: Contour[] = [];
  private at: [number, number] = [0, 0];

  /** Starts an outline. */
  moveTo(to: Spot): void {
    this.at = rounded(to);
    this.contours.push({ x: this.at[0], y: this.at[1], tail: '' });
  }

  lineTo(to: Spot): void {
    const [x, y] = rounded(to);
    const [dx, dy] = [x - this.at[0], y - this.at[1]];
    this.at = [x, y];
    if (dx === 0 && dy === 0) return;
    this.step(dy === 0 ? `h${short(dx)}` : dx === 0 ? `v${short(dy)}` : `l${beside([dx, dy])}`);
  }

  /** One handle and the end, or two handles and the end. */
  curveTo(spots: Spot[]): void {
    const points = spots.map(rounded);
    const steps = points.flatMap(([x, y]) => [x - this.at[0], y - this.at[1]]);
    this.at = points.at(-1)!;
    if (steps.every((step) => step === 0)) return;
    this.step(`${spots.length === 2 ? 'q' : 'c'}${beside(steps)}`);
  }

  /** Path text with the glyph's origin at this place, in hundredths. */
  textAt(x: number, y: number): string {
    let text = '';
    for (const contour of this.contours) text += `M${beside([x + contour.x, y + contour.y])}${contour.tail}z`;
    return text;
  }

  private step(text: string): void {
    this.contours.at(-1)!.tail += text;
  }
}

const rounded = ([x, y]: Spot): [number, number] => [hundredths(x), hundredths(y)];
