import type { Face } from './face.ts';

/** Points in a millimetre: 72 to the inch (ISO 32000-1, 8.3.2.3). */
export const POINTS = 72 / 25.4;

/** A number of a page to 1/100 point, which is under 4 µm. */
export function short(value: number): string {
  const hundredths = Math.round(value * 100);
  return String(hundredths / 100 + 0);
}

const known = new Map<string, string>();

/** `#rrggbb` or `#rgb` as three shares. */
function shares(hex: string): string {
  const found = known.get(hex);
  if (found !== undefined) return found;
  const full = hex.length === 4 ? [...hex.slice(1)].map((digit) => digit + digit).join('') : hex.slice(1);
  const made = [0, 2, 4]
    .map((at) => String(Math.round((Number.parseInt(full.slice(at, at + 2), 16) / 255) * 1000) / 1000))
    .join(' ');
  known.set(hex, made);
  return made;
}

export const fillWith = (hex: string): string => `${shares(hex)} rg`;
export const strokeWith = (hex: string): string => `${shares(hex)} RG`;

/** A page being drawn on: mm from its top left corner, y down; `scale` enlarges all of it, for large paper. */
export class Ink {
  private readonly lines: string[] = [];

  constructor(
    /** Of the paper, mm. */
    private readonly high: number,
    readonly scale: number,
  ) {}

  /** Places of the page in points from its lower left corner, as PDF counts. */
  x = (mm: number): number => mm * this.scale * POINTS;
  y = (mm: number): number => (this.high - mm * this.scale) * POINTS;
  length = (mm: number): number => mm * this.scale * POINTS;

  add(operators: string): void {
    this.lines.push(operators);
  }

  text(face: Face, text: string, x: number, base: number, size: number, colour: string): void {
    const { operand } = face.set(text);
    if (operand === '') return;
    this.add(
      `BT ${fillWith(colour)} /${face.key} ${short(this.length(size))} Tf 1 0 0 1 ${short(this.x(x))} ${short(this.y(base))} Tm [${operand}] TJ ET`,
    );
  }

  rule(x: number, y: number, to: number, width: number, colour: string): void {
    const at = short(this.y(y));
    this.add(
      `q ${short(this.length(width))} w ${strokeWith(colour)} ${short(this.x(x))} ${at} m ${short(this.x(to))} ${at} l S Q`,
    );
  }

  private corner(x: number, y: number, wide: number, high: number): string {
    return `${short(this.x(x))} ${short(this.y(y + high))} ${short(this.length(wide))} ${short(this.length(high))} re`;
  }

  fill(x: number, y: number, wide: number, high: number, colour: string): void {
    this.add(`q ${fillWith(colour)} ${this.corner(x, y, wide, high)} f Q`);
  }

  frame(x: number, y: number, wide: number, high: number, width: number, colour: string): void {
    this.add(`q ${short(this.length(width))} w ${strokeWith(colour)} ${this.corner(x, y, wide, high)} S Q`);
  }

  ring(x: number, y: number, radius: number, width: number, colour: string): void {
    const handle = (4 / 3) * (Math.SQRT2 - 1) * radius;
    const at = (dx: number, dy: number) => `${short(this.x(x + dx))} ${short(this.y(y + dy))}`;
    const r = radius;
    this.add(
      [
        `q ${short(this.length(width))} w ${strokeWith(colour)} ${at(r, 0)} m`,
        `${at(r, handle)} ${at(handle, r)} ${at(0, r)} c ${at(-handle, r)} ${at(-r, handle)} ${at(-r, 0)} c`,
        `${at(-r, -handle)} ${at(-handle, -r)} ${at(0, -r)} c ${at(handle, -r)} ${at(r, -handle)} ${at(r, 0)} c h S Q`,
      ].join(' '),
    );
  }

  operators(): string {
    return this.lines.join('\n');
  }
}
