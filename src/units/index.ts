export { writeArea } from './area.ts';
export { parseLength } from './length.ts';
export { parseNumber, type Refusal } from './number.ts';
export { shown } from './plain.ts';
export { roundToStep } from './round.ts';
export { readingDoubt, tapeTolerance } from './tape-tolerance.ts';
export { inches, MM_PER_INCH, type System, systemOf, UNITS, type Unit } from './unit.ts';
export { writeLength, writeTape } from './write.ts';
