/** What a text of operators is told in, one after the other. */
export interface Taking {
  number(value: number): void;
  /** A name with its stroke, `/F1`, or a string in hexadecimal with its brackets, `<0041>`. */
  operand(text: string): void;
  operator(name: string): void;
}

const [MINUS, PLUS, POINT, NOUGHT, NINE] = [45, 43, 46, 48, 57];
const [STROKE, OPENS, CLOSES, PERCENT] = [47, 60, 62, 37];

const isSpace = (code: number): boolean => code === 32 || (code >= 9 && code <= 13) || code === 0;
const isDigit = (code: number): boolean => code >= NOUGHT && code <= NINE;
/** Letters, and the marks `*`, `'` and `"` that operators have (ISO 32000-1, annex A). */
const isOperator = (code: number): boolean =>
  (code >= 97 && code <= 122) || (code >= 65 && code <= 90) || code === 42 || code === 39 || code === 34;
const isHex = (code: number): boolean => isDigit(code) || (code >= 97 && code <= 102) || (code >= 65 && code <= 70);
/** What ends a name: white space, brackets of any kind, a stroke (ISO 32000-1, 7.2.2). */
const endsName = (code: number): boolean => isSpace(code) || '/[]<>()'.includes(String.fromCharCode(code));

/**
 * Cuts a text of operators into its parts (ISO 32000-1, 7.2 and 7.3). Comments are left out, and so are the brackets of arrays: what stands in them is told one by one.
 * @returns false where something stands that is none of these
 */
export function eachToken(text: string, taking: Taking): boolean {
  const end = text.length;
  const until = (from: number, is: (code: number) => boolean): number => {
    let at = from;
    while (at < end && is(text.charCodeAt(at))) at++;
    return at;
  };
  let at = 0;
  while (at < end) {
    const code = text.charCodeAt(at);
    const from = at;
    if (isSpace(code) || code === 91 || code === 93) at++;
    else if (isDigit(code) || code === MINUS || code === PLUS || code === POINT) {
      let digits = 0;
      let [whole, shift] = [0, 1];
      at += code === MINUS || code === PLUS ? 1 : 0;
      for (let isFraction = false; at < end; at++) {
        const one = text.charCodeAt(at);
        if (isDigit(one)) {
          whole = 10 * whole + one - NOUGHT;
          if (isFraction) shift *= 10;
          digits++;
        } else if (one === POINT && !isFraction) isFraction = true;
        else break;
      }
      if (digits === 0) return false;
      // A quotient of two whole numbers below 2^53 is rounded as the digits themselves would be.
      taking.number(digits > 15 ? Number(text.slice(from, at)) : (code === MINUS ? -whole : whole) / shift);
    } else if (isOperator(code)) {
      at = until(at, isOperator);
      taking.operator(text.slice(from, at));
    } else if (code === STROKE) {
      at = until(at + 1, (one) => !endsName(one));
      taking.operand(text.slice(from, at));
    } else if (code === OPENS) {
      at = until(at + 1, (one) => isHex(one) || isSpace(one)) + 1;
      if (text.charCodeAt(at - 1) !== CLOSES) return false;
      taking.operand(text.slice(from, at));
    } else if (code === PERCENT) at = until(at, (one) => one !== 10 && one !== 13);
    else return false;
  }
  return true;
}
