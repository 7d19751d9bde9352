import { bytesOf } from '../../units/data-address.ts';

/** What was packed by `deflate-raw` and written in base64. */
export async function unpacked(base64: string): Promise<Blob> {
  return new Response(new Blob([bytesOf(base64)]).stream().pipeThrough(new DecompressionStream('deflate-raw'))).blob();
}
