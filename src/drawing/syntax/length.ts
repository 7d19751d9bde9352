/** CSS absolute units in px (CSS Values and Units 3, section 5.2: 1 in = 96 px = 2.54 cm = 72 pt = 6 pc). */
const PIXELS: Record<string, number> = {
  '': 1,
  px: 1,
  in: 96,
  cm: 96 / 2.54,
  mm: 96 / 25.4,
  q: 96 / 101.6,
  pt: 96 / 72,
  pc: 16,
};

const LENGTH = /^([-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?)(%|[a-z]*)$/i;

/**
 * A length of the drawing in its own units (px, 96 to the inch), or nothing when it is none.
 * @param hundred what 100 % stands for, in the same units; left out where a share has no meaning
 */
export function readLength(text: string, hundred?: number): number | undefined {
  const found = LENGTH.exec(text.trim());
  if (found === null) return undefined;
  const value = Number(found[1]);
  if (found[2] === '%') return hundred === undefined ? undefined : (value * hundred) / 100;
  const unit = PIXELS[found[2]!.toLowerCase()];
  return unit === undefined ? undefined : value * unit;
}
