/** What was packed by `deflate-raw` and written in base64. */
export async function unpacked(base64: string): Promise<Blob> {
  const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
  return new Response(new Blob([bytes]).stream().pipeThrough(new DecompressionStream('deflate-raw'))).blob();
}
