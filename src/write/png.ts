/**
 * A drawing as a PNG picture whose longer side is `longSide` pixels. No font of the machine is used: labels are outlines.
 * The same SVG gives the same bytes.
 */
export async function renderPng(svg: string, longSide: number): Promise<Uint8Array> {
  const { Resvg } = await import('@resvg/resvg-js');
  const font = { loadSystemFonts: false };
  // Sizes that are not stated in the first tag are those that the library finds.
  const [, wide, high] = /^[^<]*<svg[^>]* width="([\d.]+)(?:mm)?" height="([\d.]+)(?:mm)?"/.exec(svg) ?? [];
  const drawing = wide && high ? { width: Number(wide), height: Number(high) } : new Resvg(svg, { font });
  const fitTo =
    drawing.width >= drawing.height
      ? ({ mode: 'width', value: longSide } as const)
      : ({ mode: 'height', value: longSide } as const);
  return new Resvg(svg, { font, fitTo }).render().asPng();
}
