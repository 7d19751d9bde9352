import { inches } from '../../units/index.ts';

/** The length that the job's measurement is compared with, mm. */
export const BAR = inches(10);

/** By how much a drawing is enlarged so that it comes out true on a printer that prints 10 in as `measured` mm. */
export const correction = (measured: number): number => BAR / measured;
