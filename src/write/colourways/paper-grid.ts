import { type Size, turned } from '../tiles/paper.ts';

/** Round the edges of a page, what its title takes and what its foot takes, mm. */
export const PAGE = { margin: 12, head: 13, foot: 9 };
/** Between two pictures, mm. */
export const GAP = { across: 9, along: 7 };
/** What a picture is wide at least where the paper lets it, mm, and how much less is about as much. */
const WIDE = 60;
const ABOUT = 0.95;

/** Scales that are easily said: so many times smaller than the floor. */
const SCALES = [
  1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 12, 15, 16, 18, 20, 24, 25, 30, 32, 36, 40, 48, 50, 60, 64, 72, 80, 96, 100, 120,
  150, 200, 250, 300, 400, 500, 1000,
];

/** Pictures of one size in rows over pages of paper. */
export interface PaperGrid {
  /** The paper as it lies. */
  page: Size;
  /** The floor is so many times larger. */
  times: number;
  columns: number;
  rows: number;
  pages: number;
  /** From one picture to the next, mm of paper. */
  step: Size;
}

interface Wish {
  count: number;
  /** What is shown, mm of the floor. */
  shown: Size;
  /** Upright. */
  paper: Size;
  /** The least room for words, mm of paper. */
  room: number;
  /** How much of the paper's height the words take, mm, in lines of a width. */
  words(width: number): number;
}

/** The fewest pages on which every picture is wide enough, and on these the largest scale; where the paper is too small for that, the largest that it holds. */
export function paperGrid(wish: Wish): PaperGrid {
  const { shown, paper, room } = wish;
  // Where words take more than a page, they get longer lines, at the last all that a page has.
  const longest = turned(paper).across - 2 * PAGE.margin;
  const [found = [lastOf(wish, longest)]] = [room, 2 * room, longest]
    .map((one) => gridsOf(wish, one))
    .filter((grids) => grids.length > 0);
  const wide = found.filter(({ times }) => shown.across / times >= ABOUT * WIDE);
  const [most] = found;
  const tried = wide.length > 0 ? wide : found.filter(({ times }) => times === most!.times);
  return tried.reduce((best, one) => (one.pages < best.pages ? one : best));
}

/** Every scale and both ways to lay the paper, where a picture and its words find room; the largest scale first. */
const gridsOf = ({ count, shown, paper, words }: Wish, room: number): PaperGrid[] =>
  SCALES.flatMap((times) =>
    [paper, turned(paper)].flatMap((page): PaperGrid[] => {
      const width = Math.max(shown.across / times, room);
      if (width > page.across - 2 * PAGE.margin || shown.along / times > page.along) return [];
      const step = { across: width + GAP.across, along: shown.along / times + words(width) + GAP.along };
      const columns = Math.floor((page.across - 2 * PAGE.margin + GAP.across) / step.across);
      const rows = Math.floor((page.along - 2 * PAGE.margin - PAGE.head - PAGE.foot + GAP.along) / step.along);
      if (columns < 1 || rows < 1) return [];
      return [{ page, times, columns, rows, pages: Math.ceil(count / (columns * rows)), step }];
    }),
  );

/** One to a page, although the words end beyond its foot. */
const lastOf = ({ count, shown, paper }: Wish, room: number): PaperGrid => {
  const page = turned(paper);
  const times =
    SCALES.find((one) => shown.across / one <= room && shown.along / one <= page.along / 3) ?? SCALES.at(-1)!;
  return { page, times, columns: 1, rows: 1, pages: count, step: { across: room + GAP.across, along: page.along } };
};
