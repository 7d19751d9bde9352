/** The look of every drawing the program makes: dark ink on warm paper, fine lines, one red for the axis. */
export const INK = '#2b2520';
/** For words of less weight; 6.6 to 1 on the paper. */
export const SOFT = '#5a5046';
export const FAINT = '#8d806d';
export const RED = '#a33a2a';

const PAPERS = ['#f6efe0', '#e9dcc0', '#dfe5e6'];
/** Colours whose channels differ by less are too alike, of 255. */
const ALIKE = 14;

const channels = (hex: string): number[] => [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));

/** The first paper that no colour of the work can be taken for. */
export function paperFor(colours: string[]): string {
  const alike = (paper: string, colour: string) => {
    const [one, other] = [channels(paper), channels(colour)];
    return one.every((value, at) => Math.abs(value - other[at]!) < ALIKE);
  };
  return PAPERS.find((paper) => !colours.some((colour) => alike(paper, colour))) ?? PAPERS[0]!;
}
