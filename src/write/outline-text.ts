import { beside, closedSteps, type Step } from './steps.ts';

export type Spot = readonly [x: number, y: number];

/** Where an outline begins, in hundredths. */
type Start = readonly [x: number, y: number];

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

/** Whole hundredths of a millimetre, never minus nought. */
export const hundredths = (mm: number): number => Math.round(mm * PER_MM) + 0;

/** One outline of a glyph: where it starts from the glyph's own origin, in hundredths, and the steps that follow, closed. */
interface Contour {
  x: number;
  y: number;
  steps: Step[];
  /** Where the steps have led so far. */
  end: readonly [number, number];
  /** The steps as text, once they are wanted. */
  tail?: string;
}

/** The outlines of one glyph in relative steps between points already rounded, so that nothing adds up; the same wherever it stands. */
export class GlyphText {
  private readonly contours: Contour[] = [];
  private at: readonly [number, number] = [0, 0];
  /** Where the handle of the next curve lies if it mirrors the last one. */
  private mirrored: readonly [number, number] | undefined;

  /** Starts an outline. */
  moveTo(to: Spot): void {
    this.at = rounded(to);
    this.mirrored = undefined;
    this.contours.push({ x: this.at[0], y: this.at[1], steps: [], end: this.at });
  }

  lineTo(to: Spot): void {
    const [x, y] = rounded(to);
    const [dx, dy] = [x - this.at[0], y - this.at[1]];
    this.at = [x, y];
    if (dx === 0 && dy === 0) return;
    this.mirrored = undefined;
    this.step(dy === 0 ? ['h', [dx]] : dx === 0 ? ['v', [dy]] : ['l', [dx, dy]]);
  }

  /** One handle and the end, or two handles and the end. */
  curveTo(spots: Spot[]): void {
    const points = spots.map(rounded);
    const [fromX, fromY] = this.at;
    const steps = points.flatMap(([x, y]) => [x - fromX, y - fromY]);
    this.at = points.at(-1)!;
    if (steps.every((step) => step === 0)) return;
    const isMirrored = this.mirrored?.[0] === points[0]![0] && this.mirrored[1] === points[0]![1];
    if (spots.length === 2) this.step(isMirrored ? ['t', steps.slice(2)] : ['q', steps]);
    else this.step(['c', steps]);
    const [handleX, handleY] = points.at(-2)!;
    this.mirrored = spots.length === 2 ? [2 * this.at[0] - handleX, 2 * this.at[1] - handleY] : undefined;
  }

  /**
   * Path text with the glyph's origin at this place, in hundredths.
   * @param from where the outline before it began, if it follows one; it is then written from there
   */
  textAt(x: number, y: number, from?: Start): { text: string; from: Start | undefined } {
    let text = '';
    let before = from;
    for (const contour of this.contours) {
      const start: Start = [x + contour.x, y + contour.y];
      contour.tail ??= closedSteps(contour.steps, short, contour.end[0] === contour.x && contour.end[1] === contour.y);
      const step = before ? ([start[0] - before[0], start[1] - before[1]] as const) : start;
      text += `${before ? 'm' : 'M'}${beside(step, short)}${contour.tail}`;
      before = start;
    }
    return { text, from: before };
  }

  private step(step: Step): void {
    const contour = this.contours.at(-1)!;
    contour.steps.push(step);
    contour.end = this.at;
  }
}

const rounded = ([x, y]: Spot): [number, number] => [hundredths(x), hundredths(y)];
