/** Thrown when a drawing is too much to be worked out. */
export class TooMuch extends Error {
  readonly what: 'curves' | 'crossings';

  constructor(what: 'curves' | 'crossings') {
    super(`too many ${what}`);
    this.what = what;
  }
}
