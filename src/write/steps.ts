/** A step of a path: the letter of its command, relative, and its numbers in whole units of the writer. */
export type Step = readonly [command: string, numbers: readonly number[]];

/** Puts a whole count of units as a number of millimetres, without a nought before its point. */
export type Put = (units: number) => string;

/** Numbers side by side, behind what stands before them; a space only where neither a sign nor a second point parts them (SVG 2, 9.3.9). */
export function beside(numbers: readonly number[], put: Put, before = ''): string {
  let text = '';
  let last = before;
  for (const number of numbers) {
    const next = put(number);
    const isParted = last === '' || next.startsWith('-') || (next.startsWith('.') && last.includes('.'));
    text += isParted ? next : ` ${next}`;
    last = next;
  }
  return text;
}

const isLine = ([command]: Step): boolean => command === 'h' || command === 'v' || command === 'l';

/** Steps as short as the grammar of SVG allows: a letter only where the command changes. */
export function stepsText(steps: readonly Step[], put: Put): string {
  let text = '';
  let [command, last] = ['', ''];
  for (const [next, numbers] of steps) {
    text += next === command ? beside(numbers, put, last) : next + beside(numbers, put);
    [command, last] = [next, put(numbers.at(-1)!)];
  }
  return text;
}

/**
 * The same, and closed: no line where closing draws it.
 * @param isHome whether they lead back to where they began
 */
export function closedSteps(steps: readonly Step[], put: Put, isHome: boolean): string {
  const left = isHome && steps.length > 1 && isLine(steps.at(-1)!) ? steps.slice(0, -1) : steps;
  return `${stepsText(left, put)}z`;
}

/** A straight step; `undefined` where it leads nowhere. */
export function lineStep(dx: number, dy: number): Step | undefined {
  if (dx !== 0 && dy !== 0) return ['l', [dx, dy]];
  if (dx !== 0) return ['h', [dx]];
  return dy === 0 ? undefined : ['v', [dy]];
}
