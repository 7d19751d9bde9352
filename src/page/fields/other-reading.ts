import { parseLength, systemOf, type Unit, writeLength } from '../../units/index.ts';
import type { Path } from '../state/tree.ts';

/** From what to what a measurement of a home comes to, mm, by its place in the job. Our own choice: beyond it one is only asked. */
const USUAL: readonly (readonly [RegExp, least: number, most: number])[] = [
  [/^site\.(?:run|run at sides\.\w+|room\..+)$/, 600, 15_000],
  [/^site\.openings(?:\.(?:near|far))?$/, 400, 4_000],
  [/^overall\.(?:across|along)$/, 200, 15_000],
];

const BARE = /^\d+(?:\.\d+)?$/;
/** `2,37 m`: the comma as it is written where tapes are metric. */
const COMMA = /^(\d+),(\d+)\s*(mm|cm|m)?$/i;
/** `17-9 7/16`, `17 9`: feet and inches without their signs. */
const FEET_AND_INCHES = /^(\d+)(?:\s*[-–]\s*|\s+)(\d{1,2}(?:\s+\d+\/\d+)?)$/;
const METRIC: readonly Unit[] = ['m', 'cm', 'mm'];
const INCH_IN_64THS = 25.4 / 64;

/** Other readings of what was typed, each as it would be written in full; and why the first reading is doubted, if there was one. */
export interface OtherReading {
  says?: 'small' | 'large';
  readings: string[];
}

const inMm = (text: string, unit?: Unit): number => {
  const read = parseLength(text, unit);
  return read.ok ? read.mm : Number.NaN;
};

/** A number with its unit; feet come out with their inches. */
const withUnit = (number: string, unit: Unit): string =>
  unit === 'ft' ? writeLength(inMm(number, unit), unit, INCH_IN_64THS) : `${number} ${unit}`;

/** Units that the numbers may be in. */
function unitsFor(numbers: readonly string[], bare: Unit, isSmall: boolean): readonly Unit[] {
  if (systemOf(bare) === 'metric') return METRIC.filter((unit) => unit !== bare);
  if (!isSmall) return ['cm', 'mm'];
  return numbers.some((number) => number.includes('.')) ? ['m', 'ft'] : ['ft'];
}

/** What a text may mean that cannot be read, or that in the unit of the job would be no measurement of a home; nothing where it is one. */
export function otherReading(path: Path, text: string, bare: Unit | undefined): OtherReading | undefined {
  const [, least, most] = USUAL.find(([place]) => place.test(path.join('.'))) ?? [];
  const ends = text.trim().split(/\s+to\s+/i);
  if (least === undefined || most === undefined || ends.length > 2) return undefined;
  const asked = (readings: string[][], says?: OtherReading['says']): OtherReading | undefined => {
    const usual = readings.filter((one) => one.map((end) => inMm(end)).every((mm) => mm >= least && mm <= most));
    return usual.length > 0 ? { ...(says ? { says } : {}), readings: usual.map((one) => one.join(' to ')) } : undefined;
  };

  const feet = ends.map((end) => FEET_AND_INCHES.exec(end));
  if (
    feet.every((end) => end !== null) &&
    systemOf(bare ?? 'in') === 'inch' &&
    !ends.some((end) => inMm(end, bare) >= 0)
  )
    return asked([feet.map(([, foot, inch]) => `${foot}' ${inch}"`)]);
  const commas = ends.map((end) => COMMA.exec(end));
  if (commas.every((end) => end !== null) && systemOf(bare ?? 'in') === 'metric') {
    const units = METRIC.filter((unit) => commas.every(([, , , said]) => (said ?? unit).toLowerCase() === unit));
    return asked(units.map((unit) => commas.map(([, whole, part]) => `${whole}.${part} ${unit}`)));
  }
  if (!bare || !ends.every((end) => BARE.test(end))) return undefined;
  const now = ends.map((end) => inMm(end, bare));
  if (now.every((mm) => mm >= least && mm <= most)) return undefined;
  const isSmall = now.some((mm) => mm < least);
  const units = unitsFor(ends, bare, isSmall);
  return asked(
    units.map((unit) => ends.map((end) => withUnit(end, unit))),
    isSmall ? 'small' : 'large',
  );
}
