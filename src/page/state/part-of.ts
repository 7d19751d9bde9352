import type { Issue } from '../../issue.ts';
import type { PartKey } from './folded.ts';

/** The part of the card that a key of the job is told in. */
const PART: Record<string, PartKey> = {
  title: 'room',
  units: 'room',
  surface: 'room',
  site: 'room',
  overall: 'room',
  cloth: 'room',
  stairs: 'room',
  reserve: 'fit',
  'end gap': 'fit',
  tape: 'marks',
  field: 'pattern',
  border: 'pattern',
  'inner border': 'pattern',
  medallion: 'pattern',
  lettering: 'pattern',
  palette: 'colours',
  colours: 'colours',
  colourways: 'colours',
  preview: 'colours',
  stencil: 'stencil',
  print: 'files',
  paint: 'paint',
  'paint is': 'paint',
  'floor is': 'paint',
  'house built': 'paint',
};
const FIT: readonly string[] = ['repeats', 'pitch', 'stretch', 'landing', 'size', 'width'];

/** The part of the card where an issue is put right; none where no part has the key. */
export const partOf = ({ path: [key, below], code }: Pick<Issue, 'path' | 'code'>): PartKey | undefined => {
  if (code.startsWith('fit/')) return 'fit';
  if (key === 'field' || key === 'border') return FIT.includes(String(below)) ? 'fit' : 'pattern';
  return PART[String(key)];
};
