import type { Meeting } from './meeting.ts';

/** How colours meet, in a sentence; nothing where they do so as drawn. */
export function sayMeeting({ way, by }: Meeting): string[] {
  const width = `${Number(by.toFixed(2))} mm`;
  if (way === 'overlap')
    return [
      `Where two colours touch, the one painted first reaches ${width} under the other. Keep to the order of the sheets.`,
    ];
  return way === 'gap' ? [`Where two colours meet, a line of ground ${width} wide stays bare between them.`] : [];
}
