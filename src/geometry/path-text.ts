/** What path text is told as: every command in absolute numbers, each kind of curve as it stands there. */
export interface PathTaking {
  move(x: number, y: number): void;
  line(x: number, y: number): void;
  cubic(x1: number, y1: number, x2: number, y2: number, x: number, y: number): void;
  /** Closes the path, back to where it began. */
  close(x: number, y: number): void;
  /** Where an arc ends; path text with arcs cannot be told where this is left out. */
  arc?(x: number, y: number): void;
}

/** How many numbers each command takes (SVG 1.1, 8.3). */
const TAKES: Record<string, number> = { M: 2, L: 2, H: 1, V: 1, C: 6, S: 4, Q: 4, T: 2, A: 7, Z: 0 };
/** Places of the two flags among the numbers of an arc, which may stand without a space after them. */
const FLAGS = [3, 4];

const isDigit = (code: number): boolean => code >= 48 && code <= 57;
const isGap = (code: number): boolean => code === 32 || code === 44 || (code >= 9 && code <= 13);

/** Reads numbers one by one, as close to each other as path text lets them stand. */
class Numbers {
  at = 0;

  constructor(private readonly text: string) {}

  /** The letter that stands here, if one does. */
  letter(): string {
    this.skip();
    const code = this.text.charCodeAt(this.at);
    const isLetter = (code >= 65 && code <= 90) || (code >= 97 && code <= 122);
    return isLetter ? this.text[this.at++]! : '';
  }

  get isAtEnd(): boolean {
    this.skip();
    return this.at >= this.text.length;
  }

  /** NaN where none stands here. */
  flag(): number {
    this.skip();
    const code = this.text.charCodeAt(this.at);
    if (code !== 48 && code !== 49) return Number.NaN;
    this.at += 1;
    return code - 48;
  }

  /** NaN where none stands here. */
  number(): number {
    this.skip();
    const { text } = this;
    const from = this.at;
    let at = from;
    const sign = text.charCodeAt(at);
    if (sign === 43 || sign === 45) at++;
    let [whole, shift, digits, isFraction] = [0, 1, 0, false];
    for (; at < text.length; at++) {
      const code = text.charCodeAt(at);
      if (isDigit(code)) {
        whole = 10 * whole + code - 48;
        if (isFraction) shift *= 10;
        digits++;
      } else if (code === 46 && !isFraction) isFraction = true;
      else break;
    }
    if (digits === 0) return Number.NaN;
    const power = /[eE][+-]?\d+/y;
    power.lastIndex = at;
    const letter = text.charCodeAt(at) | 32;
    if (letter === 101 && power.test(text)) {
      this.at = power.lastIndex;
      return Number(text.slice(from, this.at));
    }
    this.at = at;
    // A quotient of two whole numbers below 2^53 is rounded as the digits themselves would be.
    return digits > 15 ? Number(text.slice(from, at)) : (sign === 45 ? -whole : whole) / shift;
  }

  private skip(): void {
    while (isGap(this.text.charCodeAt(this.at))) this.at++;
  }
}

/**
 * Walks path text of SVG 1.1 (chapter 8.3) from its first command to its last.
 * @returns false where something stands that cannot be read or told; what came before it has been told
 */
export function walkPath(d: string, taking: PathTaking): boolean {
  const numbers = new Numbers(d);
  const n = [0, 0, 0, 0, 0, 0, 0];
  let [x, y, startX, startY] = [0, 0, 0, 0];
  /** The last handle, for the commands that mirror it, and what drew it. */
  let [handleX, handleY, before] = [0, 0, ''];
  let command = '';
  const cubic = (x1: number, y1: number, x2: number, y2: number, toX: number, toY: number) => {
    taking.cubic(x1, y1, x2, y2, toX, toY);
    [handleX, handleY, x, y] = [x2, y2, toX, toY];
  };
  const quadratic = (hx: number, hy: number, toX: number, toY: number) => {
    cubic(
      x + (2 / 3) * (hx - x),
      y + (2 / 3) * (hy - y),
      toX + (2 / 3) * (hx - toX),
      toY + (2 / 3) * (hy - toY),
      toX,
      toY,
    );
    [handleX, handleY] = [hx, hy];
  };
  while (!numbers.isAtEnd) {
    const letter = numbers.letter();
    if (letter) command = letter;
    const upper = command.toUpperCase();
    const takes = TAKES[upper];
    // A path begins with a move, and nothing but a command follows a close.
    if (takes === undefined || (before === '' && upper !== 'M') || (takes === 0 && !letter)) return false;
    for (let k = 0; k < takes; k++) {
      n[k] = upper === 'A' && FLAGS.includes(k) ? numbers.flag() : numbers.number();
      if (Number.isNaN(n[k])) return false;
    }
    const [ox, oy] = command === upper ? [0, 0] : [x, y];
    if (upper === 'M') {
      [x, y] = [ox + n[0]!, oy + n[1]!];
      [startX, startY] = [x, y];
      taking.move(x, y);
      command = command === 'M' ? 'L' : 'l';
    } else if (upper === 'L' || upper === 'H' || upper === 'V') {
      [x, y] = [upper === 'V' ? x : ox + n[0]!, upper === 'H' ? y : oy + n[upper === 'V' ? 0 : 1]!];
      taking.line(x, y);
    } else if (upper === 'C') cubic(ox + n[0]!, oy + n[1]!, ox + n[2]!, oy + n[3]!, ox + n[4]!, oy + n[5]!);
    else if (upper === 'S') {
      const isMirrored = before === 'C' || before === 'S';
      const [mx, my] = isMirrored ? [2 * x - handleX, 2 * y - handleY] : [x, y];
      cubic(mx, my, ox + n[0]!, oy + n[1]!, ox + n[2]!, oy + n[3]!);
    } else if (upper === 'Q') quadratic(ox + n[0]!, oy + n[1]!, ox + n[2]!, oy + n[3]!);
    else if (upper === 'T') {
      const isMirrored = before === 'Q' || before === 'T';
      const [mx, my] = isMirrored ? [2 * x - handleX, 2 * y - handleY] : [x, y];
      quadratic(mx, my, ox + n[0]!, oy + n[1]!);
    } else if (upper === 'A') {
      if (!taking.arc) return false;
      [x, y] = [ox + n[5]!, oy + n[6]!];
      taking.arc(x, y);
    } else {
      [x, y] = [startX, startY];
      taking.close(x, y);
    }
    before = upper;
  }
  return true;
}
