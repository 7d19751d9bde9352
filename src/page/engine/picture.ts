type Draw = (svg: string, longSide: number) => Promise<Uint8Array>;

let draw: Draw | undefined;

export function drawPictures(by: Draw): void {
  draw = by;
}

/** Stands in for `src/write/png.ts` in the page: the browser draws the picture. Its pixels differ a little from those of the command line. */
export async function renderPng(svg: string, longSide: number): Promise<Uint8Array> {
  if (!draw) throw new Error('there is nobody here to draw pictures');
  return draw(svg, longSide);
}
