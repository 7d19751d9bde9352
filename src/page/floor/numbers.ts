import type { Schedule } from '../../marks/schedule.ts';

/** The numbers that go on the floor, as text: jobs with the same ones share their ticks. */
const numbersOf = ({ lines, checks }: Pick<Schedule, 'lines' | 'checks'>): string =>
  [
    ...lines.map(
      ({ name, marks }) => `${name} ${marks.map(({ number, reads }) => `${number}:${reads.toFixed(4)}`).join(' ')}`,
    ),
    `checks ${checks.map(({ reads }) => reads.toFixed(4)).join(' ')}`,
  ].join('\n');

/** 32-bit FNV-1a of text by its UTF-16 units, from a given start. */
function fnv(text: string, start: number): number {
  let hash = start;
  for (let at = 0; at < text.length; at++) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193) >>> 0;
  return hash;
}

/** A short name for the numbers of a schedule: other numbers, another name. */
export function nameOfNumbers(schedule: Pick<Schedule, 'lines' | 'checks'>): string {
  const text = numbersOf(schedule);
  const [one, other] = [fnv(text, 0x811c9dc5), fnv([...text].reverse().join(''), 0x811c9dc5)];
  return [one, other].map((half) => half.toString(36)).join('-');
}
