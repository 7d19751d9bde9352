/** How the tape reads, which decides what is easy to mark and what is the same to the eye. Lengths in mm. */
export interface Tape {
  /** Finest mark. */
  step: number;
  /** The numbered mark: an inch or a centimetre. */
  unit: number;
  /** How the unit is parted, from what reads easily to what reads badly. */
  parts: number[];
  /** Borders closer than this are one kind. */
  coarse: number;
  /** Points for a strip of plain ground one unit wider than wished. */
  room: number;
}

export const tapeOf = (system: 'inch' | 'metric', step: number): Tape =>
  system === 'inch'
    ? { step, unit: 25.4, parts: [1, 2, 4, 8, 16], coarse: 12.7, room: 0.5 }
    : { step, unit: 10, parts: [1, 2, 5, 10], coarse: 10, room: 0.2 };

/** 0 for a whole unit, 1 for what is finer than the last of the parts. */
export function hardToRead(mm: number, { parts, unit }: Tape): number {
  let at = 0;
  for (; at < parts.length; at++) {
    const n = (mm / unit) * parts[at]!;
    if (Math.abs(n - Math.round(n)) < 1e-6) break;
  }
  return at / parts.length;
}
