/** A drawing as a PNG picture whose longer side is `longSide` pixels, as this browser draws it. */
export async function pictureOf(svg: string, longSide: number): Promise<Uint8Array> {
  const image = new Image();
  image.src = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
  try {
    await image.decode();
    const scale = longSide / Math.max(image.naturalWidth, image.naturalHeight);
    const canvas = document.createElement('canvas');
    canvas.width = Math.round(image.naturalWidth * scale);
    canvas.height = Math.round(image.naturalHeight * scale);
    canvas.getContext('2d')!.drawImage(image, 0, 0, canvas.width, canvas.height);
    const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/png'));
    if (!blob) throw new Error('this browser cannot draw a picture so large');
    return new Uint8Array(await blob.arrayBuffer());
  } finally {
    URL.revokeObjectURL(image.src);
  }
}
