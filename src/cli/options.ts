import { InvalidArgumentError } from 'commander';

/** Reads a whole number from 1 to `most` from the command line. */
export function wholeNumber(most: number): (text: string) => number {
  return (text) => {
    const value = /^\d{1,6}$/.test(text) ? Number(text) : 0;
    if (value < 1 || value > most) throw new InvalidArgumentError(`Give a whole number from 1 to ${most}.`);
    return value;
  };
}
