import type { Block, Figure } from '../block.ts';
import { type DrawingFile, type Followed, follow } from './drawing.ts';
import { type Ink, POINTS, short } from './ink.ts';

/** A figure ready to be placed. */
export interface Placeable {
  /** Height over width. */
  ratio: number;
  draw(ink: Ink, x: number, y: number, width: number): void;
}

/** What figures need of the file they go into. */
export interface FigureFile extends DrawingFile {
  /** Puts in a picture and returns its name. */
  picture(png: Uint8Array): Promise<string>;
}

/** Pixels to the inch of a figure that cannot be followed line by line. */
const DOTS = 220;

function vector(followed: Followed, operators: string, width: number): Placeable {
  const { wide, high } = followed.box;
  return {
    ratio: high / wide,
    draw(ink, x, y, across) {
      const scale = short6((across * ink.scale) / width);
      ink.add(`q ${scale} 0 0 ${scale} ${short(ink.x(x))} ${short(ink.y(y))} cm ${operators} Q`);
    },
  };
}

const short6 = (value: number): string => String(Number(value.toFixed(6)));

async function picture(
  svg: string,
  { wide, high }: Followed['box'],
  width: number,
  file: FigureFile,
): Promise<Placeable> {
  const { renderPng } = await import('../../png.ts');
  const longer = Math.max(width, (width * high) / wide);
  const name = await file.picture(await renderPng(svg, Math.ceil((longer / 25.4) * DOTS)));
  return {
    ratio: high / wide,
    draw(ink, x, y, across) {
      const [w, h] = [ink.length(across), ink.length((across * high) / wide)];
      ink.add(`q ${short(w)} 0 0 ${short(h)} ${short(ink.x(x))} ${short(ink.y(y) - h)} cm /${name} Do Q`);
    },
  };
}

/** As lines where they can be followed, or else as a picture. @param width mm it is to have */
async function prepare(svg: string, width: number, file: FigureFile): Promise<Placeable | undefined> {
  const followed = follow(svg);
  if (!followed) return undefined;
  const operators = followed.operators(0, 0, (width * POINTS) / followed.box.wide, file);
  return operators === undefined ? picture(svg, followed.box, width, file) : vector(followed, operators, width);
}

const figuresIn = (blocks: readonly Block[]): Figure[] =>
  blocks.flatMap((block) =>
    block.kind === 'figure' ? [block] : block.kind === 'beside' ? [block.figure, ...figuresIn(block.blocks)] : [],
  );

/** Every figure of a sheet on which a full share is so many mm wide. */
export async function prepareFigures(
  blocks: readonly Block[],
  width: number,
  file: FigureFile,
): Promise<Map<Figure, Placeable>> {
  const ready = new Map<Figure, Placeable>();
  for (const figure of figuresIn(blocks)) {
    const placeable = await prepare(figure.svg, figure.share * width, file);
    if (placeable) ready.set(figure, placeable);
  }
  return ready;
}
