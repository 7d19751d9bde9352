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

/** Path text in relative steps between points already rounded, so that nothing adds up. */
export class OutlineText {
  text = '';
  private at: [number, number] = [0, 0];
  private open = false;

  /** Starts an outline; the one before it is closed. */
  moveTo(to: Spot): void {
    this.close();
    this.at = this.rounded(to);
    this.open = true;
    this.text += `M${beside(this.at)}`;
  }

  lineTo(to: Spot): void {
    const [x, y] = this.rounded(to);
    const [dx, dy] = [x - this.at[0], y - this.at[1]];
    this.at = [x, y];
    if (dx === 0 && dy === 0) return;
    this.text += dy === 0 ? `h${short(dx)}` : dx === 0 ? `v${short(dy)}` : `l${beside([dx, dy])}`;
  }

  /** One handle and the end, or two handles and the end. */
  curveTo(spots: Spot[]): void {
    const points = spots.map((spot) => this.rounded(spot));
    const steps = points.flatMap(([x, y]) => [x - this.at[0], y - this.at[1]]);
    this.at = points.at(-1)!;
    if (steps.every((step) => step === 0)) return;
    this.text += `${spots.length === 2 ? 'q' : 'c'}${beside(steps)}`;
  }

  close(): void {
    if (this.open) this.text += 'z';
    this.open = false;
  }

  private rounded([x, y]: Spot): [number, number] {
    return [Math.round(x * PER_MM) + 0, Math.round(y * PER_MM) + 0];
  }
}
