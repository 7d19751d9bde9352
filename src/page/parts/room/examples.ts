import { tree } from '../../state/job.ts';
import { textAt } from '../../state/tree.ts';
import { systemIn } from './begin.ts';

/** What is shown in an empty line: in inches, or in the metric unit of the job. */
export function such(inches: string, centimetres: string): string {
  if (systemIn(tree.value) === 'inch') return inches;
  const units = textAt(tree.value, ['units']);
  const number = (text: string): string => {
    const by = units === 'mm' ? 10 : units === 'm' ? 0.01 : 1;
    return String(Math.round(Number(text) * by * 1000) / 1000);
  };
  return centimetres.replace(/\d+(?:\.\d+)?/g, number);
}
