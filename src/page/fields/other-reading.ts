import { parseLength, systemOf, type Unit, writeLength } from '../../units/index.ts';
import type { Path } from '../state/tree.ts';

/** From what to what a measurement of a home comes to, mm, by its place in the job. Our own choice: beyond it one is only asked. */
const USUAL: readonly (readonly [RegExp, least: number, most: number])[] = [
  [/^site\.(?:run|run at sides\.\w+|room\..+)$/, 600, 15_000],
  [/^site\.openings(?:\.(?:near|far))?$/, 400, 4_000],
  [/^overall\.(?:across|along)$/, 200, 15_000],
];

const BARE = /^\d+(?:\.\d+)?$/;
/** `17-9 7/16`, `17 9`: feet and inches without their signs. */
const FEET_AND_INCHES = /^(\d+)(?:\s*[-–]\s*|\s+)(\d{1,2}(?:\s+\d+\/\d+)?)$/;
const INCH_IN_64THS = 25.4 / 64;

/** Other readings of what was typed, each as it would be written in full; with what is wrong with the first reading, if it could be read. */
export interface OtherReading {
  says?: 'small' | 'large';
  readings: string[];
}

/** What a number without its unit may mean, where in the unit of the job it would be no measurement of a home; nothing where it is one. */
export function otherReading(path: Path, text: string, bare: Unit | undefined): OtherReading | undefined {
  const usual = USUAL.find(([place]) => place.test(path.join('.')));
  if (!usual) return undefined;
  const [, least, most] = usual;
  const isUsual = (mm: number): boolean => mm >= least && mm <= most;
  const ends = text.trim().split(/\s+to\s+/i);
  if (ends.length > 2) return undefined;
  const isInch = systemOf(bare ?? 'in') === 'inch';
  const inMm = (written: string, unit?: Unit): number => {
    const read = parseLength(written, unit);
    return read.ok ? read.mm : Number.NaN;
  };
  const full = ends.map((end) => FEET_AND_INCHES.exec(end));
  if (isInch && full.every((end) => end)) {
    const written = full.map((end) => `${end![1]}' ${end![2]}"`);
    const isNew = ends.every((end) => !parseLength(end, bare).ok) && written.every((end) => isUsual(inMm(end)));
    return isNew ? { readings: [written.join(' to ')] } : undefined;
  }
  if (!bare || !ends.every((end) => BARE.test(end))) return undefined;
  const now = ends.map((end) => inMm(end, bare));
  if (now.every(isUsual)) return undefined;
  const isSmall = now.some((mm) => mm < least);
  const inInches: Unit[] = !isSmall ? ['cm', 'mm'] : ends.some((end) => end.includes('.')) ? ['m', 'ft'] : ['ft'];
  const units: Unit[] = isInch ? inInches : ['m', 'cm', 'mm'];
  const readings = units
    .filter((unit) => unit !== bare && ends.every((end) => isUsual(inMm(end, unit))))
    .map((unit) => ends.map((end) => written(end, unit)).join(' to '));
  return readings.length > 0 ? { says: isSmall ? 'small' : 'large', readings } : undefined;
}

/** Feet come out with their inches. */
function written(number: string, unit: Unit): string {
  const read = unit === 'ft' ? parseLength(number, unit) : undefined;
  return read?.ok ? writeLength(read.mm, 'ft', INCH_IN_64THS) : `${number} ${unit}`;
}
